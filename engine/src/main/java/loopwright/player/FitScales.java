package loopwright.player;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import loopwright.numerics.SliceDraw;

/**
 * Draws the spreads of a fit from the residuals of its solid balls: each swing's, what all swings share, each session's, and
 * the range's against the course.
 */
final class FitScales {
    private final FitSwings swings;
    private final FitBalls balls;
    private final FitComponents components;
    private final FitState state;
    private final RandomGenerator random;
    /** Residuals in units of the swing's trend (carry) and in radians; NaN where there is none. */
    private final double[] carryResidual;

    private final double[] directionResidual;
    private final double[] weightSum;
    private final double[] squareSum;
    private final boolean anyOnCourse;

    FitScales(FitSwings swings, FitBalls balls, FitComponents components, FitState state, RandomGenerator random) {
        this.swings = swings;
        this.balls = balls;
        this.components = components;
        this.state = state;
        this.random = random;
        carryResidual = new double[balls.size];
        directionResidual = new double[balls.size];
        int most = Math.max(swings.size(), balls.sessions);
        weightSum = new double[most];
        squareSum = new double[most];
        anyOnCourse = anyOnCourse(balls);
    }

    private static boolean anyOnCourse(FitBalls balls) {
        for (boolean course : balls.course) {
            if (course) {
                return true;
            }
        }
        return false;
    }

    void draw() {
        residuals();
        state.sharedDirection = swingScales(state.logDirectionSd, directionResidual, state.sharedDirection, true);
        state.sharedCarry = swingScales(state.logCarrySd, carryResidual, state.sharedCarry, false);
        state.refresh(swings);
        sessionScales();
        state.refresh(swings);
        widening();
        shiftSessions();
        shiftRange();
    }

    /**
     * All sessions wider and all swings narrower by the same factor leaves every ball as likely: along this line only the
     * priors speak, and they are normal. Without this step the chain creeps along it.
     */
    private void shiftSessions() {
        double own = 1 / square(state.sessionLogSpreadSd);
        double precision = 0;
        double sum = 0;
        for (int s = 0; s < balls.sessions; s++) {
            precision += own * balls.sessionWeight[s];
            sum -= own * balls.sessionWeight[s] * state.sessionLogSpread[s];
        }
        double shift = shift(precision, sum, -1);
        for (int s = 0; s < balls.sessions; s++) {
            state.sessionLogSpread[s] += shift;
        }
    }

    /** The same for the range's factor where no ball was hit on the course. */
    private void shiftRange() {
        if (!anyOnCourse) {
            double own = 1 / square(PriorTable.RANGE_WIDENING_LOG_SD);
            double away = state.logWidening - Math.log(PriorTable.RANGE_WIDENING);
            state.logWidening += shift(own, -own * away, 1);
        }
    }

    /** Draws the shift given the prior of what it moves, and moves all swings' scales {@code sign} times as much, together with what
     * they share, so that each keeps its own deviation. */
    private double shift(double priorPrecision, double priorSum, int sign) {
        double shared = 1 / square(PriorTable.SHARED_LOG_SPREAD_SD);
        double precision = priorPrecision + 2 * shared;
        double sum = priorSum - sign * shared * (state.sharedDirection + state.sharedCarry);
        double shift = sum / precision + random.nextGaussian() / Math.sqrt(precision);
        state.sharedDirection += sign * shift;
        state.sharedCarry += sign * shift;
        for (int j = 0; j < swings.size(); j++) {
            state.logDirectionSd[j] += sign * shift;
            state.logCarrySd[j] += sign * shift;
        }
        return shift;
    }

    private void residuals() {
        for (int i = 0; i < balls.size; i++) {
            int j = balls.swing[i];
            boolean solid = components.component[i] == 0;
            double carry = balls.carry[i] / swings.trend[j] - 1 - components.lengthShift(i, state);
            double direction = balls.direction[i] - components.direction(i, state);
            carryResidual[i] = solid ? rounded(carry, PriorTable.ROUNDING_METRES / swings.trend[j]) : Double.NaN;
            directionResidual[i] =
                    solid ? rounded(direction, PriorTable.ROUNDING_METRES / Math.max(10, balls.carry[i])) : Double.NaN;
        }
    }

    /** With the part that rounding has taken from it, so that equal entries do not mean no spread at all. */
    private static double rounded(double residual, double rounding) {
        return Math.copySign(Math.sqrt(residual * residual + rounding * rounding), residual);
    }

