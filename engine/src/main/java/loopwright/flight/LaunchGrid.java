package loopwright.flight;

import org.jspecify.annotations.Nullable;

/**
 * The launches of one swing over a grid of still-air carries and finish directions: what was struck, whatever the day
 * does with it. Nodes are even in carry (a tenth of the swing's usual carry, from 0.1 to {@value #LONGEST_SHARE} of it)
 * and in direction ({@value #DIRECTION_STEP_DEGREES} degrees, to {@value #WIDEST_DEGREES} on either side); where strikes
 * differ in loft there are two more grids of the same carries and directions, {@value #LOFT_STEP} deviations higher and
 * lower.
 */
public final class LaunchGrid {
    static final int CARRIES = 13;
    static final int DIRECTIONS = 9;
    static final double LONGEST_SHARE = 1.3;
    static final double DIRECTION_STEP_DEGREES = 7.5;
    static final double WIDEST_DEGREES = 30;

    /** Half way to where loft is held: the parabola through three lofts then errs least. */
    static final double LOFT_STEP = 1.5;

    private static final double SLOWEST = 0.5;

    final double carryStepMetres;
    private final Launch[] launches = new Launch[CARRIES * DIRECTIONS];
    private final @Nullable Lofts lofts;

    record Lofts(LaunchGrid higher, LaunchGrid lower) {}

    /** Strikes that differ in carry and direction alone. */
    public LaunchGrid(LaunchStyle style, double usualCarryMetres) {
        this(style, LaunchSpread.NONE, usualCarryMetres);
    }

    /** Calibrates every node in still standard air. */
    public LaunchGrid(LaunchStyle style, LaunchSpread spread, double usualCarryMetres) {
        if (!(usualCarryMetres > 0)) {
            throw new IllegalArgumentException("a usual carry is above zero, not " + usualCarryMetres);
        }
        carryStepMetres = usualCarryMetres / 10;
        LaunchFinder finder = new LaunchFinder();
        double tilt = finder.tiltPerDirection(style, usualCarryMetres);
        int middle = DIRECTIONS / 2;
        for (int c = 0; c < CARRIES; c++) {
            double carry = (c + 1) * carryStepMetres;
            Launch straight = finder.straight(style, carry);
            launches[c * DIRECTIONS + middle] = straight;
            double speed = straight.speedMetresPerSecond();
            for (int d = middle + 1; d < DIRECTIONS; d++) {
                Launch right = finder.toward(style, carry, direction(d), tilt, speed);
                speed = right.speedMetresPerSecond();
                launches[c * DIRECTIONS + d] = right;
                launches[c * DIRECTIONS + 2 * middle - d] =
                        right.withStart(-right.startRadians()).withAxis(-right.axisRadians());
            }
        }
        lofts = spread.isNone()
                ? null
                : new Lofts(
                        new LaunchGrid(spread.lofted(style, LOFT_STEP), usualCarryMetres),
                        new LaunchGrid(spread.lofted(style, -LOFT_STEP), usualCarryMetres));
    }

    /** The same strikes with {@value #LOFT_STEP} deviations more and less loft; null where they do not differ in loft. */
    @Nullable
    Lofts lofts() {
        return lofts;
    }

    static double direction(int d) {
        return Math.toRadians((d - DIRECTIONS / 2) * DIRECTION_STEP_DEGREES);
    }

    Launch at(int c, int d) {
        return launches[c * DIRECTIONS + d];
    }

    /**
     * About the launch of a carry and direction, straight between the nodes' launches and held at the edges: it finishes
     * within some 2 % of them in still standard air, near enough to ask what a day changes.
     *
     * @param loft in deviations; by the parabola through the three grids
     */
    Launch near(double carryMetres, double directionRadians, double loft) {
        Launch usual = near(carryMetres, directionRadians);
        if (lofts == null || loft == 0) {
            return usual;
        }
        double held = LaunchSpread.held(loft) / LOFT_STEP;
        Launch higher = lofts.higher.near(carryMetres, directionRadians);
        Launch lower = lofts.lower.near(carryMetres, directionRadians);
        return between(between(lower, usual, held + 1), between(usual, higher, held), (held + 1) / 2);
    }

    private Launch near(double carryMetres, double directionRadians) {
        double x = Math.min(Math.max(carryMetres / carryStepMetres - 1, 0), CARRIES - 1);
        double widest = Math.toRadians(WIDEST_DEGREES);
        double turn = Math.min(Math.max(directionRadians, -widest), widest) + widest;
        double y = turn / Math.toRadians(DIRECTION_STEP_DEGREES);
        int c = Math.min((int) x, CARRIES - 2);
        int d = Math.min((int) y, DIRECTIONS - 2);
        return between(between(at(c, d), at(c, d + 1), y - d), between(at(c + 1, d), at(c + 1, d + 1), y - d), x - c);
    }

    /** On the straight line through two launches, beyond them too as far as there are such launches. */
    private static Launch between(Launch a, Launch b, double share) {
        double speed = a.speedMetresPerSecond() + share * (b.speedMetresPerSecond() - a.speedMetresPerSecond());
        double spin = a.spinRadiansPerSecond() + share * (b.spinRadiansPerSecond() - a.spinRadiansPerSecond());
        return new Launch(
                Math.min(Launch.FASTEST, Math.max(SLOWEST, speed)),
                a.launchRadians() + share * (b.launchRadians() - a.launchRadians()),
                a.startRadians() + share * (b.startRadians() - a.startRadians()),
                Math.min(Launch.MOST_SPIN, Math.max(0, spin)),
                a.axisRadians() + share * (b.axisRadians() - a.axisRadians()));
    }

    /** Share of the shortest node's values that a carry shorter than it has. */
    double smallShare(double carryMetres) {
        return Math.min(1, carryMetres / carryStepMetres);
    }

    /** The launch of the swing's usual carry, straight. */
    public Launch usual() {
        return at(9, DIRECTIONS / 2);
    }

    /** Run of the usual strike on a level fairway after still standard air. */
    public double usualRunMetres(DayGround ground) {
        Flight flight = new BallFlight(FlightSetting.standard()).fly(usual(), 0);
        return ground.fairway()
                .runMetres(flight.speedMetresPerSecond(), flight.descentRadians(), flight.spinRadiansPerSecond());
    }
}
