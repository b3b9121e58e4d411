package loopwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.PuttAnswer;

/** Says the answer to a putt in plain sentences. */
final class PuttSentences {
    private static final double STRAIGHT_INCHES = 0.25;

    private PuttSentences() {}

    /** The heading first, the note of use last. */
    static List<String> of(PuttAnswer a) {
        List<String> out = new ArrayList<>();
        out.add(heading(a));
        out.add("Putting of " + a.skill().from() + ".");
        out.add(line(a));
        out.add("Pace: " + pace(a.paceFeetPast()) + ".");
        out.add(String.format(
                Locale.ROOT,
                "Odds: one putt %s, two %s, three or more %s; %.2f putts on average.",
                percent(a.odds().one()),
                percent(a.odds().two()),
                percent(a.odds().threeOrMore()),
                a.expectedPutts()));
        out.add(leave(a));
        out.add(a.note());
        return out;
    }

    private static String heading(PuttAnswer a) {
        return String.format(
                Locale.ROOT,
                "%s at a green speed of %s, %s",
                feet(a.distanceFeet()),
                feet(a.greenSpeedFeet()),
                a.slopeMeasured() ? slope(a) : "slope not measured");
    }

    private static String slope(PuttAnswer a) {
        double uphill = a.uphillPercent() == null ? 0 : a.uphillPercent();
        double right = a.fallsRightPercent() == null ? 0 : a.fallsRightPercent();
        List<String> parts = new ArrayList<>();
        if (Math.abs(uphill) >= 0.05) {
            parts.add(String.format(Locale.ROOT, "%.1f %% %s", Math.abs(uphill), uphill > 0 ? "uphill" : "downhill"));
        }
        if (Math.abs(right) >= 0.05) {
            parts.add(String.format(Locale.ROOT, "%.1f %% falling %s", Math.abs(right), right > 0 ? "right" : "left"));
        }
        return parts.isEmpty() ? "level" : String.join(", ", parts);
    }

    private static String line(PuttAnswer a) {
        if (a.aimInches() == null
                || a.aimOutsideInches() == null
                || a.startDegrees() == null
                || a.breakInches() == null) {
            return "No break is claimed, because the slope was not measured; the odds are those of an average green.";
        }
        if (Math.abs(a.aimInches()) < STRAIGHT_INCHES) {
            return "Line: straight at the hole.";
        }
        String side = a.aimInches() > 0 ? "right" : "left";
        String where = a.aimOutsideInches() == 0
                ? String.format(Locale.ROOT, "%.1f in %s of the centre, inside the hole", Math.abs(a.aimInches()), side)
                : String.format(
                        Locale.ROOT,
                        "%.1f in outside the %s edge (%.1f in from the centre)",
                        Math.abs(a.aimOutsideInches()),
                        side,
                        Math.abs(a.aimInches()));
        return String.format(
                Locale.ROOT,
                "Line: start it %.1f degrees %s, %s; it breaks %.1f in to the %s.",
                Math.abs(a.startDegrees()),
                side,
                where,
                a.breakInches(),
                a.aimInches() > 0 ? "left" : "right");
    }

    private static String pace(double feetPast) {
        if (feetPast < 0) {
            return "to stop " + feet(-feetPast) + " short of the hole, which keeps the next one short";
        }
        return feetPast < 0.05
                ? "to die at the hole"
                : "to stop " + feet(feetPast) + " past the hole if it were covered";
    }

    private static String leave(PuttAnswer a) {
        if (a.odds().one() > 0.999) {
            return "A miss is not to be expected.";
        }
        String mean = "A miss leaves " + feet(a.leave().meanFeet()) + " on average";
        if (a.leave().pastFeet() == null || a.leave().rightFeet() == null) {
            return mean + ".";
        }
        double past = a.leave().pastFeet();
        double right = a.leave().rightFeet();
        String along =
                Math.abs(past) < 0.1 ? "level with the hole" : feet(Math.abs(past)) + (past > 0 ? " past" : " short");
        String across = Math.abs(right) < 0.1
                ? ""
                : " and " + feet(Math.abs(right)) + (right > 0 ? " to the right" : " to the left");
        return mean + ", its middle " + along + across + ".";
    }

    private static String feet(double feet) {
        String text = String.format(Locale.ROOT, "%.1f", feet);
        return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + " ft";
    }

    private static String percent(double share) {
        double p = 100 * share;
        return p < 0.5 && p > 0
                ? "under 1 %"
                : p > 99.5 && p < 100 ? "over 99 %" : String.format(Locale.ROOT, "%.0f %%", p);
    }
}
