package loopwright.web;

import static j2html.TagCreator.each;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.List;

/** The head of a table: one row of column heads, told by the keys of their texts. */
final class ColumnHeads {
    private ColumnHeads() {}

    /** Columns of words stand left like their cells. */
    static DomContent withWords(List<String> words, String... keys) {
        return thead(tr(each(
                List.of(keys), k -> th(Texts.say(k)).attr("scope", "col").withCondClass(words.contains(k), "words"))));
    }

    static DomContent of(String... keys) {
        return thead(tr(each(List.of(keys), k -> th(Texts.say(k)).attr("scope", "col"))));
    }
}
