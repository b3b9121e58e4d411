package loopwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import loopwright.action.FitResult;
import loopwright.action.ReadLengths;
import loopwright.units.Distance;

/** Prints a fitted bag as a table. */
final class BagPage {
    private final PrintWriter out;
    private final ReadLengths lengths;

    BagPage(PrintWriter out, ReadLengths lengths) {
        this.out = out;
        this.lengths = lengths;
    }

    void print(FitResult result) {
        result.notes().forEach(out::println);
        out.println();
        out.println("Lengths in " + lengths.course().words()
                + ", each with the range that holds it with 90 %. Width: where 8 of 10 and 19 of 20 balls land,");
        out.println("bad ones included, on the course; of carry: the first in per cent of the carry.");
        out.println("Assumed: what still rests on the level and the bag's trend, not on balls.");
        out.println("Open: the range holds both sides. Trend: no ball of this club was seen, the others tell.");
        out.println();
        out.printf(
                "%-28s %-16s %-5s  %-17s %-15s %-8s %-16s %-16s %-5s %s%n",
                "club",
                "carry",
                "total",
                "bias, degrees",
                "8 in 10",
                "of carry",
                "19 in 20",
                "mishits",
                "balls",
                "assumed");
        result.clubs().forEach(c -> out.println(line(c)));
        out.println();
        result.shortGame().forEach(s -> out.println(line(s)));
        FitResult.PuttingResult putting = result.putting();
        if (putting != null) {
            out.println(line(putting));
        }
    }

    private String line(FitResult.ShortResult s) {
        return String.format(
                Locale.ROOT,
                "%-28s from %s every second ball within %s, holed %s, mishit %s; %d balls, %.0f %% assumed",
                s.shot(),
                lengths.far(Distance.ofYards(s.fromYards()).metres()),
                near(s.halfWithinFeet()),
                percent(s.holed()),
                percent(s.mishitRate()),
                s.balls(),
                100 * s.assumedShare());
    }

    private String line(FitResult.PuttingResult p) {
        FitResult.Range start = p.startLineDegrees();
        String line = start == null
                ? "start line and reading as one until putts on a straight line are logged"
                : "start line alone " + range(start, "%.1f") + " degrees";
        return String.format(
                Locale.ROOT,
                "%-28s direction %s degrees (%s), pace %s %%; %d putts",
                "putts",
                range(p.directionDegrees(), "%.1f"),
                line,
                range(p.pacePercent(), "%.0f"),
                p.putts());
    }

    private String line(FitResult.ClubResult c) {
        String label = c.effort().equals("full") ? c.club() : c.club() + " " + c.effort();
        return String.format(
                Locale.ROOT,
                "%-28s %-16s %5d  %-17s %-15s %6.0f %% %-16s %-16s %5d %4.0f %%%s",
                label,
                yards(c.carryYards()),
                whole(c.totalYards().middle()),
                bias(c.biasDegrees()),
                yards(c.eightInTenYards()),
                c.eightInTenPercent(),
                yards(c.nineteenInTwentyYards()),
                percent(c.mishitRate()),
                c.balls(),
                100 * c.assumedShare(),
                c.balls() == 0 ? "  (trend)" : "");
    }

    /** Open where the interval holds both sides; a bias that rounds to nothing has no side. */
    private static String bias(FitResult.Range bias) {
        String size = String.format(Locale.ROOT, "%.1f", Math.abs(bias.middle()));
        String side = size.equals("0.0") ? "" : bias.middle() < 0 ? " left" : " right";
        return size + side + (bias.low() < 0 && bias.high() > 0 ? " (open)" : "");
    }

    private String yards(FitResult.Range r) {
        return whole(r.middle()) + " (" + whole(r.low()) + " to " + whole(r.high()) + ")";
    }

    private long whole(double yards) {
        return lengths.course().whole(Distance.ofYards(yards).metres());
    }

    private String near(FitResult.Range feet) {
        double factor = lengths.metricGreens() ? Distance.METRES_PER_FOOT : 1;
        return range(new FitResult.Range(feet.middle() * factor, feet.low() * factor, feet.high() * factor), "%.1f")
                + (lengths.metricGreens() ? " m" : " ft");
    }

    private static String range(FitResult.Range r, String format) {
        return String.format(
                Locale.ROOT, format + " (" + format + " to " + format + ")", r.middle(), r.low(), r.high());
    }

    private static String percent(FitResult.Range r) {
        return String.format(Locale.ROOT, "%.0f %% (%.0f to %.0f)", 100 * r.middle(), 100 * r.low(), 100 * r.high());
    }
}
