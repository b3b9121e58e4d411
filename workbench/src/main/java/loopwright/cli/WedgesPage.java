package loopwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.action.PlanDay;
import loopwright.action.ReadLengths;
import loopwright.action.WedgeTable;

/** Prints a wedge table. */
final class WedgesPage {

    private final PrintWriter out;
    private final WedgeTable table;

    WedgesPage(PrintWriter out, WedgeTable table) {
        this.out = out;
        this.table = table;
    }

    void print(PlanDay day) {
        line(
                "%s: wedge table from the %s, level ground, a green %s across, the hole in its middle.",
                table.player(), table.lie().name().toLowerCase(Locale.ROOT), of(WedgeTable.GREEN_METRES));
        line("Day: %s.", DayWords.of(day));
        out.println();
        line(
                "Your swings, %s (depth and width: 8 of 10 solid balls in the air; mishits beside them)",
                table.unit().words());
        line("%-30s %6s %5s %6s %6s %8s %6s", "", "carry", "run", "depth", "width", "mishits", "balls");
        table.swings().forEach(this::reach);
        out.println();
        line("%6s  %-30s %8s %6s %10s  %s", "from", "play", "strokes", "green", "8 in 10", "next best");
        table.rows().forEach(this::row);
        out.println();
        table.gaps().forEach(this::gap);
        if (table.gaps().isEmpty()) {
            line(
                    "No gap of more than %s between where neighbouring swings finish, run and all.",
                    of(WedgeTable.LEAST_GAP_METRES));
        }
        table.findGapToFill()
                .ifPresentOrElse(
                        g -> line(
                                "To add: a swing that finishes at %s, run and all; another effort you practise serves as well as another club.",
                                of(g.middleMetres())),
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
                "%-30s %6d %5d %6d %6d %7.0f%% %6d%s",
                r.swing().label(),
                whole(r.carryMetres()),
                whole(r.runMetres()),
                whole(r.depthMetres()),
                whole(r.widthMetres()),
                100 * r.mishitRate(),
                r.swing().evidence().balls(),
                r.swing().evidence().isMostlyAssumed() ? "  (assumed)" : "");
    }

    private void row(WedgeTable.Row r) {
        String next =
                r.next().stream().map(a -> a.club() + " " + a.costInWords()).collect(Collectors.joining());
        line(
                "%6d  %-30s %8.2f %5.0f%% %10s  %s",
                whole(r.metres()),
                r.shot(),
                r.expected(),
                100 * r.onGreen(),
                ReadLengths.in(table.unit()).near(r.nearMetres()),
                next);
    }

    private void gap(WedgeTable.Gap g) {
        line(
                "Gap: %s between %s, which finishes at %d, and %s, at %d (carry and run); a swing that finishes at %s would"
                        + " save %s from there.",
                whole(g.longerMetres()) - whole(g.shorterMetres()) + " "
                        + table.unit().sign(),
                g.shorter(),
                whole(g.shorterMetres()),
                g.longer(),
                whole(g.longerMetres()),
                of(g.middleMetres()),
                g.saving() < 2 * g.standardError()
                        ? "nothing that shows"
                        : String.format(Locale.ROOT, "%.2f strokes", g.saving()));
    }

    private long whole(double metres) {
        return table.unit().whole(metres);
    }

    private String of(double metres) {
        return table.unit().of(metres);
    }

    private void line(String format, Object... values) {
        out.println((values.length == 0 ? format : String.format(Locale.ROOT, format, values)).stripTrailing());
    }
}
