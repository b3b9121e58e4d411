package loopwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import loopwright.action.ReadLengths;
import loopwright.action.ShortGameTable;
import loopwright.ground.Situation;
import loopwright.units.Distance;

/** Prints a short-game table, lie by lie. */
final class ShortGamePage {
    private final PrintWriter out;
    private final ReadLengths lengths;

    ShortGamePage(PrintWriter out, ReadLengths lengths) {
        this.out = out;
        this.lengths = lengths;
    }

    void print(ShortGameTable table, boolean all) {
        line(
                "%s: round the green, level ground. Chances of 100; room: green between its edge and the hole.",
                table.player());
        String lie = "";
        for (ShortGameTable.Spot spot : table.spots()) {
            if (!words(spot).equals(lie)) {
                lie = words(spot);
                out.println();
                line("From the %s:", lie);
                line(
                        "%6s %5s  %-13s %8s %5s %5s %8s %7s  %s",
                        lengths.course().words(),
                        "room",
                        "play",
                        "strokes",
                        lengths.near(Distance.ofFeet(3).metres()),
                        lengths.near(Distance.ofFeet(6).metres()),
                        "up+down",
                        "2nd",
                        all ? "" : "next best");
            }
            spot(spot, all);
        }
        out.println();
        if (!table.assumed().isEmpty()) {
            line(
                    "Not measured: %s. They are assumed by your level; measure them before you trust a close choice.",
                    String.join(", ", table.assumed()));
        }
        line("2nd: the ball is not on the green and another short shot is needed.");
    }

    private void spot(ShortGameTable.Spot spot, boolean all) {
        List<ShortGameTable.Way> ways = spot.ways();
        for (int i = 0; i < (all ? ways.size() : 1); i++) {
            ShortGameTable.Way w = ways.get(i);
            line(
                    "%6s %5s  %-13s %8.2f %5.0f %5.0f %8.0f %7.0f  %s",
                    i == 0 ? lengths.course().whole(spot.metres()) : "",
                    i == 0 ? lengths.course().whole(spot.roomMetres()) : "",
                    w.shot(),
                    w.expected(),
                    100 * w.insideThreeFeet(),
                    100 * w.insideSixFeet(),
                    100 * w.upAndDown(),
                    100 * w.secondChip(),
                    all ? "" : next(ways));
        }
    }

    private static String next(List<ShortGameTable.Way> ways) {
        if (ways.size() < 2) {
            return "";
        }
        ShortGameTable.Way best = ways.get(0);
        ShortGameTable.Way next = ways.get(1);
        return next.shot()
                + (next.isSameAs(best)
                        ? " the same for you"
                        : String.format(Locale.ROOT, " %+.2f", next.expected() - best.expected()));
    }

    static String words(ShortGameTable.Spot spot) {
        String lie = spot.lie().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return spot.situation() == Situation.DOWN ? lie + ", ball down in it" : lie;
    }

    private void line(String format, Object... values) {
        out.println((values.length == 0 ? format : String.format(Locale.ROOT, format, values)).stripTrailing());
    }
}
