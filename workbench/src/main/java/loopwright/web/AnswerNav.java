package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.dd;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.section;

import j2html.tags.DomContent;
import java.util.List;
import loopwright.action.PlanChoice;

/** The ways from a plan to what else can be asked about the same player, course, target and day. */
final class AnswerNav {
    /** Each is the last word of its address and of the keys of its texts. */
    private static final List<String> ANSWERS = List.of("tees", "state", "expect", "safety", "wedges", "short");

    private AnswerNav() {}

    static String link(String answer, PlanChoice choice) {
        return "/plan/" + answer + "?" + choice.query();
    }

    /** What can be asked, with what each answers. */
    static DomContent list(PlanChoice choice) {
        return section(
                        h2(Texts.say("answers.title")),
                        dl(each(
                                ANSWERS,
                                name -> j2html.TagCreator.join(
                                        dt(a(Texts.say("answers." + name)).withHref(link(name, choice))),
                                        dd(Texts.say("answers." + name + ".means"))))))
                .withClass("answers");
    }

    /** The same as one line above an answer; {@code now} is the answer that is shown. */
    static DomContent line(String now, PlanChoice choice) {
        return nav(a(Texts.say("plan.title")).withHref("/plan?" + choice.query()), each(ANSWERS, name -> {
                    var link = a(Texts.say("answers." + name)).withHref(link(name, choice));
                    return name.equals(now) ? link.attr("aria-current", "page") : link;
                }))
                .withClass("steps")
                .attr("aria-label", Texts.say("answers.title"));
    }
}
