package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.option;
import static j2html.TagCreator.select;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.textarea;

import j2html.tags.DomContent;
import java.util.List;
import loopwright.action.PlanChoice;
import loopwright.action.Shelf;
import loopwright.action.Workroom;
import loopwright.course.Course;

/** The form that says what a plan is made from. */
final class PlanForm {
    private final Workroom room;
    private final PlanChoice choice;
    private final String hole;

    /** {@code hole} is the hole that is looked at, or empty for the whole round. */
    PlanForm(Workroom room, PlanChoice choice, String hole) {
        this.room = room;
        this.choice = choice;
        this.hole = hole;
    }

    DomContent form() {
        boolean more = !choice.holes().isEmpty()
                || !choice.holeLocations().isEmpty()
                || !choice.forbid().isEmpty()
                || !choice.require().isEmpty();
        return j2html.TagCreator.form(
                        div(
                                        field(
                                                "plan.player",
                                                choose(
                                                        "player",
                                                        room.store().players().list(),
                                                        choice.player())),
                                        field(
                                                "plan.course",
                                                choose(
                                                        "course",
                                                        room.store().courses().list(),
                                                        choice.course())),
                                        field("plan.tees", tees()),
                                        field(
                                                "plan.target",
                                                input().withType("number")
                                                        .withName("target")
                                                        .withValue(Integer.toString(choice.target()))
                                                        .attr("min", 4)
                                                        .attr("max", 200)
                                                        .isRequired()))
                                .withClass("fields"),
                        details(
                                        summary(Texts.say("plan.more")),
                                        div(
                                                        field("plan.onlyHoles", line("holes", choice.holes())),
                                                        field(
                                                                "plan.locations",
                                                                lines("location", choice.holeLocations())),
                                                        field("plan.forbid", lines("forbid", choice.forbid())),
                                                        field("plan.require", lines("require", choice.require())))
                                                .withClass("fields"))
                                .condAttr(more, "open", ""),
                        hole.isEmpty()
                                ? span()
                                : input().withType("hidden").withName("hole").withValue(hole),
                        button(Texts.say(hole.isEmpty() ? "plan.make" : "plan.solveHole"))
                                .withType("submit"))
                .withMethod("get")
                .withAction(hole.isEmpty() ? "/plan" : "/plan/hole")
                .withClass("sheet");
    }

    private DomContent tees() {
        Course course = room.course(choice.course().id(), choice.course().version());
        List<String> names = course.teeSets().stream().map(t -> t.name()).toList();
        String now = course.findTeeSet(choice.tees()).map(t -> t.name()).orElse(choice.tees());
        return select(each(names, n -> option(n).withValue(n).withCondSelected(n.equals(now))))
                .withName("tees");
    }

    private static DomContent choose(String name, List<Shelf.Entry> all, Shelf.Entry now) {
        return select(each(all, e -> option(e.name()).withValue(e.id()).withCondSelected(e.id().equals(now.id()))))
                .withName(name);
    }

    private static DomContent line(String name, String value) {
        return input().withType("text").withName(name).withValue(value);
    }

    private static DomContent lines(String name, List<String> values) {
        return textarea(String.join("\n", values)).withName(name).withRows("2");
    }

    /** A field under its label. */
    static DomContent field(String key, DomContent input) {
        return label(span(Texts.say(key)), input);
    }
}
