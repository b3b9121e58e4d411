package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.img;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.action.DrillCards;
import loopwright.action.KeptDrill;
import loopwright.action.KeptList;
import loopwright.action.PracticePictures.DrillCard;
import loopwright.action.PracticePictures.Expected;
import loopwright.action.PracticeReview;
import loopwright.action.PracticeWords;
import loopwright.action.Shelf;
import loopwright.player.Player;
import loopwright.practice.Drill;

/** Drills with their pictures and what to expect, those that were played, and what they say: is it working? */
final class DrillPages {
    private static final int SHOWN = 30;
    /** Standard deviations that hold 90 %. */
    private static final double NINETY = 1.645;

    private final Shelf.Entry entry;

    DrillPages(Shelf.Entry entry) {
        this.entry = entry;
    }

    /** A drill, shut until it is opened, so that no picture is drawn that nobody looks at. */
    DomContent drill(DrillCard card, Player player) {
        Drill d = card.drill();
        return details(
                        summary(
                                strong(d.name()),
                                text(" " + Texts.say("drill.expect", d.minutes(), said(card.own()), d.most())),
                                span(d.purpose()).withClass("note")),
                        p(strong(Texts.say("drill.setUp")), text(" " + d.setUp())),
                        p(strong(Texts.say("drill.scoring")), text(" " + d.scoring())),
                        p(
                                strong(Texts.say("drill.tells")),
                                text(" " + d.tells() + " "
                                        + Texts.say("drill.measures", DrillCards.measures(d, player)))),
                        p(Texts.say(
                                "drill.both",
                                card.player(),
                                said(card.own()),
                                d.most(),
                                card.level(),
                                said(card.target()))),
                        p(a(Texts.say("practice.log", d.name()))
                                .withHref("/practice/log?player=" + entry.id() + "&drill=" + d.name())),
                        img().withSrc("/practice/drill.svg?player=" + entry.id() + "&drill=" + d.name())
                                .withAlt(Texts.say("drill.picture", d.name()))
                                .withClass("picture drill")
                                .attr("loading", "lazy"))
                .withId(d.name());
    }

    /** "8.5 (7 to 10)". */
    static String said(Expected e) {
        return Words.of("%.1f", e.mean()) + " (" + e.low() + " " + Texts.say("words.to") + " " + e.high() + ")";
    }

    /** The sheet for the phone, and where what it gives back is taken in. */
    DomContent sheet() {
        return details(
                summary(Texts.say("drill.sheet")),
                p(Texts.say("drill.sheetMeans")),
                p(a(Texts.say("rounds.makeSheet"))
                        .withHref("/practice/sheet?player=" + entry.id())
                        .withClass("button")),
                form(
                                p(Texts.say("drill.takeMeans")),
                                input().withType("hidden").withName("player").withValue(entry.id()),
                                label(
                                        span(Texts.say("upload.file")),
                                        input().withType("file")
                                                .withName("file")
                                                .isRequired()),
                                button(Texts.say("data.take")).withType("submit"))
                        .withMethod("post")
                        .withAction("/practice/log")
                        .withEnctype("multipart/form-data")
                        .withClass("sheet drop"));
    }

    /** The coach's own drills: a file to take in, and the one that counts now. */
    DomContent own(Optional<KeptList> file) {
        return details(
                summary(Texts.say("drill.own")),
                p(Texts.say("drill.ownMeans")),
                file.<DomContent>map(f -> form(
                                        p(Texts.say("drill.ownNow", f.name())),
                                        input().withType("hidden")
                                                .withName("player")
                                                .withValue(entry.id()),
                                        button(Texts.say("drill.ownErase"))
                                                .withType("submit")
                                                .withClass("quiet"))
                                .withMethod("post")
                                .withAction("/practice/drills/erase"))
                        .orElse(text("")),
                form(
                                input().withType("hidden").withName("player").withValue(entry.id()),
                                label(
                                        span(Texts.say("upload.file")),
                                        input().withType("file")
                                                .withName("file")
                                                .withAccept(".json,application/json")
                                                .isRequired()),
                                button(Texts.say("data.take")).withType("submit"))
                        .withMethod("post")
                        .withAction("/practice/drills")
                        .withEnctype("multipart/form-data")
                        .withClass("sheet drop"));
    }

    DomContent played(List<KeptDrill> kept) {
        if (kept.isEmpty()) {
            return p(Texts.say("drill.none"));
        }
        List<KeptDrill> newest = new ArrayList<>(kept);
        Collections.reverse(newest);
        return region(
                "drill.played",
                table(
                        caption(Texts.say("drill.playedMeans", kept.size())),
                        ColumnHeads.of("rounds.day", "drill.drill", "rounds.score", "drill.minutes", "drill.note"),
                        tbody(each(
                                newest.stream().limit(SHOWN).toList(),
                                k -> tr(
                                        th(k.day().toString()).attr("scope", "row"),
                                        td(k.block().map(PracticeWords::of).orElse(k.drill())),
                                        td(k.block().isPresent() ? "" : Integer.toString(k.score())),
                                        td(Integer.toString(k.minutes())),
                                        td(k.words()).withClass("words"))))));
    }

    /** Every skill before, predicted and as the drills measure it now. */
    DomContent review(PracticeReview.Report r) {
        List<DomContent> out = new ArrayList<>();
        if (r.lines().isEmpty()) {
            out.add(p(Texts.say("drill.none")));
        } else {
            out.add(region(
                    "working.title",
                    table(
                            caption(Texts.say("working.means")),
                            ColumnHeads.of(
                                    "practice.skill",
                                    "working.hours",
                                    "working.before",
                                    "working.predicted",
                                    "working.now",
                                    "working.said"),
                            tbody(each(r.lines(), DrillPages::line)))));
        }
        r.rounds()
                .ifPresent(s -> out.add(p(Texts.say(
                        Math.abs(s.mean()) > NINETY * s.sd() ? "working.rounds" : "working.roundsNothing",
                        s.rounds(),
                        s.course(),
                        s.day(),
                        Words.of("%+.1f", s.mean()),
                        Words.of("%.1f", NINETY * s.sd())))));
        out.add(p(Texts.say(
                "working.slow",
                r.roundsToSee().entrySet().stream()
                        .map(e -> Texts.say(
                                e.getKey() == 1 ? "working.slowOne" : "working.slowMore", e.getValue(), e.getKey()))
                        .collect(Collectors.joining(", ")))));
        return section(out.toArray(DomContent[]::new));
    }

    private static DomContent line(PracticeReview.Line l) {
        double before = Math.exp(NINETY * l.modelSd());
        return tr(
                th(PracticeWords.of(l.skill())).attr("scope", "row"),
                td(Words.of("%.1f", l.hours())),
                td(band(1, 1 / before, before)),
                td(Words.of("%.2f", l.predicted())),
                td(band(l.now().left(), l.now().low(), l.now().high())),
                td(Texts.say("working." + l.verdict(), l.playings())).withClass("words"));
    }

    private static String band(double middle, double low, double high) {
        return Words.of("%.2f", middle) + " (" + Words.of("%.2f", low) + " " + Texts.say("words.to") + " "
                + Words.of("%.2f", high) + ")";
    }

    private static DomContent region(String title, DomContent content) {
        return div(content)
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say(title));
    }
}
