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
import java.util.ArrayList;
import java.util.List;
import loopwright.action.Shelf;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleNotes;

/** What is noted of a hole besides its areas: what is noted, slopes of the green, lost balls, markers. */
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
                details(summary(Texts.say("note.nine")), nine()),
                details(summary(Texts.say("note.lostBalls")), lost()),
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

    private DomContent about(String what, DomContent... content) {
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
