package loopwright.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Putts of the invented player, thrown by a plain model of its own: a direction, a rolled length, a hole that takes what
 * rolls over it and would not go further than six feet past. He does not always note the leave.
 */
final class DemoPutts {
    static final String HEADER = "distance_ft,made,leave_ft,side";
    private static final int PUTTS = 300;
    private static final double DIRECTION_DEGREES = 1.75;
    private static final double PACE = 0.085;
    private static final double MEANT_PAST_FEET = 1.3;
    private static final double HOLE_RADIUS_FEET = 2.125 / 12;
    private static final double FASTEST_PAST_FEET = 6;

    private DemoPutts() {}

    static List<String> lines(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> out = new ArrayList<>();
        out.add(HEADER);
        for (int i = 0; i < PUTTS; i++) {
            double third = random.nextDouble(3);
            double feet = third < 1
                    ? random.nextDouble(2.5, 6.5)
                    : third < 2 ? random.nextDouble(6.5, 20) : random.nextDouble(20, 52);
            out.add(line(Math.round(feet * 2) / 2.0, random));
        }
        return out;
    }

    private static String line(double feet, SplittableRandom random) {
        double angle = Math.toRadians(DIRECTION_DEGREES * random.nextGaussian());
        double rolled = (feet + MEANT_PAST_FEET) * (1 + PACE * random.nextGaussian());
        double past = rolled * Math.cos(angle) - feet;
        double aside = feet * Math.sin(angle);
        // The faster it comes, the less of the hole it finds; linear between all of it and nothing.
        double open = HOLE_RADIUS_FEET * Math.max(0, 1 - Math.max(0, past) / FASTEST_PAST_FEET);
        boolean made = past >= 0 && Math.abs(aside) < open;
        double sideways = rolled * Math.sin(angle);
        boolean noted = random.nextDouble() < 0.7;
        if (made || !noted) {
            return String.format(Locale.ROOT, "%.1f,%s,,", feet, made ? "yes" : "no");
        }
        String side = past < 0 ? "short" : Math.abs(sideways) > past ? (sideways < 0 ? "left" : "right") : "long";
        double leave = Math.max(0.5, Math.round(Math.hypot(past, sideways) * 2) / 2.0);
        return String.format(Locale.ROOT, "%.1f,no,%.1f,%s", feet, leave, side);
    }
}
