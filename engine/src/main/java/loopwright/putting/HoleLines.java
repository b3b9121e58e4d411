package loopwright.putting;

/**
 * All putts from one place that drop, by their speed and offset where they meet the rim: start direction (from the line
 * ball to hole, + right) and start energy (square of the start speed).
 *
 * <p>Found by running time backwards from the rim ({@link GreenRoll#traceBack}) and turning the bearing of arrival until
 * the path comes from the ball: unlike a search forwards this has no trouble with balls that just die at the hole. Ten
 * speeds from 0.1 m/s (about 1 cm of roll left) to the fastest that drops, three offsets; between them cubic in speed,
 * parabolic in offset. Slower balls start on the slowest's line, their energy less by the lacking square of the speed.
 */
final class HoleLines {
    static final double SLOWEST = 0.1;
    private static final int SPEEDS = 10;
    private static final double FASTEST = Cup.CENTRE_SPEED_METRES_PER_SECOND;
    private static final double STEP = (FASTEST - SLOWEST) / (SPEEDS - 1);
    private static final double ASIDE = 0.04;
    private static final double CLOSE_ENOUGH = 2e-3;
    private static final double LOST = 0.02;

    private final GreenRoll roll;
    private final double holeX;
    private final double holeY;
    private final double metres;
    private final double towards;
    private final RollWorkspace ball;
    private final double[][] start = new double[3][SPEEDS];
    private final double[][] energy = new double[3][SPEEDS];
    private double arrival;
    private double slope = 1;

    HoleLines(GreenRoll roll, double ballX, double ballY, double holeX, double holeY) {
        this.roll = roll;
        this.holeX = holeX;
        this.holeY = holeY;
        this.metres = Math.hypot(holeX - ballX, holeY - ballY);
        this.towards = Math.atan2(holeX - ballX, holeY - ballY);
        this.ball = new RollWorkspace(holeX, holeY);
        double[] guess = new double[SPEEDS];
        for (int k = SPEEDS - 1; k >= 0; k--) {
            arrival = k == SPEEDS - 1 ? towards : guess[k + 1];
            if (k < SPEEDS - 2) {
                arrival += guess[k + 1] - guess[k + 2];
            }
            solve(1, k);
            guess[k] = arrival;
            double aside = Math.asin(Math.min(1, ASIDE / metres));
            arrival = guess[k] - aside;
            solve(0, k);
            arrival = guess[k] + aside;
            solve(2, k);
        }
    }

    static double speed(int k) {
        return SLOWEST + k * STEP;
    }

    /** Finds the arrival at one offset and speed: a secant from the last answer, then false position in a bracket. */
    private void solve(int line, int k) {
        double guess = arrival;
        double bearing = arrival;
        double error = errorAt(line, k, bearing);
        for (int i = 0; i < 4 && Math.abs(error) > CLOSE_ENOUGH; i++) {
            double next = bearing - Math.max(-0.2, Math.min(0.2, error / slope));
            double nextError = errorAt(line, k, next);
            double measured = (nextError - error) / (next - bearing);
            if (!(measured > 0.05)) {
                break;
            }
            slope = measured;
            bearing = next;
            error = nextError;
        }
        if (Math.abs(error) > CLOSE_ENOUGH) {
            bearing = bracketed(line, k, guess);
            error = errorAt(line, k, bearing);
        }
        if (Math.abs(error) > LOST && k < SPEEDS - 1) {
            drawOn(line, k);
            bearing = guess;
        }
        arrival = bearing;
    }

    /**
     * Close to the steepest slope that holds a ball some slow arrivals have no findable way back: the next faster one
     * stands in.
     */
    private void drawOn(int line, int k) {
        start[line][k] = start[line][k + 1];
        energy[line][k] = energy[line][k + 1] - (speed(k + 1) * speed(k + 1) - speed(k) * speed(k));
    }

