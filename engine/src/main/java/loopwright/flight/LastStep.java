package loopwright.flight;

/**
 * Where in the last step a ball came down: the cubic through both ends of the step with their rates (Hermite). Its
 * error is h^4 z'''' / 384, under a millimetre at the engine's step.
 */
final class LastStep {
    private static final int ROOT_ITERATIONS = 60;

    private LastStep() {}

    /** Share of the step at which the ball is highest; 0 if it was descending from the start. */
    static double apexShare(double[] from, double[] to, double h) {
        if (from[FlightEquations.VZ] <= 0) {
            return 0;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < ROOT_ITERATIONS && high - low > 1e-12; i++) {
            double middle = 0.5 * (low + high);
            if (slope(from, to, h, FlightEquations.Z, middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    static double apexMetres(double[] from, double[] to, double h) {
        return value(from, to, h, FlightEquations.Z, apexShare(from, to, h));
    }

    /** The flight that ends in the step from {@code from} (at {@code startSeconds}) to {@code to}. */
    static Flight land(double[] from, double[] to, double startSeconds, double h, double landing, double apex) {
        double top = apexShare(from, to, h);
        boolean reached = value(from, to, h, FlightEquations.Z, top) >= landing;
        double share = reached ? crossing(from, to, h, landing, top) : top;
        double vx = slope(from, to, h, 0, share);
        double vy = slope(from, to, h, 1, share);
        double vz = slope(from, to, h, FlightEquations.Z, share);
        double level = Math.sqrt(vx * vx + vy * vy);
        double spin0 = from[FlightEquations.SPIN];
        return new Flight(
                value(from, to, h, 0, share),
                value(from, to, h, 1, share),
                apex,
                startSeconds + share * h,
                Math.sqrt(level * level + vz * vz),
                Math.atan2(-vz, level),
                Math.atan2(vy, vx),
                spin0 + share * (to[FlightEquations.SPIN] - spin0),
                reached);
    }

    /** Newton from the middle, kept inside the bracket by halving. */
    private static double crossing(double[] from, double[] to, double h, double landing, double top) {
        double low = top;
        double high = 1;
        double share = 0.5 * (low + high);
        for (int i = 0; i < ROOT_ITERATIONS; i++) {
            double miss = value(from, to, h, FlightEquations.Z, share) - landing;
            if (miss > 0) {
                low = share;
            } else {
                high = share;
            }
            double next = share - miss / (h * slope(from, to, h, FlightEquations.Z, share));
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - share) < 1e-13) {
                return next;
            }
            share = next;
        }
        return share;
    }

    /** Position {@code i} at a share of the step. */
    static double value(double[] from, double[] to, double h, int i, double t) {
        double rate0 = h * from[i + FlightEquations.VX];
        double rate1 = h * to[i + FlightEquations.VX];
        double rise = to[i] - from[i];
        return from[i] + t * (rate0 + t * (3 * rise - 2 * rate0 - rate1 + t * (rate0 + rate1 - 2 * rise)));
    }

    /** Rate of position {@code i} at a share of the step. */
    static double slope(double[] from, double[] to, double h, int i, double t) {
        double rate0 = h * from[i + FlightEquations.VX];
        double rate1 = h * to[i + FlightEquations.VX];
        double rise = to[i] - from[i];
        return (rate0 + t * (2 * (3 * rise - 2 * rate0 - rate1) + 3 * t * (rate0 + rate1 - 2 * rise))) / h;
    }
}
