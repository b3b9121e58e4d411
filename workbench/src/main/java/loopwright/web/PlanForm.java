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
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import loopwright.action.Counting;
import loopwright.action.LengthUnit;
import loopwright.action.PlanChoice;
import loopwright.action.Shelf;
import loopwright.action.TodayRequest;
import loopwright.action.Workroom;
import loopwright.course.Course;

/** The form that says what a plan is made from. */
final class PlanForm {
    private final Workroom room;
    private final PlanChoice choice;
    private final String hole;
    private String address;
    private String submit;
    private DomContent more = span();

    /** {@code hole} is the hole that is looked at, or empty for the whole round. */
    PlanForm(Workroom room, PlanChoice choice, String hole) {
        this.room = room;
        this.choice = choice;
        this.hole = hole;
        address = hole.isEmpty() ? "/plan" : "/plan/hole";
        submit = hole.isEmpty() ? "plan.make" : "plan.solveHole";
    }

    /** The same form for another question, with what else that asks. */
    PlanForm at(String question, DomContent asksMore) {
        address = question;
        submit = "answers.work";
        more = asksMore;
        return this;
    }

    DomContent form() {
        boolean details = !choice.holes().isEmpty()
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
                                                        .withValue(Integer.toString(
                                                                choice.goal().target()))
                                                        .attr("min", 1)
                                                        .attr("max", 200)
                                                        .isRequired()))
                                .withClass("fields"),
                        hole.isEmpty() ? goal() : hiddenGoal(),
                        new DayFields(choice.day(), Units.of(room)).fields(),
                        today(),
                        details(
                                summary(Texts.say(details ? "plan.moreSaid" : "plan.more")),
                                div(
                                                field("plan.onlyHoles", line("holes", choice.holes())),
                                                field("plan.locations", lines("location", choice.holeLocations())),
                                                field("plan.forbid", lines("forbid", choice.forbid())),
                                                field("plan.require", lines("require", choice.require())))
                                        .withClass("fields")),
                        more,
                        hole.isEmpty()
                                ? span()
                                : input().withType("hidden").withName("hole").withValue(hole),
                        button(Texts.say(submit)).withType("submit"))
                .withMethod("get")
                .withAction(address)
                .withClass("sheet");
    }

    /** Warm-up balls and the coach's dial, which move the plan. */
    private DomContent today() {
        TodayRequest today = choice.today();
        LengthUnit unit = Units.of(room).lengths();
        boolean said = today.balls().isPresent() || !today.playsLonger().isEmpty();
        return details(
                summary(Texts.say(said ? "warm.said" : "warm.title")),
                div(
                                hidden(PlanQuery.BALLS_UNIT, unit.words()),
                                labelled(
                                        Texts.say("warm.typed", unit.words()),
                                        line("today", today.ballsIn(unit).orElse(""))),
                                field("warm.longer", line("longer", String.join("; ", today.playsLonger()))))
                        .withClass("fields wide-fields"));
    }

    /** What the round is played for; one hole is always shown for the average. */
    private DomContent goal() {
        PlanChoice.Goal goal = choice.goal();
        return details(
                summary(Texts.say("plan.goal", words(goal))),
                div(
                                field(
                                        "plan.objective",
                                        select(
                                                        objective("mean", !goal.forTarget()),
                                                        objective("target", goal.forTarget()))
                                                .withName("objective")),
                                field("plan.counting", countings(goal.counting())),
                                field(
                                        "plan.handicap",
                                        input().withType("number")
                                                .withName("handicap")
                                                .withValue(handicap(goal.counting()))
                                                .attr("min", -10)
                                                .attr("max", 54)),
                                label(
                                                input().withType("checkbox")
                                                        .withName("sure")
                                                        .withValue("yes")
                                                        .withCondChecked(goal.howSure()),
                                                span(Texts.say("plan.sure")))
                                        .withClass("tick"))
                        .withClass("fields"));
    }

    private static String words(PlanChoice.Goal goal) {
        return Texts.say("plan.objective." + (goal.forTarget() ? "target" : "mean")) + "; "
                + Texts.say("counting." + goal.counting().form().name());
    }

    private DomContent hiddenGoal() {
        PlanChoice.Goal goal = choice.goal();
        return span(
                hidden("objective", goal.forTarget() ? "target" : "mean"),
                hidden("counting", goal.counting().form().name().toLowerCase(Locale.ROOT)),
                hidden("handicap", handicap(goal.counting())),
                hidden("sure", goal.howSure() ? "yes" : ""));
    }

    private static String handicap(Counting counting) {
        return counting.handicap().isEmpty()
                ? ""
                : Integer.toString(counting.handicap().getAsInt());
    }

    private static DomContent hidden(String name, String value) {
        return input().withType("hidden").withName(name).withValue(value);
    }

    private static DomContent objective(String name, boolean now) {
        return option(Texts.say("plan.objective." + name)).withValue(name).withCondSelected(now);
    }

    private static DomContent countings(Counting now) {
        return select(each(
                        Arrays.asList(Counting.Form.values()),
                        f -> option(Texts.say("counting." + f.name()))
                                .withValue(f.name().toLowerCase(Locale.ROOT))
                                .withCondSelected(f == now.form())))
                .withName("counting");
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
        return labelled(Texts.say(key), input);
    }

    static DomContent labelled(String words, DomContent input) {
        return label(span(words), input);
    }
}
