package loopwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.action.PlanDay;
import loopwright.action.WedgeTable;
import loopwright.units.Distance;

/** Prints a wedge table. */
final class WedgesPage {

    private final PrintWriter out;

    WedgesPage(PrintWriter out) {
        this.out = out;
    }

    void print(WedgeTable table, PlanDay day) {
        line(
                "%s: wedge table from the %s, level ground, a green 28 yd across, the hole in its middle.",
                table.player(), table.lie().name().toLowerCase(Locale.ROOT));
        line("Day: %s.", DayWords.of(day));
        out.println();
        line("Your swings, yards (depth and width: 8 of 10 solid balls in the air; mishits beside them)");
        line("%-30s %6s %5s %6s %6s %8s %6s", "", "carry", "run", "depth", "width", "mishits", "balls");
        table.swings().forEach(this::reach);
        out.println();
        line("%6s  %-30s %8s %6s %10s  %s", "from", "play", "strokes", "green", "8 in 10", "next best");
        table.rows().forEach(this::row);
        out.println();
        table.gaps().forEach(this::gap);
        if (table.gaps().isEmpty()) {
            line("No gap of more than 8 yd between neighbouring swings.");
        }
        table.findGapToFill()
                .ifPresentOrElse(
                        g -> line(
                                "To add: a swing of %.0f yd; another effort you practise serves as well as another club.",
                                yards(g.middleMetres())),
                        () -> line("No gap is worth another club."));
        if (!table.measure().isEmpty()) {
            line(
                    "Measure: %s. These swings have not been measured; the table is only as good as what is assumed of"
                            + " them.",
                    String.join(", ", table.measure()));
        }
    }

    private void reach(WedgeTable.Reach r) {
        line(
                "%-30s %6.0f %5.0f %6.0f %6.0f %7.0f%% %6d%s",
                r.swing().label(),
                yards(r.carryMetres()),
                yards(r.runMetres()),
                yards(r.depthMetres()),
                yards(r.widthMetres()),
                100 * r.mishitRate(),
                r.swing().evidence().balls(),
                r.swing().evidence().isMostlyAssumed() ? "  (assumed)" : "");
    }

    private void row(WedgeTable.Row r) {
        String next =
                r.next().stream().map(a -> a.club() + " " + a.costInWords()).collect(Collectors.joining());
        line(
                "%6.0f  %-30s %8.2f %5.0f%% %7.0f ft  %s",
                yards(r.metres()),
                r.shot(),
                r.expected(),
                100 * r.onGreen(),
                Distance.ofMetres(r.nearMetres()).feet(),
                next);
    }

    private void gap(WedgeTable.Gap g) {
        line(
                "Gap: %.0f yd between %s (%.0f) and %s (%.0f); a swing of %.0f yd would save %s from there.",
                yards(g.longerMetres() - g.shorterMetres()),
                g.shorter(),
                yards(g.shorterMetres()),
                g.longer(),
                yards(g.longerMetres()),
                yards(g.middleMetres()),
                g.saving() < 2 * g.standardError()
                        ? "nothing that shows"
                        : String.format(Locale.ROOT, "%.2f strokes", g.saving()));
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }

    private void line(String format, Object... values) {
        out.println((values.length == 0 ? format : String.format(Locale.ROOT, format, values)).stripTrailing());
    }
}
