package loopwright.action;

import java.nio.file.Path;
import java.util.Locale;
import loopwright.flight.BallFlight;
import loopwright.flight.Breeze;
import loopwright.flight.Flight;
import loopwright.flight.FlightSetting;
import loopwright.flight.Wind;
import loopwright.ground.RunWorkspace;
import loopwright.ground.Touchdown;

/** Flies one ball in the day's air and wind, lets it run out on a level surface, and draws it. */
public final class FlyShot {
    private static final double PATH_STEP_SECONDS = 0.1;

    /** A ball that meets the ground more level than this skids; the bounce is then read at this angle. */
    private static final double FLATTEST_DESCENT = 0.01;

    private final FlightPictures pictures;

    public FlyShot(FlightPictures pictures) {
        this.pictures = pictures;
    }

    public FlownShot fly(ShotQuestion q) {
        Breeze breeze = q.day().wind().along(q.bearingRadians());
        FlightSetting setting = FlightSetting.of(q.day().air(), breeze);
        Flight flight = new BallFlight(setting).fly(q.launch(), q.landingMetres());
        if (!flight.reached()) {
            throw new UserFault(String.format(
                    Locale.ROOT,
                    "This ball rises %.1f m and never comes down on ground %.1f m above the strike;"
                            + " take lower ground or a higher, faster launch.",
                    flight.apexMetres(),
                    q.landingMetres()));
        }
        BallFlight fine = new BallFlight(setting, PATH_STEP_SECONDS);
        return new FlownShot(q, flight, fine.trace(q.launch(), q.landingMetres()), run(q, flight), gust(q, flight));
    }

    public void draw(FlownShot shot, Path target) {
        pictures.drawFlight(shot, target);
    }

    private static double gust(ShotQuestion q, Flight flight) {
        Wind mean = q.day().wind();
        Wind stronger =
                Wind.steady(mean.speedMetresPerSecond() + mean.gustSdMetresPerSecond(), mean.fromBearingRadians());
        FlightSetting setting = FlightSetting.of(q.day().air(), stronger.along(q.bearingRadians()));
        Flight gusty = new BallFlight(setting).fly(q.launch(), q.landingMetres());
        return Math.hypot(gusty.forwardMetres() - flight.forwardMetres(), gusty.rightMetres() - flight.rightMetres());
    }

    private static double run(ShotQuestion q, Flight flight) {
        // only the level part of the spin acts along the travel
        double backspin = flight.spinRadiansPerSecond() * Math.cos(q.launch().axisRadians());
        Touchdown touch = new Touchdown(
                flight.speedMetresPerSecond(),
                Math.max(flight.descentRadians(), FLATTEST_DESCENT),
                flight.headingRadians(),
                backspin);
        return q.day().ground().planeRunMetres(touch, q.surface(), 0, new RunWorkspace());
    }
}
