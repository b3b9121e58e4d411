package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.input;
import static j2html.TagCreator.li;
import static j2html.TagCreator.ol;
import static j2html.TagCreator.p;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.action.CourseProblems.Problem;
import loopwright.action.ImportRecord;
import loopwright.action.Shelf;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;

/** What was odd in the map of a course: what it says, what was taken instead, how to mend it, and the way there. */
final class ProblemList {
    private final List<Problem> problems;
    private final Course course;
    private final Shelf.Entry entry;

    ProblemList(List<Problem> problems, Course course, Shelf.Entry entry) {
        this.problems = problems;
        this.course = course;
        this.entry = entry;
    }

    DomContent content() {
        return problems.isEmpty()
                ? p(Texts.say("course.noProblems"))
                : ol(each(problems, this::item)).withClass("problems");
    }

    private DomContent item(Problem problem) {
        ImportRecord r = problem.record();
        return li(
                        strong(r.kind()),
                        text(" (" + r.element() + "): " + r.found() + " " + r.assumed() + " "
                                + Texts.say("course.mend", r.mend()) + " "),
                        there(r.where()),
                        form(
                                        input().withType("hidden")
                                                .withName("course")
                                                .withValue(entry.id()),
                                        input().withType("hidden")
                                                .withName("problem")
                                                .withValue(problem.key()),
                                        button(Texts.say("course.settle", r.kind(), r.element()))
                                                .withType("submit")
                                                .withClass("quiet"))
                                .withMethod("post")
                                .withAction("/course/settle"))
                .withClass(r.warning() ? "beware" : "note");
    }

    /** The way to the place on the chart of the nearest hole. */
    private DomContent there(Optional<LatLon> where) {
        if (where.isEmpty()) {
            return text("");
        }
        Place place = new LocalFrame(course.origin()).toPlace(where.get());
        Hole nearest = course.holes().stream()
                .min(Comparator.comparingDouble(h -> h.line().distanceTo(place)))
                .orElseThrow();
        return a(Texts.say("course.show", nearest.number()))
                .withHref("/course?course=" + entry.id() + "&hole=" + nearest.number() + "&lat="
                        + where.get().latitudeDegrees() + "&lon=" + where.get().longitudeDegrees());
    }
}
