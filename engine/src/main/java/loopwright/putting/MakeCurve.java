package loopwright.putting;

import loopwright.units.Distance;

/**
 * A published form of the chance to hole a putt as a function of its length, with free parameters.
 *
 * <p>Sources: A. Gelman and D. Nolan, "A probability model for golf putting", Teaching Statistics 24 (2002) 93-95, and
 * the Stan case study "Model building and expansion for golf putting" (A. Gelman, 2019, rev. 2023), with M. Broadie's
 * data. R = 2.125 in is the hole's radius, r = 0.84 in the ball's, x the distance in feet (the forms are published in
 * feet).
 */
public enum MakeCurve {
    /** P = 1 / (1 + exp(-(a + b x))). */
    LOGISTIC {
        @Override
        double atFeet(double x, double[] p) {
            return 1 / (1 + Math.exp(-(p[0] + p[1] * x)));
        }
    },

    /** P = 2 Phi(asin((R - r) / x) / s) - 1 with the direction spread s in radians. */
    ANGLE {
        @Override
        double atFeet(double x, double[] p) {
            return direction(x, p[0]);
        }
    },

    /** ANGLE times Phi(2 / ((x + 1) d)) - Phi(-1 / ((x + 1) d)): aimed a foot past, dropping up to three feet past. */
    ANGLE_AND_PACE {
        @Override
        double atFeet(double x, double[] p) {
            double spread = (x + OVERSHOOT_FEET) * Math.abs(p[1]);
            double pace = NormalLaw.below((TOLERANCE_FEET - OVERSHOOT_FEET) / spread)
                    - NormalLaw.below(-OVERSHOOT_FEET / spread);
            return direction(x, p[0]) * pace;
        }
    };

    private static final double FOOT = Distance.METRES_PER_FOOT;
    private static final double FREE_FEET = (2.125 - 0.84) / 12;
    private static final double OVERSHOOT_FEET = 1;
    private static final double TOLERANCE_FEET = 3;

    /** The chance from a distance, for the parameters in the order of the formula. */
    public double at(double metres, double... values) {
        return atFeet(metres / FOOT, values);
    }

    abstract double atFeet(double x, double[] p);

    private static double direction(double x, double sd) {
        return x <= FREE_FEET ? 1 : 2 * NormalLaw.below(Math.asin(FREE_FEET / x) / Math.abs(sd)) - 1;
    }
}
