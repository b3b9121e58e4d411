package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.fieldset;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.legend;
import static j2html.TagCreator.li;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.select;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.text;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import j2html.tags.specialized.FormTag;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.action.Shelf;
import loopwright.action.SurveyCourse;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleNotes;
import loopwright.course.LocalRule;

/** What is noted of a hole besides its areas: places, local rules, slopes of the green, trees, bunkers, lost balls, markers. */
final class HoleNotesForm {
    private final Course course;
    private final Hole hole;
    private final Shelf.Entry entry;
    private final Units units;

    HoleNotesForm(Course course, Hole hole, Shelf.Entry entry, Units units) {
        this.course = course;
        this.hole = hole;
        this.entry = entry;
        this.units = units;
    }

    DomContent content() {
        return div(
                h2(Texts.say("note.title")),
                noted(),
                details(summary(Texts.say("note.place")), place()),
                details(summary(Texts.say("note.rules")), rules()),
                details(summary(Texts.say("note.nine")), nine()),
                details(summary(Texts.say("note.woods")), woods(), bunkers(), lost()),
                details(summary(Texts.say("note.tees")), tees()),
                details(summary(Texts.say("note.clear")), clear()));
    }

    private DomContent noted() {
        HoleNotes notes = hole.survey().notes();
        List<String> out = new ArrayList<>();
        notes.skylineTargets().forEach(t -> out.add(Texts.say("note.isSkyline", t.name())));
        if (!notes.dropZones().isEmpty()) {
            out.add(Texts.say("note.isDrop", notes.dropZones().size()));
        }
        notes.localRules().forEach(r -> out.add(Texts.say("rule." + r)));
        if (!notes.green().spots().isEmpty()) {
            out.add(Texts.say("note.isSpots", notes.green().spots().size()));
        }
        if (!notes.green().arrows().isEmpty()) {
            out.add(Texts.say("note.isArrows", notes.green().arrows().size()));
        }
        return out.isEmpty() ? p(Texts.say("note.nothing")).withClass("note") : ul(each(out, w -> li(w)));
    }

    private FormTag about(String what, DomContent... content) {
        return form(
                        hidden("course", entry.id()),
                        hidden("seen", Integer.toString(entry.version())),
                        hidden("hole", Integer.toString(hole.number())),
                        what.isEmpty() ? text("") : hidden("what", what),
                        div(content).withClass("fields"),
                        button(Texts.say("note.keep")).withType("submit"))
                .withMethod("post")
                .withAction("/course/note")
                .withClass("sheet");
    }

    private static DomContent hidden(String name, String value) {
        return input().withType("hidden").withName(name).withValue(value);
    }

    private static DomContent number(String name, String words) {
        return label(span(words), input().withType("text").withName(name).attr("inputmode", "decimal"));
    }

    private DomContent place() {
        return about(
                        "",
                        p(Texts.say("note.placeMeans")),
                        number("x", Texts.say("note.x")),
                        number("y", Texts.say("note.y")),
                        PlanForm.field(
                                "note.what",
                                select(each(
                                                List.of("skyline", "drop", "temporary", "spot", "arrow"),
                                                w -> option(Texts.say("note.what." + w))
                                                        .withValue(w)))
                                        .withName("what")),
                        PlanForm.field(
                                "note.name",
                                input().withType("text").withName("name").withMaxlength("60")),
                        number("height", Texts.say("note.height") + ", " + units.greenUnit()),
                        number("slope", Texts.say("note.slope")),
                        number("toward", Texts.say("note.toward")))
                .withId("note-place");
    }

    private DomContent rules() {
        var now = hole.survey().notes().localRules();
        return about(
                "rules",
                each(
                        Arrays.asList(LocalRule.values()),
                        r -> label(
                                        input().withType("checkbox")
                                                .withName("rule")
                                                .withValue(r.name())
                                                .withCondChecked(now.contains(r)),
                                        span(Texts.say("rule." + r)))
                                .withClass("tick")));
    }

    /** Three rows of three, the back of the green on top as the sheet is read on the ground. */
    private DomContent nine() {
        DomContent rows = div(each(
                        List.of(6, 7, 8, 3, 4, 5, 0, 1, 2),
                        i -> fieldset(
                                legend(Texts.say("nine." + i)),
                                number("slope" + i, "%"),
                                number("hour" + i, Texts.say("note.hour")))))
                .withClass("nine");
        return about("nine", p(Texts.say("note.nineMeans")), rows);
    }

    private DomContent areas(AreaKind kind) {
        List<Area> beside = SurveyCourse.areasBeside(course, hole, kind);
        return select(each(
                        IntStream.range(0, beside.size()).boxed().toList(),
                        i -> option(Texts.say("kind." + kind.name()) + " " + (i + 1) + " ("
                                        + beside.get(i).id() + ")")
                                .withValue(beside.get(i).id())))
                .withName("area");
    }

    private DomContent woods() {
        return about(
                "woods",
                PlanForm.field("kind.WOODS", areas(AreaKind.WOODS)),
                number("height", Texts.say("note.trees") + ", " + units.heightUnit()),
                number("gap", Texts.say("note.gap") + ", " + units.heightUnit()),
                number("density", Texts.say("note.density")));
    }

    private DomContent bunkers() {
        return about(
                "bunker",
                PlanForm.field("kind.BUNKER", areas(AreaKind.BUNKER)),
                number("depth", Texts.say("note.depth") + ", " + units.heightUnit()),
                number("lip", Texts.say("note.lip") + ", " + units.heightUnit()));
    }

    private DomContent lost() {
        return about(
                "lost",
                PlanForm.field(
                        "edit.kind",
                        select(each(
                                        List.of(AreaKind.WOODS, AreaKind.DEEP_ROUGH, AreaKind.ROUGH),
                                        k -> option(Texts.say("kind." + k.name()))
                                                .withValue(k.name())))
                                .withName("kind")),
                number("chance", Texts.say("note.lost")));
    }

    private DomContent tees() {
        return about(
                "tees",
                p(Texts.say("note.teesMean")),
                PlanForm.field(
                        "note.teesName",
                        input().withType("text").withName("name").withValue("today")),
                PlanForm.field(
                        "plan.tees",
                        select(each(course.teeSets(), t -> option(t.name()).withValue(t.name())))
                                .withName("base")),
                number("forward", Texts.say("note.forward") + ", " + units.unit()));
    }

    private DomContent clear() {
        return about(
                "clear",
                label(
                                input().withType("checkbox")
                                        .withName("sure")
                                        .withValue("yes")
                                        .isRequired(),
                                span(Texts.say("note.sure")))
                        .withClass("tick"));
    }
}