    /** Draws every swing's scale and then what they share; returns the shared. */
    private double swingScales(double[] logSd, double[] residual, double shared, boolean direction) {
        Arrays.fill(weightSum, 0);
        Arrays.fill(squareSum, 0);
        for (int i = 0; i < balls.size; i++) {
            if (!Double.isNaN(residual[i])) {
                double z = residual[i] / components.spread(i, state);
                weightSum[balls.swing[i]] += balls.weight[i];
                squareSum[balls.swing[i]] += balls.weight[i] * z * z;
            }
        }
        double precision = 1 / square(PriorTable.SHARED_LOG_SPREAD_SD);
        double sum = 0;
        double own = 1 / square(PriorTable.CLUB_LOG_SPREAD_SD);
        for (int j = 0; j < logSd.length; j++) {
            double middle = priorLogSd(j, direction) + shared;
            if (weightSum[j] > 0) {
                logSd[j] = scale(logSd[j], weightSum[j], squareSum[j], middle, PriorTable.CLUB_LOG_SPREAD_SD);
                precision += own;
                sum += own * (logSd[j] - middle + shared);
            }
        }
        double next = sum / precision + random.nextGaussian() / Math.sqrt(precision);
        for (int j = 0; j < logSd.length; j++) {
            if (!(weightSum[j] > 0)) {
                logSd[j] = priorLogSd(j, direction) + next + PriorTable.CLUB_LOG_SPREAD_SD * random.nextGaussian();
            }
        }
        return next;
    }

    private double priorLogSd(int j, boolean direction) {
        ShotPattern p = swings.pattern(j);
        return Math.log(direction ? p.directionSdRadians() : p.carrySdMetres() / p.carryMetres());
    }

    private void sessionScales() {
        Arrays.fill(weightSum, 0);
        Arrays.fill(squareSum, 0);
        for (int i = 0; i < balls.size; i++) {
            int s = balls.session[i];
            weightSum[s] += standardizedWeight(i);
            squareSum[s] += standardizedSquares(i, state.sessionSpread[s]);
        }
        for (int s = 0; s < balls.sessions; s++) {
            double sd = state.sessionLogSpreadSd / Math.sqrt(balls.sessionWeight[s]);
            state.sessionLogSpread[s] = scale(state.sessionLogSpread[s], weightSum[s], squareSum[s], 0, sd);
        }
    }

    /** The range's spread is the course's times exp(-widening). */
    private void widening() {
        double n = 0;
        double squares = 0;
        for (int i = 0; i < balls.size; i++) {
            if (!balls.course[i]) {
                n += standardizedWeight(i);
                squares += standardizedSquares(i, state.rangeSpread);
            }
        }
        double middle = -Math.log(PriorTable.RANGE_WIDENING);
        state.logWidening = -scale(-state.logWidening, n, squares, middle, PriorTable.RANGE_WIDENING_LOG_SD);
    }

    private double standardizedWeight(int i) {
        int known = (Double.isNaN(carryResidual[i]) ? 0 : 1) + (Double.isNaN(directionResidual[i]) ? 0 : 1);
        return known * balls.weight[i];
    }

    /** A ball's standardized residuals squared, its spread taken without {@code factor}. */
    private double standardizedSquares(int i, double factor) {
        int j = balls.swing[i];
        double spread = components.spread(i, state) / factor;
        double z1 = carryResidual[i] / (state.carrySd[j] * spread);
        double z2 = directionResidual[i] / (state.directionSd[j] * spread);
        return balls.weight[i] * ((Double.isNaN(z1) ? 0 : z1 * z1) + (Double.isNaN(z2) ? 0 : z2 * z2));
    }

    /** Log-scale given n residuals with this sum of squares and a normal prior on the logarithm. */
    private double scale(double now, double n, double squares, double middle, double priorSd) {
        if (!(n > 0)) {
            return middle + priorSd * random.nextGaussian();
        }
        return SliceDraw.next(
                x -> -n * x - squares / 2 * Math.exp(-2 * x) - square((x - middle) / priorSd) / 2,
                now,
                priorSd,
                random);
    }

    /** Adds sum of w z1 z2 and sum of w of each swing's solid balls with both residuals. */
    void addProducts(double[] products, double[] weights) {
        for (int i = 0; i < balls.size; i++) {
            double z1 = carryResidual[i];
            double z2 = directionResidual[i];
            if (!Double.isNaN(z1) && !Double.isNaN(z2)) {
                int j = balls.swing[i];
                double spread = components.spread(i, state);
                double sd = state.carrySd[j] * state.directionSd[j] * spread * spread;
                products[j] += balls.weight[i] * z1 * z2 / sd;
                weights[j] += balls.weight[i];
            }
        }
    }

    private static double square(double x) {
        return x * x;
    }
}