    /** The turn grows with the bearing everywhere, so the root lies against the sign of the error. */
    private double bracketed(int line, int k, double from) {
        double near = from;
        double nearError = errorAt(line, k, from);
        double stride = 0.02;
        double far = near - Math.signum(nearError) * stride;
        double farError = errorAt(line, k, far);
        while (farError * nearError > 0 && stride < 2) {
            near = far;
            nearError = farError;
            stride *= 1.5;
            far -= Math.signum(nearError) * stride;
            farError = errorAt(line, k, far);
        }
        double middle = far;
        for (int i = 0; i < 40; i++) {
            double share = nearError / (nearError - farError);
            middle = near + (far - near) * Math.max(0.1, Math.min(0.9, share));
            double error = errorAt(line, k, middle);
            if (Math.abs(error) <= CLOSE_ENOUGH) {
                break;
            }
            if (error * nearError > 0) {
                near = middle;
                nearError = error;
            } else {
                far = middle;
                farError = error;
            }
        }
        return middle;
    }

    /**
     * By how much the path that arrives on a bearing comes from a place turned about the hole; its start is kept
     * relative to where it came from, so that a small remaining turn does no harm.
     */
    private double errorAt(int line, int k, double bearing) {
        double aside = (line - 1) * ASIDE;
        double before = Cup.halfChordMetres(aside);
        double sin = Math.sin(bearing);
        double cos = Math.cos(bearing);
        double x = holeX - before * sin + aside * cos;
        double y = holeY - before * cos - aside * sin;
        roll.traceBack(x, y, speed(k), bearing, metres, ball);
        double from = Math.atan2(holeX - ball.x, holeY - ball.y);
        start[line][k] = Math.IEEEremainder(Math.atan2(-ball.vx, -ball.vy) - from, 2 * Math.PI);
        energy[line][k] = ball.vx * ball.vx + ball.vy * ball.vy;
        return Math.IEEEremainder(from - towards, 2 * Math.PI);
    }

    /** Start direction through the centre for a speed at the rim. */
    double startAt(double speed) {
        return Cubic.at(start[1], index(speed));
    }

    double energyAt(double speed) {
        return Cubic.at(energy[1], index(speed));
    }

    /** Start, energy and their slopes with speed on one of the three offsets; below the slowest as the class says. */
    Line lineAt(int line, double speed) {
        if (speed >= SLOWEST) {
            double k = index(speed);
            return new Line(
                    Cubic.at(start[line], k),
                    Cubic.at(energy[line], k),
                    Cubic.slopeAt(start[line], k) / STEP,
                    Cubic.slopeAt(energy[line], k) / STEP);
        }
        double perSquare = energyPerSquare(line);
        double lacking = perSquare * (SLOWEST * SLOWEST - speed * speed);
        return new Line(start[line][0], energy[line][0] - lacking, 0, 2 * perSquare * speed);
    }

    /** Start direction and energy with their slopes over the speed at the rim. */
    record Line(double start, double energy, double startSlope, double energySlope) {}

    /** Offset of the outer two lines. */
    static double aside() {
        return ASIDE;
    }

    /** Start energy per square of the rim speed, near a dying ball; at least as on level ground that only brakes. */
    double energyPerSquare(int line) {
        double rise = (energy[line][1] - energy[line][0]) / (speed(1) * speed(1) - SLOWEST * SLOWEST);
        return Math.max(0.1, rise);
    }

    double leastStart() {
        return Math.min(least(start[0]), Math.min(least(start[1]), least(start[2])));
    }

    double mostStart() {
        return Math.max(most(start[0]), Math.max(most(start[1]), most(start[2])));
    }

    private static double least(double[] values) {
        return java.util.Arrays.stream(values).min().orElseThrow();
    }

    private static double most(double[] values) {
        return java.util.Arrays.stream(values).max().orElseThrow();
    }

    private static double index(double speed) {
        return (speed - SLOWEST) / STEP;
    }
}
