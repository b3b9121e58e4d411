package loopwright.action;

import java.util.List;
import loopwright.flight.Flight;
import loopwright.flight.FlightPoint;

/**
 * What became of a ball.
 *
 * @param question what was asked
 * @param flight to the first touch of the ground
 * @param path points of the flight, a tenth of a second apart
 * @param runMetres bounce and roll along the travel; negative: it came back
 * @param gustMetres how far one standard deviation of gusts along the wind moves the landing, 0 in a steady wind
 */
public record FlownShot(
        ShotQuestion question, Flight flight, List<FlightPoint> path, double runMetres, double gustMetres) {
    public FlownShot {
        path = List.copyOf(path);
    }

    /** Where it lies, along the aim. */
    public double restForwardMetres() {
        return flight.forwardMetres() + runMetres * Math.cos(flight.headingRadians());
    }

    /** Where it lies, right of the aim. */
    public double restRightMetres() {
        return flight.rightMetres() + runMetres * Math.sin(flight.headingRadians());
    }

    /** Straight from the strike to where it lies. */
    public double totalMetres() {
        return Math.hypot(restForwardMetres(), restRightMetres());
    }
}
