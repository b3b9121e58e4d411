package loopwright.player;

import loopwright.flight.Launch;
import loopwright.flight.LaunchSpread;
import loopwright.flight.LaunchStyle;

/**
 * How a club usually launches a ball, by its loft L in degrees and the ball speed v in mph.
 *
 * <p>Launch angle: driver 10.8, other woods and hybrids 2.5 + 0.45 L, irons and wedges 0.6 L - 3.5 degrees, each + 0.05
 * (driver 0.08) for every mph below the speed of a fast swing, 168 - 2.2 (L - 10.5). Spin: v L (1.35 + 0.012 L) rpm,
 * driver 2599 and 8 more for every such mph (slow swings use more loft). Through three launches: the PGA TOUR's average
 * drive of 2015 (published, see {@code docs/validation.md}) and two generic iron launches (132 mph 12.1 deg 5361 rpm;
 * 120 mph 16.3 deg 7097 rpm); between and beyond them common practice, no source. A pattern's carry fixes the ball
 * speed, so an error here changes height and wind effect, not length.
 */
public final class TypicalLaunch {
    private static final double MPH = 0.44704;
    private static final double RPM = Math.PI / 30;
    private static final double LOWEST_DEGREES = 5;
    private static final double HIGHEST_DEGREES = 45;

    /** A thin or topped ball starts at a third of the usual angle with two thirds of the spin (assumed). */
    private static final double LOW_LAUNCH = 1.0 / 3;

    private static final double LOW_SPIN = 2.0 / 3;

    /** Deviation of the launch angle for a carry that spreads by all of itself: 0.2 degrees for every percent. */
    private static final double LAUNCH_PER_SPREAD = Math.toRadians(20);
    /** The same of the logarithm of the spin. */
    private static final double SPIN_PER_SPREAD = 1.2;
    /** A carry that spreads more holds mishits, whose launches are not asked for here. */
    private static final double MOST_SPREAD = 0.15;

    private TypicalLaunch() {}

    /**
     * How solid strikes of the same carry differ, in proportion to the spread of the carry: who is steady in length is
     * steady in height. Set so that balls into 8 m/s spread beyond what their carries say as those of three golfers do
     * (CaddieSet, CVPR Workshops 2025: {@code LaunchSpreadReferenceTest}); there launch angle and spin go with carry
     * hardly at all, and with each other in either way.
     */
    static LaunchSpread spread(ShotPattern pattern) {
        double share = Math.min(MOST_SPREAD, pattern.carrySdMetres() / pattern.carryMetres());
        return new LaunchSpread(LAUNCH_PER_SPREAD * share, SPIN_PER_SPREAD * share);
    }

    /** The usual, solid strike. */
    public static LaunchStyle of(Club club) {
        double loft = ClubTable.loftDegrees(club);
        return speed -> {
            double mph = speed / MPH;
            double up = Math.toRadians(launchDegrees(club, loft, mph));
            return new Launch(speed, up, 0, Math.min(1500, spinRpm(club, loft, mph) * RPM), 0);
        };
    }

    /** A strike that flies low: thin, topped, bladed. */
    public static LaunchStyle low(Club club) {
        LaunchStyle solid = of(club);
        return speed -> {
            Launch usual = solid.at(speed);
            return new Launch(speed, LOW_LAUNCH * usual.launchRadians(), 0, LOW_SPIN * usual.spinRadiansPerSecond(), 0);
        };
    }

    private static double launchDegrees(Club club, double loft, double mph) {
        double fast = 168 - 2.2 * (loft - 10.5);
        double usual = switch (club.family()) {
            case DRIVER -> 10.8;
            case WOOD, HYBRID -> 2.5 + 0.45 * loft;
            case IRON, WEDGE, PUTTER -> 0.6 * loft - 3.5;
        };
        double slower = Math.max(0, fast - mph);
        double perMph = club.family() == Club.Family.DRIVER ? 0.08 : 0.05;
        return Math.min(HIGHEST_DEGREES, Math.max(LOWEST_DEGREES, usual + perMph * slower));
    }

    private static double spinRpm(Club club, double loft, double mph) {
        if (club.family() == Club.Family.DRIVER) {
            // short of half speed the strike itself is poor; the spin then falls with the speed
            return (2599 + 8 * Math.max(0, 168 - mph)) * Math.min(1, mph / 84);
        }
        return mph * loft * (1.35 + 0.012 * loft);
    }
}
