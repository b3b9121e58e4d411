package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;

import j2html.tags.DomContent;
import loopwright.action.Shelf;
import loopwright.course.Hole;

/** The ticks of a hole's survey: what somebody has looked at, so that an empty map means "none". */
final class SurveyForm {
    private final Hole hole;
    private final Shelf.Entry entry;

    SurveyForm(Hole hole, Shelf.Entry entry) {
        this.hole = hole;
        this.entry = entry;
    }

    DomContent form() {
        var s = hole.survey();
        return j2html.TagCreator.form(
                        h2(Texts.say("survey.title")),
                        p(Texts.say("survey.means")),
                        input().withType("hidden").withName("course").withValue(entry.id()),
                        input().withType("hidden").withName("seen").withValue(Integer.toString(entry.version())),
                        input().withType("hidden").withName("hole").withValue(Integer.toString(hole.number())),
                        tick("trees", s.trees()),
                        tick("bounds", s.outOfBounds()),
                        tick("penalty", s.penaltyAreas()),
                        tick("bunkers", s.bunkers()),
                        button(Texts.say("survey.keep")).withType("submit"))
                .withMethod("post")
                .withAction("/course/survey")
                .withClass("sheet");
    }

    private static DomContent tick(String name, boolean on) {
        return label(
                        input().withType("checkbox")
                                .withName(name)
                                .withValue("yes")
                                .withCondChecked(on),
                        span(Texts.say("survey." + name)))
                .withClass("tick");
    }
}
