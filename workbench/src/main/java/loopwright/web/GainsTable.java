package loopwright.web;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.scoring.Band;
import loopwright.scoring.Gain;
import loopwright.scoring.PartOfGame;
import loopwright.scoring.RoundReview;

/** Strokes gained as a ledger: a row for each part of the game, a signed bar from one axis, whiskers where several rounds tell. */
final class GainsTable {
    /** 90 % of a normal law. */
    private static final double REACH = 1.645;

    private static final int ROUND_HOLES = 18;
    /** With fewer other rounds a spread says nothing: assumed. */
    private static final int ENOUGH_OTHERS = 5;

    /** {@code low} and {@code high} are the ends of the 90 % interval, NaN where there is none. */
    private record Row(Band band, int strokes, double gained, double low, double high) {}

    private final String caption;
    private final List<Row> rows;

    private GainsTable(String caption, List<Row> rows) {
        this.caption = caption;
        this.rows = rows;
    }

    /**
     * One round; the whiskers are where 9 in 10 of the player's other rounds lie, brought to as many holes, once enough of
     * them are measured.
     */
    static GainsTable of(RoundReview review, List<RoundReview> others) {
        boolean enough = others.size() >= ENOUGH_OTHERS;
        return new GainsTable(
                enough
                        ? Texts.say("gains.among", review.baseline(), others.size())
                        : Texts.say("gains.round", review.baseline(), ENOUGH_OTHERS),
                review.rows().stream()
                        .map(g -> enough
                                ? among(g, review.holes().size(), others)
                                : new Row(g.band(), g.strokes(), g.gained(), Double.NaN, Double.NaN))
                        .toList());
    }

    private static Row among(Gain gain, int holes, List<RoundReview> others) {
        List<Double> values = others.stream()
                .map(r -> r.rows().stream()
                                .filter(g -> g.band().equals(gain.band()))
                                .mapToDouble(Gain::gained)
                                .sum()
                        * holes
                        / r.holes().size())
                .toList();
        double mean = values.stream().mapToDouble(v -> v).average().orElse(0);
        double squares =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        double reach = REACH * Math.sqrt(squares / (values.size() - 1));
        return new Row(gain.band(), gain.strokes(), gain.gained(), mean - reach, mean + reach);
    }

    /** The mean over rounds, each brought to 18 holes, with the interval of that mean. */
    static GainsTable of(List<RoundReview> reviews) {
        Map<Band, List<Double>> gained =
                new TreeMap<>(Comparator.comparing(Band::part).thenComparing(Band::from));
        Map<Band, Integer> strokes =
                new TreeMap<>(Comparator.comparing(Band::part).thenComparing(Band::from));
        for (RoundReview review : reviews) {
            for (Gain g : review.rows()) {
                double per18 = (double) ROUND_HOLES / review.holes().size();
                gained.computeIfAbsent(g.band(), b -> new ArrayList<>()).add(per18 * g.gained());
                strokes.merge(g.band(), g.strokes(), Integer::sum);
            }
        }
        List<Row> rows = new ArrayList<>();
        gained.forEach((band, values) -> rows.add(row(band, strokes.getOrDefault(band, 0), values, reviews.size())));
        return new GainsTable(
                reviews.isEmpty()
                        ? ""
                        : Texts.say("gains.mean", reviews.size(), reviews.get(0).baseline()),
                rows);
    }

    /** A round without a stroke of the row gained nothing in it. */
    private static Row row(Band band, int strokes, List<Double> values, int rounds) {
        double mean = values.stream().mapToDouble(v -> v).sum() / rounds;
        double squares =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum()
                        + (rounds - values.size()) * mean * mean;
        double error = rounds < 3 ? Double.NaN : Math.sqrt(squares / (rounds - 1) / rounds);
        return new Row(band, strokes, mean, mean - REACH * error, mean + REACH * error);
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** The part that costs most, in words; empty without rows. */
    String dearest() {
        return rows.stream()
                .filter(r ->
                        r.band().part() != PartOfGame.WHOLE_HOLE && r.band().part() != PartOfGame.TO_THE_GREEN)
                .min(Comparator.comparingDouble(Row::gained))
                .map(r -> label(r.band()) + " " + Words.of("%+.1f", r.gained()))
                .orElse("");
    }

    DomContent content(Units units) {
        double most = rows.stream()
                .mapToDouble(r -> Double.isNaN(r.low())
                        ? Math.abs(r.gained())
                        : Math.max(Math.abs(r.gained()), Math.max(Math.abs(r.low()), Math.abs(r.high()))))
                .max()
                .orElse(1);
        Ledger ledger = new Ledger(most, true);
        return div(table(
                        caption(caption),
                        ColumnHeads.of("gains.part", "gains.strokes", "gains.gained", "gains.bar"),
                        tbody(each(
                                rows,
                                r -> tr(
                                        th(label(r.band(), units)).attr("scope", "row"),
                                        td(Integer.toString(r.strokes())),
                                        td(Ledger.number(r.gained(), r.low(), r.high())),
                                        td(ledger.bar(r.gained(), r.low(), r.high())))))))
                .withClass("wide ledger")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("gains.title"));
    }

    private static String label(Band band) {
        return label(band, new Units(false, false, Units.WindUnit.MPH, false));
    }

    static String label(Band band, Units units) {
        String key = "part." + band.part();
        return band.part() == PartOfGame.APPROACH || band.part() == PartOfGame.PUTTING
                ? Texts.say(key, range(band, units))
                : Texts.say(key);
    }

    private static String range(Band band, Units units) {
        boolean putts = band.part() == PartOfGame.PUTTING;
        double from = band.from().metres();
        // approaches begin where the short game ends
        double low = !putts && from == 0 ? 40 * 0.9144 : from;
        String least = putts ? units.shortLength(low) : units.length(low);
        if (band.isOpen()) {
            return Texts.say("gains.more", least);
        }
        double below = band.below().metres();
        String most = putts ? units.shortLength(below) : units.length(below);
        return low == 0 ? Texts.say("gains.under", most) : least + " " + Texts.say("words.to") + " " + most;
    }
}
