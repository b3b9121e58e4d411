package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.fieldset;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.legend;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.select;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.Arrays;
import java.util.List;
import loopwright.action.PracticeChoice;
import loopwright.action.PracticeWords;
import loopwright.action.Shelf;
import loopwright.action.Workroom;
import loopwright.course.Course;
import loopwright.course.TeeSet;
import loopwright.practice.Facility;
import loopwright.practice.LearningCurve;
import loopwright.practice.LearningTable;
import loopwright.practice.Skill;

/** The form that says what a practice plan is made from: round, time, places, what the coach wants, rates of learning. */
final class PracticeForm {
    private final Workroom room;
    private final PracticeChoice choice;

    PracticeForm(Workroom room, PracticeChoice choice) {
        this.room = room;
        this.choice = choice;
    }

    DomContent form() {
        return j2html.TagCreator.form(
                        div(
                                        PlanForm.field(
                                                "plan.player",
                                                choose(
                                                        "player",
                                                        room.store().players().list(),
                                                        choice.round().player())),
                                        PlanForm.field(
                                                "plan.course",
                                                choose(
                                                        "course",
                                                        room.store().courses().list(),
                                                        choice.round().course())),
                                        PlanForm.field("plan.tees", tees()),
                                        PlanForm.field(
                                                "plan.target",
                                                number(
                                                        "target",
                                                        choice.round().goal().target(),
                                                        1)),
                                        PlanForm.field(
                                                "plan.onlyHoles",
                                                input().withType("text")
                                                        .withName("holes")
                                                        .withValue(
                                                                choice.round().holes())))
                                .withClass("fields"),
                        div(
                                        PlanForm.field(
                                                "practice.hours",
                                                number("hours", choice.time().hours(), 0.25)),
                                        PlanForm.field(
                                                "practice.weeks",
                                                number("weeks", choice.time().weeks(), 1)),
                                        PlanForm.field(
                                                "practice.sessions",
                                                number("sessions", choice.time().sessions(), 1)),
                                        PlanForm.field(
                                                "practice.swings",
                                                number("swings", choice.time().fullSwings(), 0.25)))
                                .withClass("fields"),
                        places(),
                        follows(),
                        coach(),
                        input().withType("hidden").withName("make").withValue("yes"),
                        button(Texts.say("practice.make")).withType("submit"))
                .withMethod("get")
                .withAction("/practice")
                .withClass("sheet");
    }

    /** Beside the file what was practised since may count: always after the first week. */
    private DomContent follows() {
        return label(
                        input().withType("checkbox")
                                .withName("follows")
                                .withValue("yes")
                                .withCondChecked(choice.follows()),
                        span(Texts.say("practice.follows")))
                .withClass("tick");
    }

    private DomContent tees() {
        Course course = room.course(
                choice.round().course().id(), choice.round().course().version());
        String now = course.findTeeSet(choice.round().tees())
                .map(TeeSet::name)
                .orElse(choice.round().tees());
        return select(each(
                        course.teeSets().stream().map(TeeSet::name).toList(),
                        n -> option(n).withValue(n).withCondSelected(n.equals(now))))
                .withName("tees");
    }

    private static DomContent choose(String name, List<Shelf.Entry> all, Shelf.Entry now) {
        return select(each(all, e -> option(e.name()).withValue(e.id()).withCondSelected(e.id().equals(now.id()))))
                .withName(name);
    }

    private static DomContent number(String name, double value, double step) {
        return input().withType("number")
                .withName(name)
                .withValue(PracticeChoice.number(value))
                .attr("min", 0)
                .attr("step", PracticeChoice.number(step));
    }

    private DomContent places() {
        return fieldset(
                        legend(Texts.say("practice.places")),
                        each(
                                Arrays.asList(Facility.values()),
                                place -> label(
                                        span(PracticeWords.of(place)),
                                        number(
                                                "at-" + PracticeWords.typed(place),
                                                choice.time().places().getOrDefault(place, 0.0),
                                                0.25))))
                .withClass("fields short plain");
    }

    /** What the coach wants for single skills, and what is assumed of learning: both may be left as they are. */
    private DomContent coach() {
        LearningTable assumed = LearningTable.assumed(room.player(
                        choice.round().player().id(), choice.round().player().version())
                .player());
        return details(
                        summary(Texts.say("practice.coach")),
                        p(Texts.say("practice.coachMeans")).withClass("note"),
                        div(table(
                                        caption(Texts.say("practice.coachTable")),
                                        ColumnHeads.of(
                                                "practice.skill", "practice.must", "practice.tau", "practice.floor"),
                                        tbody(each(
                                                assumed.curves().keySet().stream()
                                                        .toList(),
                                                s -> row(s, assumed.get(s))))))
                                .withClass("wide")
                                .withTabindex(0)
                                .attr("role", "region")
                                .attr("aria-label", Texts.say("practice.coach")))
                .condAttr(!choice.musts().isEmpty() || !choice.rates().isEmpty(), "open", "");
    }

    private DomContent row(Skill skill, LearningCurve assumed) {
        LearningCurve set = choice.rates().get(skill);
        return tr(
                th(PracticeWords.of(skill)).attr("scope", "row"),
                td(cell(
                        "must",
                        skill,
                        choice.musts().containsKey(skill)
                                ? PracticeChoice.number(choice.musts().get(skill))
                                : "",
                        "0",
                        0.25)),
                td(cell(
                        "tau",
                        skill,
                        set == null ? "" : PracticeChoice.number(set.hours()),
                        PracticeChoice.number(assumed.hours()),
                        1)),
                td(cell(
                        "floor",
                        skill,
                        set == null ? "" : Words.of("%.2f", set.floor()),
                        Words.of("%.2f", assumed.floor()),
                        0.01)));
    }

    private static DomContent cell(String what, Skill skill, String value, String assumed, double step) {
        return input().withType("number")
                .withName(what + "-" + PracticeWords.typed(skill))
                .withValue(value)
                .withPlaceholder(assumed)
                .attr("min", 0)
                .attr("step", PracticeChoice.number(step))
                .attr("aria-label", Texts.say("practice." + what) + ": " + PracticeWords.of(skill));
    }
}
