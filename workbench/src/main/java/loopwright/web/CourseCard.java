package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.input;
import static j2html.TagCreator.p;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.List;
import loopwright.action.ReadCourse;
import loopwright.action.Shelf;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;

/** The card of a course, what nobody has surveyed, and its versions. */
final class CourseCard {
    private final Course course;
    private final Shelf.Entry entry;
    private final Units units;

    CourseCard(Course course, Shelf.Entry entry, Units units) {
        this.course = course;
        this.entry = entry;
        this.units = units;
    }

    DomContent unsurveyed() {
        List<Integer> open = ReadCourse.unsurveyedHoles(course);
        if (open.isEmpty()) {
            return text("");
        }
        String which = open.size() == course.holes().size()
                ? Texts.say("plan.everyHole")
                : Texts.say("plan.holes", open.toString().replaceAll("[\\[\\]]", ""));
        return p(strong(Texts.say("plan.unsurveyed")), text(" " + Texts.say("course.unsurveyedMeans", which)))
                .withClass("beware");
    }

    DomContent table() {
        return div(j2html.TagCreator.table(
                        caption(Texts.say("course.cardMeans", course.holes().size(), course.par())),
                        thead(tr(
                                th(Texts.say("holes.hole")).attr("scope", "col"),
                                th(Texts.say("holes.par")).attr("scope", "col"),
                                each(course.teeSets(), t -> th(t.name()).attr("scope", "col")),
                                th(Texts.say("course.surveyColumn"))
                                        .attr("scope", "col")
                                        .withClass("words"))),
                        tbody(each(course.holes(), this::row))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("course.card"));
    }

    private DomContent row(Hole h) {
        return tr(
                th(a(Texts.say("holes.number", h.number()))
                                .withHref("/course?course=" + entry.id() + "&hole=" + h.number()))
                        .attr("scope", "row"),
                td(Integer.toString(h.par())),
                each(course.teeSets(), t -> td(length(h, t))),
                td(Texts.say(h.survey().complete() ? "course.isSurveyed" : "course.isOpen")
                                + (h.greenAssumed() ? ", " + Texts.say("course.greenAssumed") : ""))
                        .withClass("words"));
    }

    private String length(Hole hole, TeeSet tees) {
        boolean borrowed = tees.getPlace(hole.number()).standsIn().isPresent();
        return (borrowed ? "*" : "") + units.length(course.lengthMetres(hole, tees));
    }

    DomContent versions(List<Shelf.Entry> versions) {
        return div(j2html.TagCreator.table(
                        caption(Texts.say("course.versionsMean")),
                        thead(tr(
                                th(Texts.say("data.version")).attr("scope", "col"),
                                th(Texts.say("data.note")).attr("scope", "col").withClass("words"),
                                th(Texts.say("course.back")).attr("scope", "col"))),
                        tbody(each(
                                versions,
                                v -> tr(
                                        th(Integer.toString(v.version())).attr("scope", "row"),
                                        td(v.note()).withClass("words"),
                                        td(
                                                v.version() == entry.version()
                                                        ? text(Texts.say("course.now"))
                                                        : back(v)))))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("course.versions"));
    }

    private DomContent back(Shelf.Entry old) {
        return form(
                        input().withType("hidden").withName("course").withValue(entry.id()),
                        input().withType("hidden").withName("seen").withValue(Integer.toString(entry.version())),
                        input().withType("hidden").withName("version").withValue(Integer.toString(old.version())),
                        button(Texts.say("course.backTo", old.version()))
                                .withType("submit")
                                .withClass("quiet"))
                .withMethod("post")
                .withAction("/course/version");
    }
}
