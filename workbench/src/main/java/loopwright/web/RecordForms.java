package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.select;
import static j2html.TagCreator.span;
import static j2html.TagCreator.textarea;

import j2html.tags.DomContent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import loopwright.action.Intake;
import loopwright.action.Shelf;
import loopwright.web.RoundSheet.Tier;

/** The forms of a player's records: rounds to write down or take in, sheets, lessons, the player file. */
final class RecordForms {
    private RecordForms() {}

    /** Takes rounds in from a sheet or a table; {@code player} is empty where the sheet says whose it is. */
    static DomContent take(String player, List<Shelf.Entry> players) {
        return form(
                        p(Texts.say("rounds.takeMeans")),
                        div(
                                        player.isEmpty()
                                                ? PlanForm.field(
                                                        "rounds.whose",
                                                        select(
                                                                        option(Texts.say("rounds.asTheSheetSays"))
                                                                                .withValue(""),
                                                                        each(
                                                                                players,
                                                                                e -> option(e.name())
                                                                                        .withValue(e.id())))
                                                                .withName("player"))
                                                : hidden("player", player),
                                        label(
                                                span(Texts.say("upload.file")),
                                                input().withType("file")
                                                        .withName("file")
                                                        .isRequired()))
                                .withClass("fields"),
                        label(
                                        input().withType("checkbox")
                                                .withName("replace")
                                                .withValue("yes"),
                                        span(Texts.say("rounds.replace")))
                                .withClass("tick"),
                        button(Texts.say("data.take")).withType("submit"))
                .withMethod("post")
                .withAction("/rounds/import")
                .withEnctype("multipart/form-data")
                .withClass("sheet drop");
    }

    private static DomContent hidden(String name, String value) {
        return input().withType("hidden").withName(name).withValue(value);
    }

    /** Asks for the score that a review measures against, where the player file has none. */
    static DomContent target(String player, String round) {
        return form(
                        p(Texts.say("report.noTarget")),
                        hidden("player", player),
                        hidden("round", round),
                        div(PlanForm.field(
                                        "intake.goal",
                                        input().withType("number")
                                                .withName("target")
                                                .attr("min", 60)
                                                .attr("max", 130)
                                                .isRequired()))
                                .withClass("fields"),
                        button(Texts.say("report.make")).withType("submit"))
                .withMethod("get")
                .withAction("/rounds/review")
                .withClass("sheet");
    }

    /** Holes to be played as a lesson: places and aims are tapped, and the options asked for. */
    static DomContent playLesson(String player, List<Shelf.Entry> courses) {
        return form(
                        p(Texts.say("lesson.playMeans")),
                        hidden("player", player),
                        hidden("tier", "d"),
                        hidden("lesson", "yes"),
                        div(courseField(courses), teesField()).withClass("fields"),
                        button(Texts.say("rounds.begin")).withType("submit"))
                .withMethod("get")
                .withAction("/rounds/new")
                .withClass("sheet");
    }

    /** Which round is to be written down, on the bench ({@code /rounds/new}) or on a sheet ({@code /rounds/sheet}). */
    static DomContent write(String player, List<Shelf.Entry> courses, boolean sheet) {
        List<Tier> tiers = sheet ? List.of(Tier.A, Tier.B) : Arrays.asList(Tier.values());
        return form(
                        hidden("player", player),
                        div(
                                        courseField(courses),
                                        teesField(),
                                        PlanForm.field(
                                                "rounds.tier",
                                                select(each(
                                                                tiers,
                                                                t -> option(Texts.say("tier." + t))
                                                                        .withValue(t.name()
                                                                                .toLowerCase(Locale.ROOT))
                                                                        .withCondSelected(t == Tier.B)))
                                                        .withName("tier")),
                                        label(
                                                        input().withType("checkbox")
                                                                .withName("lesson")
                                                                .withValue("yes"),
                                                        span(Texts.say("rounds.lesson")))
                                                .withClass("tick"))
                                .withClass("fields"),
                        button(Texts.say(sheet ? "rounds.makeSheet" : "rounds.begin"))
                                .withType("submit"))
                .withMethod("get")
                .withAction(sheet ? "/rounds/sheet" : "/rounds/new")
                .withClass("sheet");
    }

    static DomContent lesson(String player, String today) {
        return form(
                        hidden("player", player),
                        div(
                                        PlanForm.field(
                                                "lesson.day",
                                                input().withType("date")
                                                        .withName("day")
                                                        .withValue(today)
                                                        .isRequired()),
                                        words("notes"),
                                        words("agreed"),
                                        words("homework"),
                                        PlanForm.field(
                                                "lesson.due",
                                                input().withType("date").withName("due")))
                                .withClass("fields"),
                        button(Texts.say("lesson.keep")).withType("submit"))
                .withMethod("post")
                .withAction("/rounds/lesson")
                .withClass("sheet");
    }

    private static DomContent words(String name) {
        return PlanForm.field(
                "lesson." + name, textarea().withName(name).withRows("2").attr("maxlength", 2000));
    }

    static DomContent intake(String player, Map<String, String> now) {
        return form(
                        hidden("player", player),
                        div(each(
                                        Intake.ITEMS,
                                        item -> PlanForm.field(
                                                "intake." + item,
                                                input().withType("text")
                                                        .withName(item)
                                                        .withValue(now.getOrDefault(item, ""))
                                                        .withMaxlength("2000"))))
                                .withClass("fields"),
                        button(Texts.say("intake.keep")).withType("submit"))
                .withMethod("post")
                .withAction("/rounds/file")
                .withClass("sheet");
    }

    private static DomContent courseField(List<Shelf.Entry> courses) {
        return PlanForm.field(
                "plan.course",
                select(each(courses, e -> option(e.name()).withValue(e.id()))).withName("course"));
    }

    private static DomContent teesField() {
        return PlanForm.field(
                "plan.tees", input().withType("text").withName("tees").withValue("middle"));
    }
}
