package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.input;
import static j2html.TagCreator.option;
import static j2html.TagCreator.select;

import j2html.tags.DomContent;
import java.util.List;
import java.util.Map;

/** The form that says in which units numbers are read and shown. */
final class UnitsForm {
    private UnitsForm() {}

    /** {@code back} is the page to come back to. */
    static DomContent form(Map<String, String> now, String back) {
        return j2html.TagCreator.form(
                        input().withType("hidden").withName("back").withValue(back),
                        div(each(Units.CHOICES.entrySet().stream().toList(), c -> choice(c, now)))
                                .withClass("fields"),
                        button(Texts.say("data.set")).withType("submit"))
                .withMethod("post")
                .withAction("/data/units")
                .withClass("sheet");
    }

    private static DomContent choice(Map.Entry<String, List<String>> choice, Map<String, String> now) {
        String chosen = now.getOrDefault(choice.getKey(), choice.getValue().get(0));
        return PlanForm.field(
                "data." + choice.getKey(),
                select(each(
                                choice.getValue(),
                                u -> option(Texts.say("unit." + u)).withValue(u).withCondSelected(u.equals(chosen))))
                        .withName(choice.getKey()));
    }
}
