package loopwright.putting;

import loopwright.units.Distance;

/**
 * Putting of the tour as published: M. Broadie, "Assessing golfer performance on the PGA Tour", Interfaces 42(2) (2012)
 * 146-165, eq. 5 and section 3.3, from putts of 2003-2010.
 *
 * <p>One putt: p1(d) = [2 Phi(alpha / 1.46 deg) - 1] [Phi((h - t) / (s (d + t))) - Phi(-t / (s (d + t)))], d in yards,
 * alpha = atan(r / d), r = 2.125 in, s = 0.057, t = 0.5 yd past the hole, h = 2/3 yd the longest roll past that drops.
 * Three putts: p3(d) = 1 / (1 + exp(5.49 - 0.106 d + 0.000563 d^2)) - 0.00398, d in feet. Two putts are the rest.
 *
 * <p>Validity: 2 to 90 ft. p3 is held at 0 where the formula falls below it (beyond about 190 ft it would also fall
 * again: the quadratic turns at 94 ft, and the value there is kept).
 */
public final class TourPutting implements PuttingOdds {
    private static final double FOOT = Distance.METRES_PER_FOOT;
    private static final double YARD = Distance.METRES_PER_YARD;
    private static final double HOLE_RADIUS_YARDS = 2.125 / 36;
    private static final double DIRECTION_SD = Math.toRadians(1.46);
    private static final double PACE_SD = 0.057;
    private static final double AIM_PAST_YARDS = 0.5;
    private static final double MOST_PAST_YARDS = 2.0 / 3;
    private static final double TURN_FEET = 0.106 / (2 * 0.000563);

    @Override
    public double expectedPutts(double metres) {
        return 2 - onePutt(metres) + threePutts(metres);
    }

    @Override
    public double probability(double metres, int putts) {
        return switch (putts) {
            case 1 -> onePutt(metres);
            case 2 -> 1 - onePutt(metres) - threePutts(metres);
            case 3 -> threePutts(metres);
            default -> 0;
        };
    }

    private static double onePutt(double metres) {
        double d = metres / YARD;
        double angle = Math.atan2(HOLE_RADIUS_YARDS, d);
        double spread = PACE_SD * (d + AIM_PAST_YARDS);
        return (2 * NormalLaw.below(angle / DIRECTION_SD) - 1)
                * (NormalLaw.below((MOST_PAST_YARDS - AIM_PAST_YARDS) / spread)
                        - NormalLaw.below(-AIM_PAST_YARDS / spread));
    }

    private static double threePutts(double metres) {
        double d = Math.min(metres / FOOT, TURN_FEET);
        double p = 1 / (1 + Math.exp(5.49 - 0.106 * d + 0.000563 * d * d)) - 0.00398;
        return Math.max(0, Math.min(p, 1 - onePutt(metres)));
    }
}
