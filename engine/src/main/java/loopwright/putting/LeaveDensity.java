package loopwright.putting;

/**
 * How likely {@link LevelPutt} is to miss and stop at a given distance from the hole, per metre of that distance.
 *
 * <p>The ball stops at the distance l on the circle round the hole; with the direction error e and the roll L that lead
 * to the point at angle f (from straight past the hole), the density is the integral over f of p(e) p(L) l / L. On the
 * far side the arc that would have dropped on its way is left out: offsets b with 1.63 (1 - (b / R)^2) at least sqrt(2 a
 * l).
 */
final class LeaveDensity {
    private LeaveDensity() {}

    static double of(LevelPutt putt, double metres, double overshootMetres, double left, LoggedPutt.Side side) {
        double total = 0;
        if (side != LoggedPutt.Side.SHORT) {
            total += half(putt, metres, overshootMetres, left, dropping(putt, metres, left), 1);
        }
        if (side != LoggedPutt.Side.LONG) {
            total += half(putt, metres, overshootMetres, left, 0, -1);
        }
        return total;
    }

    /** Half-width of the arc past the hole that cannot be reached because the ball would have dropped. */
    private static double dropping(LevelPutt putt, double metres, double left) {
        double speed = Math.sqrt(2 * putt.deceleration() * left);
        double share = 1 - speed / Cup.CENTRE_SPEED_METRES_PER_SECOND;
        if (share <= 0) {
            return 0;
        }
        double offset = Cup.RADIUS_METRES * Math.sqrt(share);
        return Math.asin(Math.min(1, offset * (metres + left) / (metres * left)));
    }

    /** Both sides of one half circle; most of it lies near the line, so the panels narrow towards it. */
    private static double half(LevelPutt putt, double metres, double overshoot, double left, double from, int towards) {
        double width = Math.min(Math.PI / 2, 2 * putt.directionSdRadians() * metres / left);
        double near = Math.min(Math.PI / 2, from + width);
        double far = Math.min(Math.PI / 2, from + 3 * width);
        double mean = metres + overshoot;
        double sd = putt.paceSd() * mean;
        double[] sum = new double[1];
        Panel.Visitor add = (f, w) -> {
            double x = metres + towards * left * Math.cos(f);
            double y = left * Math.sin(f);
            double roll = Math.hypot(x, y);
            double e = Math.atan2(y, x) / putt.directionSdRadians();
            sum[0] += 2
                    * w
                    * NormalLaw.density(e)
                    / putt.directionSdRadians()
                    * NormalLaw.density((roll - mean) / sd)
                    / sd
                    * left
                    / roll;
        };
        Panel.forEach(from, near, add);
        Panel.forEach(near, far, add);
        Panel.forEach(far, Math.PI / 2, add);
        return sum[0];
    }
}
