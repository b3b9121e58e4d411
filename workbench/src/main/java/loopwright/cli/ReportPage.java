package loopwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import loopwright.action.PlayerReport;
import loopwright.action.ReadLengths;
import loopwright.action.ReportWords;
import loopwright.scoring.Band;
import loopwright.scoring.ClubMiss;
import loopwright.scoring.Gain;
import loopwright.scoring.RoundReview;
import loopwright.scoring.ScoreGap;
import loopwright.scoring.ShotAttribution;

/** A player's report as plain text: three sentences first, then the ledgers behind them. */
final class ReportPage {
    private static final double LEAST_SHOWN = 0.3;

    private final PrintWriter out;
    private final ReadLengths lengths;

    ReportPage(PrintWriter out, ReadLengths lengths) {
        this.out = out;
        this.lengths = lengths;
    }

    void print(PlayerReport r) {
        say("%s, round of %s%s: %s.", r.name(), r.latest().day(), course(r), score(r));
        say("%s", ReportWords.doneWell(r, lengths));
        say("%s", ReportWords.decision(r));
        say("%s", ReportWords.practice(r, lengths));
        gains(r);
        causes(r);
        ordinary(r);
        r.gap().ifPresent(gap -> gap(gap, r.target()));
        misses(r);
        standing(r);
        out.flush();
    }

    private static String course(PlayerReport r) {
        return r.latest().course().isEmpty() ? "" : " on " + r.latest().course();
    }

    private static String score(PlayerReport r) {
        if (r.latest().lesson()) {
            return "a lesson, no score";
        }
        return r.latest().score().isPresent()
                ? r.latest().score().getAsInt() + " on " + r.latest().holes() + " holes"
                : "no total";
    }

    private void gains(PlayerReport r) {
        if (r.tour().rows().isEmpty()) {
            say("%nStrokes gained: nothing to measure; neither lengths, first putts nor strokes are written down.");
            return;
        }
        say(
                "%nStrokes gained; each column adds up to what its player needs from the same places less the strokes played:");
        say("  a  %s", r.tour().baseline());
        say(
                "  b  %s",
                r.benchmark()
                        .map(RoundReview::baseline)
                        .orElse("no benchmark: the course is not in the store, or nobody solved it yet"));
        say("  c  %s", r.past().map(RoundReview::baseline).orElse("no round before this one"));
        say("  %-34s %7s %8s %8s %8s", "", "strokes", "a", "b", "c");
        for (Gain row : r.tour().rows()) {
            say(
                    "  %-34s %7d %+8.2f %8s %8s",
                    ReportWords.band(row.band(), lengths),
                    row.strokes(),
                    row.gained(),
                    in(r.benchmark(), row.band()),
                    in(r.past(), row.band()));
        }
        say(
                "  %-34s %7d %+8.2f %8s %8s",
                "sum", r.tour().strokes(), r.tour().total(), total(r.benchmark()), total(r.past()));
    }

    private static String in(Optional<RoundReview> review, Band band) {
        return review.map(v -> String.format(Locale.ROOT, "%+.2f", ReportWords.gained(v.rows(), band)))
                .orElse("");
    }

    private static String total(Optional<RoundReview> review) {
        return review.map(v -> String.format(Locale.ROOT, "%+.2f", v.total())).orElse("");
    }

    private void causes(PlayerReport r) {
        if (r.causes().isEmpty()) {
            return;
        }
        say("%n%s", ReportWords.causes(r.causes()));
        for (ShotAttribution s : r.causes()) {
            if (s.lost() > LEAST_SHOWN || s.decision() > LEAST_SHOWN) {
                say("  %s", ReportWords.lost(s));
            }
        }
    }

    private void ordinary(PlayerReport r) {
        if (!r.ordinary().isEmpty()) {
            say("%nHow ordinary the shots at the hole were (level ground, still air):");
            r.ordinary().forEach(m -> say("  %s", ReportWords.ordinaryMiss(m, lengths)));
        }
    }

    private void gap(ScoreGap gap, int target) {
        say(
                "%nWhat stands between this player and %d, strokes a round against the benchmark (9 in 10), from %d rounds:",
                target, gap.rounds());
        for (ScoreGap.Row row : gap.rows()) {
            say(
                    "  %-48s %+5.1f (%+.1f to %+.1f), %d rounds%s",
                    ReportWords.obstacle(row.obstacle(), lengths),
                    row.cost(),
                    row.low(),
                    row.high(),
                    row.rounds(),
                    gap.tied().size() > 1 && gap.tied().contains(row.obstacle()) ? "  tied for the most" : "");
        }
        say("  %s", ReportWords.gapNote(gap));
    }

    private void misses(PlayerReport r) {
        if (r.misses().isEmpty()) {
            return;
        }
        say("%nMisses by club against what the plan assumes:");
        for (ClubMiss m : r.misses()) {
            if (m.noted() > 0) {
                say("  %-12s %s", m.club(), ReportWords.swings(m));
            }
            if (m.approaches() > 0) {
                say("  %-12s %s", m.club(), ReportWords.approaches(m));
            }
        }
    }

    private void standing(PlayerReport r) {
        say("%nDoes the model know this player: %s.", r.standing().sentence());
        if (!r.standing().foretold().isEmpty()) {
            say("  %s", ReportWords.brier(r.standing()));
        }
    }

    private void say(String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values));
    }
}
