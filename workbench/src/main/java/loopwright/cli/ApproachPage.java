package loopwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import loopwright.action.ApproachAnswer;
import loopwright.action.PlanDay;
import loopwright.action.ReadLengths;

/** Prints how to approach the greens. */
final class ApproachPage {
    private final PrintWriter out;
    private final ReadLengths lengths;

    ApproachPage(PrintWriter out, ReadLengths lengths) {
        this.out = out;
        this.lengths = lengths;
    }

    void print(ApproachAnswer a, PlanDay day) {
        line("%s, %s tees, %s. Day: %s.", a.course(), a.tees(), a.player(), DayWords.of(day));
        line(
                "Last four columns: strokes to hole out from %s off that side of the green. Attack: what aiming at the hole"
                        + " itself costs. Miss: the side that costs least.",
                lengths.told("6 yd"));
        a.holes().forEach(this::hole);
        out.println();
        line(
                "Solved coarsely, hole location by hole location. Walk the green before you trust a slope nobody measured.");
    }

    private void hole(ApproachAnswer.HoleApproach h) {
        out.println();
        line(
                "Hole %d, par %d: from the %s, %s to the middle of the green%s",
                h.number(),
                h.par(),
                h.lie().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                lengths.far(h.metres()),
                h.measured() ? " (measured)" : "; slopes unknown");
        line(
                "  %-14s %4s  %-22s %-23s %7s %6s %-17s %-6s %-10s %5s %5s %5s %5s",
                "hole location",
                lengths.course().sign(),
                "club",
                "aim",
                "expect",
                "green",
                "attack",
                "miss",
                "short side",
                "short",
                "long",
                "left",
                "right");
        h.locations().forEach(this::location);
    }

    private void location(ApproachAnswer.Location l) {
        line(
                "  %-14s %4d  %-22s %-23s %7.2f %5.0f%% %-17s %-6s %-10s %5s %5s %5s %5s",
                l.name(),
                lengths.course().whole(l.toHoleMetres()),
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

    /** "6 yd short, 4 yd left"; less than one yard or metre is the hole itself. */
    private String aim(ApproachAnswer.Location l) {
        double one = lengths.course().inMetres();
        String along = Math.abs(l.beyondMetres()) < one
                ? ""
                : lengths.far(Math.abs(l.beyondMetres())) + (l.beyondMetres() < 0 ? " short" : " long");
        String across = Math.abs(l.rightMetres()) < one ? "" : lengths.side(l.rightMetres());
        return along.isEmpty() && across.isEmpty()
                ? "the hole"
                : along.isEmpty() || across.isEmpty() ? along + across : along + ", " + across;
    }

    static String word(ApproachAnswer.Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private void line(String format, Object... values) {
        out.println((values.length == 0 ? format : String.format(Locale.ROOT, format, values)).stripTrailing());
    }
}
