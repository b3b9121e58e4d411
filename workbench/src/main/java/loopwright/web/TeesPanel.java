package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.br;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.action.ApproachClubs;
import loopwright.action.PlanChoice;
import loopwright.action.PublishedLength;
import loopwright.action.TeesAnswer;

/** Sets of tees side by side, with the clubs they leave drawn. */
final class TeesPanel {
    private static final int PUBLISHED_HOLES = 18;

    private final TeesAnswer answer;
    private final PlanChoice choice;
    private final Units units;

    TeesPanel(TeesAnswer answer, PlanChoice choice, Units units) {
        this.answer = answer;
        this.choice = choice;
        this.units = units;
    }

    DomContent content() {
        List<DomContent> out = new ArrayList<>();
        out.add(new TodayPanel(answer.today(), units).section());
        out.add(side(answer.player(), answer.published(), answer.sets(), answer.choice(), true));
        answer.partner().ifPresent(partner -> {
            out.add(side(partner.player(), partner.published(), partner.sets(), partner.choice(), false));
            out.add(p(strong(Texts.say(
                    "tees.together",
                    answer.player(),
                    partner.pairOwn(),
                    partner.player(),
                    partner.pairOther(),
                    Words.of("%.0f", 100 * partner.difference())))));
        });
        out.add(p(Texts.say("tees.coarse")).withClass("note"));
        return div(out.toArray(DomContent[]::new));
    }

    private DomContent side(
            String player,
            PublishedLength published,
            List<TeesAnswer.Row> sets,
            TeesAnswer.Choice recommended,
            boolean own) {
        return section(
                h2(player),
                p(strong(Texts.say("tees.recommended", recommended.set())), text(" (" + recommended.reason() + ")."))
                        .withClass("lead"),
                p(published(published, sets, recommended)).withClass("note"),
                div(table(
                                caption(Texts.say("tees.caption", answer.target())),
                                ColumnHeads.withWords(
                                        List.of("tees.clubs", "tees.beyond"),
                                        "tees.set",
                                        "holes.length",
                                        "tees.expect",
                                        "tees.chance",
                                        "tees.clubs",
                                        "tees.parFours",
                                        "tees.parFives",
                                        "tees.lost",
                                        "tees.beyond"),
                                tbody(each(sets, r -> row(r, recommended, own)))))
                        .withClass("wide")
                        .withTabindex(0)
                        .attr("role", "region")
                        .attr("aria-label", Texts.say("answers.tees") + ", " + player));
    }

    private String published(PublishedLength length, List<TeesAnswer.Row> sets, TeesAnswer.Choice recommended) {
        String words = Texts.say(
                "tees.published",
                units.length(length.driveMetres()),
                units.length(length.shortestMetres()),
                units.length(length.longestMetres()));
        if (answer.holes() != PUBLISHED_HOLES) {
            return words;
        }
        return words
                + sets.stream()
                        .filter(r -> r.isCandidate() && r.name().equals(recommended.set()))
                        .findFirst()
                        .map(r -> " " + beside(length, r.lengthMetres()))
                        .orElse("");
    }

    private String beside(PublishedLength length, double metres) {
        double outside = length.outsideMetres(metres);
        return outside < 1
                ? Texts.say("tees.inside", units.length(metres))
                : Texts.say(
                        metres > length.longestMetres() ? "tees.more" : "tees.less",
                        units.length(metres),
                        units.length(outside));
    }

    private DomContent row(TeesAnswer.Row r, TeesAnswer.Choice recommended, boolean own) {
        boolean best = r.isCandidate() && r.name().equals(recommended.set());
        DomContent name = own && r.isCandidate() && !r.mixed()
                ? a(r.name()).withHref("/plan?" + choice.withTees(r.name()).query())
                : text(r.variant().isEmpty() ? r.name() : "\u2013 " + r.variant());
        var head = th(best ? strong(name) : name).attr("scope", "row");
        return tr(head, td(units.length(r.lengthMetres())), each(r.play().map(this::cells).orElse(List.of()).stream()))
                .attr("data-set", r.name() + (r.variant().isEmpty() ? "" : ", " + r.variant()));
    }

    private List<DomContent> cells(TeesAnswer.Play p) {
        return List.of(
                td(Words.of("%.1f", p.expected())).withClass("expected"),
                td(text(Words.percent(p.chance()) + " "), Svg.share(p.chance())).withClass("chance"),
                td(clubs(p.approaches()), br(), text(numbers(p.approaches()))).withClass("words"),
                td(Texts.say("tees.of", p.parFoursInTwo(), p.parFours())),
                td(Texts.say("tees.twoThree", p.parFivesInTwo(), p.parFivesInThree(), p.parFives())),
                td(Words.of("%.1f", p.ballsLost())),
                td(p.carriesBeyond().stream()
                                .map(f -> Texts.say(
                                        "tees.carry",
                                        f.hole(),
                                        units.length(f.metres()),
                                        units.length(f.longestMetres())))
                                .collect(Collectors.joining("; ")))
                        .withClass("words"));
    }

    /** From the left and ever lighter, as the caption says; the numbers stand below. */
    private static DomContent clubs(ApproachClubs c) {
        Svg svg = Svg.beside("clubs", 200, 14);
        double x = 0;
        double[] shares = {c.longClub(), c.middleIron(), c.shortIron(), c.wedge(), c.outOfReach()};
        String[] styles = {"long", "mid", "short", "wedge", "beyond"};
        for (int i = 0; i < shares.length; i++) {
            svg.rectangle(styles[i], x, 1, 200 * shares[i], 12);
            x += 200 * shares[i];
        }
        return svg.drawn();
    }

    private static String numbers(ApproachClubs c) {
        return Texts.say(
                "tees.numbers",
                Words.of("%.0f", 100 * c.longClub()),
                Words.of("%.0f", 100 * c.middleIron()),
                Words.of("%.0f", 100 * c.shortIron()),
                Words.of("%.0f", 100 * c.wedge()),
                Words.of("%.0f", 100 * c.outOfReach()));
    }
}
