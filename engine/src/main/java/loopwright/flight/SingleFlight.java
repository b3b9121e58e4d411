package loopwright.flight;

import loopwright.ground.BounceAndRoll;
import loopwright.ground.Rise;
import loopwright.ground.RunWorkspace;
import loopwright.ground.Surface;
import loopwright.ground.Touchdown;

/**
 * What a day makes of single strikes, each flown by itself: in the day's air and the wind of its own gust, down to the
 * real ground; and once more in still standard air to compare. No table of landings or runs has a part in it, so that
 * a referee can check the {@link ResponseSurface} and the shift to other heights. Immutable.
 */
public final class SingleFlight {
    private static final BounceAndRoll USUAL_GROUND = DayConditions.STANDARD.ground();
    private static final BallFlight USUAL_AIR = new BallFlight(FlightSetting.standard());
    /** A landing this near the ground's height has met it, metres. */
    private static final double ON_THE_GROUND = 0.02;

    private static final int MOST_LANDINGS = 6;
    /** Of the shortest launch there is: what does not get as far is no flight. */
    private static final double LEAST_SHARE = 0.01;
    /** Ball speed grows about as this power of carry. */
    private static final double SPEED_PER_CARRY = 0.6;
    /** A launch further off than this lies beyond the grid's edge and stays as it is held there. */
    private static final double MOST_LONGER = 1.1;
    /** A ball that meets a hillside on its way up is taken to come down on it all but level. */
    private static final double FLATTEST_RADIANS = 0.01;

    private final DayConditions day;
    private final BounceAndRoll ground;

    public SingleFlight(DayConditions day) {
        this.day = day;
        this.ground = day.ground();
    }

    /**
     * Flies one strike of a swing.
     *
     * @param carryMetres in still standard air
     * @param directionRadians finish direction in still standard air, + right of the aim
     * @param loft in deviations of the swing's own
     * @param bearingRadians of the aim
     * @param gustAlong standard normal draw
     * @param gustAcross standard normal draw
     */
    public void fly(
            LaunchGrid swing,
            double carryMetres,
            double directionRadians,
            double loft,
            double bearingRadians,
            double gustAlong,
            double gustAcross,
            Rise rise,
            DayChange out) {
        double small = Math.max(LEAST_SHARE, swing.smallShare(carryMetres));
        Launch launch = launch(swing, carryMetres, directionRadians, loft, small);
        Flight usual = USUAL_AIR.fly(launch, 0);
        Breeze breeze = day.wind().along(bearingRadians, gustAlong, gustAcross);
        BallFlight air = new BallFlight(FlightSetting.of(day.air(), breeze));
        // the launch is nearly the strike's: where it should have finished and where it would, apart, are one shift
        double forward = carryMetres * Math.cos(directionRadians) - small * usual.forwardMetres();
        double right = carryMetres * Math.sin(directionRadians) - small * usual.rightMetres();
        Flight landed = land(air, launch, (f, r) -> rise.at(forward + small * f, right + small * r) / small);
        out.forwardMetres = small * (landed.forwardMetres() - usual.forwardMetres());
        out.rightMetres = small * (landed.rightMetres() - usual.rightMetres());
        out.compare(strike(landed, ground, small), strike(usual, USUAL_GROUND, small));
    }

    /** The launch between the grid's, its ball speed set right by one step so that it carries as far as it should. */
    private static Launch launch(
            LaunchGrid swing, double carryMetres, double directionRadians, double loft, double small) {
        Launch near = swing.near(carryMetres, directionRadians, loft);
        Flight flight = USUAL_AIR.fly(near, 0);
        double longer = carryMetres / (small * Math.hypot(flight.forwardMetres(), flight.rightMetres()));
        double held = Math.min(Math.max(longer, 1 / MOST_LONGER), MOST_LONGER);
        return near.withSpeed(near.speedMetresPerSecond() * Math.pow(held, SPEED_PER_CARRY));
    }

    /** Down to the ground: to its height at the place of the last try, until both agree. */
    private static Flight land(BallFlight air, Launch launch, Rise rise) {
        Flight flight = air.fly(launch, 0);
        double height = 0;
        for (int i = 0; i < MOST_LANDINGS; i++) {
            double ground = rise.at(flight.forwardMetres(), flight.rightMetres());
            if (Math.abs(ground - height) < ON_THE_GROUND || !flight.reached()) {
                break;
            }
            height = ground;
            flight = air.fly(launch, height);
        }
        return flight;
    }

    private static Strike strike(Flight flight, BounceAndRoll ground, double share) {
        Strike out = new Strike();
        out.apexMetres = share * flight.apexMetres();
        out.descentRadians = Math.max(FLATTEST_RADIANS, flight.descentRadians());
        out.landingSpeed = flight.speedMetresPerSecond();
        out.headingRadians = flight.headingRadians();
        Touchdown touch = new Touchdown(out.landingSpeed, out.descentRadians, 0, flight.spinRadiansPerSecond());
        RunWorkspace scratch = new RunWorkspace();
        out.fairwayRunMetres = share * ground.planeRunMetres(touch, Surface.FAIRWAY, 0, scratch);
        out.greenRunMetres = share * ground.planeRunMetres(touch, Surface.GREEN, 0, scratch);
        return out;
    }
}
