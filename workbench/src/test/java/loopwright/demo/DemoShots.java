package loopwright.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Measured balls of the invented player: a right-handed 82-golfer who fades the long clubs, is short with his hybrid and
 * good with his short irons. Nothing here is measured or read from any table; the model is not the one that is fitted.
 */
final class DemoShots {
    static final String HEADER = "date,session,club,effort,ball,surface,carry_yd,total_yd,side_yd";

    /**
     * How he hits one club.
     *
     * @param balls how many are in the list
     * @param carry yards, solid
     * @param carrySpread share of the carry
     * @param bias degrees, + right
     * @param spread degrees
     * @param missed share of strikes off the middle of the face
     */
    private record Habit(
            String club,
            String effort,
            int balls,
            double carry,
            double run,
            double carrySpread,
            double bias,
            double spread,
            double missed) {}

    private static final List<Habit> BAG = List.of(
            new Habit("driver", "full", 92, 226, 19, 0.045, 1.3, 4.4, 0.09),
            new Habit("3-wood", "full", 36, 203, 15, 0.048, 1.2, 4.3, 0.13),
            new Habit("5-wood", "full", 22, 191, 12, 0.048, 0.9, 4.1, 0.12),
            new Habit("4-hybrid", "full", 36, 172, 11, 0.055, 0.4, 4.3, 0.13),
            new Habit("5-iron", "full", 44, 162, 10, 0.052, 0.6, 3.9, 0.12),
            new Habit("6-iron", "full", 44, 153, 8, 0.050, 0.3, 3.6, 0.10),
            new Habit("7-iron", "full", 90, 144, 7, 0.046, 0.2, 3.3, 0.08),
            new Habit("8-iron", "full", 48, 133, 5, 0.044, 0.0, 3.1, 0.07),
            new Habit("9-iron", "full", 48, 122, 4, 0.043, -0.2, 2.9, 0.06),
            new Habit("pitching wedge", "full", 54, 111, 3, 0.043, -0.3, 2.8, 0.06),
            new Habit("52-wedge", "full", 26, 97, 2, 0.046, -0.3, 2.8, 0.07),
            new Habit("52-wedge", "half", 12, 62, 3, 0.065, 0.0, 3.1, 0.06),
            new Habit("56-wedge", "full", 22, 84, 1, 0.050, -0.2, 2.9, 0.08),
            new Habit("56-wedge", "three-quarter", 14, 68, 2, 0.055, 0.0, 3.0, 0.07),
            new Habit("56-wedge", "half", 12, 51, 2, 0.070, 0.1, 3.3, 0.07));

    /** Range sessions on grass, one on a mat, and balls paced off on the course. */
    private static final String[] DATES = {
        "2026-03-07", "2026-03-28", "2026-04-11", "2026-04-25", "2026-05-09", "2026-05-16", "2026-05-30"
    };

    private static final int MAT_SESSION = 1;
    private static final int COURSE_SESSION = 5;

    private DemoShots() {}

    static List<String> lines(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] turned = new double[DATES.length];
        double[] longer = new double[DATES.length];
        for (int i = 0; i < DATES.length; i++) {
            turned[i] = 0.9 * random.nextGaussian();
            longer[i] = 1 + 0.012 * random.nextGaussian();
        }
        List<List<String>> bySession = new ArrayList<>();
        for (int i = 0; i < DATES.length; i++) {
            bySession.add(new ArrayList<>());
        }
        for (Habit habit : BAG) {
            for (int ball = 0; ball < habit.balls(); ball++) {
                int session = ball * DATES.length / habit.balls();
                bySession.get(session).add(line(habit, session, turned[session], longer[session], random));
            }
        }
        List<String> out = new ArrayList<>();
        out.add(HEADER);
        bySession.forEach(out::addAll);
        return out;
    }

    private static String line(Habit h, int session, double turned, double longer, SplittableRandom random) {
        double carry = h.carry() * longer * (1 + h.carrySpread() * random.nextGaussian());
        double degrees = h.bias() + turned + h.spread() * random.nextGaussian();
        double run = h.run() * Math.max(0.2, 1 + 0.4 * random.nextGaussian());
        if (random.nextDouble() < h.missed()) {
            double kind = random.nextDouble();
            boolean wedge = h.carry() < 115;
            double kept = kind < 0.5 ? 0.58 : kind < 0.9 ? (wedge ? 1.12 : 0.82) : 0.25;
            carry *= Math.max(0.05, kept + 0.11 * random.nextGaussian());
            degrees += 3.5 * random.nextGaussian();
            run *= 1.6;
        }
        double side = carry * Math.sin(Math.toRadians(degrees));
        boolean paced = session == COURSE_SESSION;
        String ground = paced ? "course" : session == MAT_SESSION ? "mat" : "grass";
        return String.format(
                Locale.ROOT,
                "%s,%d,%s,%s,own,%s,%s,%s,%d",
                DATES[session],
                session + 1,
                h.club(),
                h.effort(),
                ground,
                paced ? "" : Long.toString(Math.round(carry)),
                paced ? Long.toString(Math.round(carry + run)) : "",
                Math.round(side));
    }
}
