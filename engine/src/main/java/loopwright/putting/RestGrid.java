package loopwright.putting;

/**
 * Where the balls of one place stop: rolls over a grid of start directions and energies, cubic between. The paths take
 * no notice of the hole, so the places are smooth.
 */
final class RestGrid {
    static final int DIRECTIONS = 9;
    static final int ENERGIES = 9;

    private final double firstDirection;
    private final double directionStep;
    private final double firstEnergy;
    private final double energyStep;
    private final double[] restX = new double[DIRECTIONS * ENERGIES];
    private final double[] restY = new double[DIRECTIONS * ENERGIES];

    /** Directions (bearings) and energies covered. */
    record Span(double firstBearing, double lastBearing, double leastEnergy, double mostEnergy) {}

    RestGrid(GreenRoll roll, double ballX, double ballY, Span span) {
        firstDirection = span.firstBearing();
        directionStep = (span.lastBearing() - span.firstBearing()) / (DIRECTIONS - 1);
        firstEnergy = span.leastEnergy();
        energyStep = (span.mostEnergy() - span.leastEnergy()) / (ENERGIES - 1);
        RollWorkspace ball = new RollWorkspace(ballX, ballY);
        for (int e = 0; e < ENERGIES; e++) {
            double speed = Math.sqrt(firstEnergy + e * energyStep);
            for (int d = 0; d < DIRECTIONS; d++) {
                double bearing = firstDirection + d * directionStep;
                roll.roll(ballX, ballY, speed * Math.sin(bearing), speed * Math.cos(bearing), ball);
                restX[e * DIRECTIONS + d] = ball.x;
                restY[e * DIRECTIONS + d] = ball.y;
            }
        }
    }

    double x(double bearing, double energy) {
        return rest(restX, bearing, energy);
    }

    double y(double bearing, double energy) {
        return rest(restY, bearing, energy);
    }

    private double rest(double[] values, double bearing, double energy) {
        double d = (bearing - firstDirection) / directionStep;
        double e = (energy - firstEnergy) / energyStep;
        int cell = Cubic.cell(e, ENERGIES);
        double low = row(values, cell, d);
        double high = row(values, cell + 1, d);
        double before = cell > 0 ? row(values, cell - 1, d) : 3 * low - 3 * high + row(values, cell + 2, d);
        double after = cell < ENERGIES - 2 ? row(values, cell + 2, d) : 3 * high - 3 * low + row(values, cell - 1, d);
        return Cubic.between(before, low, high, after, e - cell);
    }

    private static double row(double[] values, int row, double d) {
        return Cubic.at(values, row * DIRECTIONS, DIRECTIONS, d);
    }
}
