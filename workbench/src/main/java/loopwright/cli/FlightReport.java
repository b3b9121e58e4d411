package loopwright.cli;

import loopwright.action.FlownShot;
import loopwright.flight.Flight;
import loopwright.units.Distance;
import loopwright.units.Speed;

/** A flown ball in the golfer's units: the keys of the JSON file, {@code docs/schema/flight.schema.json}. */
record FlightReport(
        double carryYards,
        double sideYards,
        double apexYards,
        double descentDegrees,
        double seconds,
        double landingMph,
        double landingRpm,
        double totalYards,
        double totalSideYards,
        double runYards,
        double forwardYards,
        double finishDegrees,
        double headingDegrees,
        double gustYards,
        String surface,
        double airDensityKgPerCubicMetre,
        String note) {
    static final String NOTE =
            "Run and firmness rest on assumed values for fairways, rough and sand; carries of single balls differ"
                    + " by several percent from ball to ball.";

    static FlightReport of(FlownShot shot, String surface) {
        Flight flight = shot.flight();
        return new FlightReport(
                yards(flight.carryMetres()),
                yards(flight.rightMetres()),
                yards(flight.apexMetres()),
                round(Math.toDegrees(flight.descentRadians())),
                round(flight.seconds()),
                round(Speed.ofMetresPerSecond(flight.speedMetresPerSecond()).milesPerHour()),
                Math.rint(flight.spinRadiansPerSecond() * 30 / Math.PI),
                yards(shot.totalMetres()),
                yards(shot.restRightMetres()),
                yards(shot.runMetres()),
                yards(flight.forwardMetres()),
                round(Math.toDegrees(flight.directionRadians())),
                round(Math.toDegrees(flight.headingRadians())),
                yards(shot.gustMetres()),
                surface,
                Math.rint(shot.question().day().air().densityKgPerCubicMetre() * 1e4) / 1e4,
                NOTE);
    }

    private static double yards(double metres) {
        return round(Distance.ofMetres(metres).yards());
    }

    /** Two decimals: finer than any of it is known. No negative zero. */
    private static double round(double value) {
        return Math.rint(value * 100) / 100 + 0.0;
    }
}
