package loopwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import loopwright.action.ApproachAnswer;
import loopwright.action.PlanDay;
import loopwright.units.Distance;

/** Prints how to approach the greens. */
final class ApproachPage {
    private final PrintWriter out;

    ApproachPage(PrintWriter out) {
        this.out = out;
    }

    void print(ApproachAnswer a, PlanDay day) {
        line("%s, %s tees, %s. Day: %s.", a.course(), a.tees(), a.player(), DayWords.of(day));
        line("Sides: strokes to hole out from 6 yd off the green there. Attack: what aiming at the hole itself costs.");
        a.holes().forEach(this::hole);
        out.println();
        line(
                "Solved coarsely, hole location by hole location. Walk the green before you trust a slope nobody measured.");
    }

    private void hole(ApproachAnswer.HoleApproach h) {
        out.println();
        line(
                "Hole %d, par %d: from the %s, %.0f yd to the middle of the green%s",
                h.number(),
                h.par(),
                h.lie().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                yards(h.metres()),
                h.measured() ? " (measured)" : "; slopes unknown");
        line(
                "  %-14s %4s  %-22s %-19s %7s %6s %-17s %-6s %-6s %5s %5s %5s %5s",
                "hole location",
                "yd",
                "club",
                "aim",
                "expect",
                "green",
                "attack",
                "miss",
                "short",
                "short",
                "long",
                "left",
                "right");
        h.locations().forEach(this::location);
    }

    private void location(ApproachAnswer.Location l) {
        line(
                "  %-14s %4.0f  %-22s %-19s %7.2f %5.0f%% %-17s %-6s %-6s %5s %5s %5s %5s",
                l.name(),
                yards(l.toHoleMetres()),
                l.club(),
                aim(l),
                l.expected(),
                100 * l.onGreen(),
                l.attackIsFree() ? "the same for you" : String.format(Locale.ROOT, "+%.2f", l.attackCost()),
                word(l.favoured()),
                word(l.shortSide()),
                strokes(l, ApproachAnswer.Side.SHORT),
                strokes(l, ApproachAnswer.Side.LONG),
                strokes(l, ApproachAnswer.Side.LEFT),
                strokes(l, ApproachAnswer.Side.RIGHT));
        l.warnings().forEach(w -> line("      note: %s", w));
    }

    private static String strokes(ApproachAnswer.Location l, ApproachAnswer.Side side) {
        Double strokes = l.strokes().get(side);
        return strokes == null ? "none" : String.format(Locale.ROOT, "%.2f", strokes);
    }

    /** "6 yd short, 4 left". */
    private static String aim(ApproachAnswer.Location l) {
        double beyond = yards(l.beyondMetres());
        double right = yards(l.rightMetres());
        String along = Math.abs(beyond) < 1
                ? ""
                : String.format(Locale.ROOT, "%.0f yd %s", Math.abs(beyond), beyond < 0 ? "short" : "long");
        String across = Math.abs(right) < 1
                ? ""
                : String.format(Locale.ROOT, "%.0f yd %s", Math.abs(right), right < 0 ? "left" : "right");
        return along.isEmpty() && across.isEmpty()
                ? "the hole"
                : along.isEmpty() || across.isEmpty() ? along + across : along + ", " + across;
    }

    static String word(ApproachAnswer.Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }

    private void line(String format, Object... values) {
        out.println((values.length == 0 ? format : String.format(Locale.ROOT, format, values)).stripTrailing());
    }
}
