package loopwright.player;

import java.util.random.RandomGenerator;
import loopwright.numerics.GaussianBlock;
import loopwright.numerics.SliceDraw;
import org.hipparchus.linear.MatrixUtils;

/**
 * Gibbs sampler for the layered mixture: each sweep draws every unknown from its distribution given all others, so that the
 * sweeps are draws from the posterior.
 *
 * <p>A solid ball of swing j in session s has carry / trend = 1 + g_j + k_s + r + t_j v e1 and direction b_j + d_s + s_j v e2; g, k, r
 * (range ball) and b, d are drawn as two normal blocks, the logarithms of s_j, t_j and of the session's and the range's factor v
 * by slices. Mishits tell of g, k, r, b and d too, by their own spreads. Correlation of carry and direction is not part of the likelihood:
 * the margins are right without it, and {@link FitDraws} estimates it from the residuals.
 */
final class FitSampler {
    private final FitSwings swings;
    private final FitBalls balls;
    private final RandomGenerator random;
    private final FitState state;
    private final FitComponents components;
    private final FitScales scales;
    private final FitMishits mishits;
    private final int n;
    private final int sessions;
    private final double[][] carryPrecision;
    private final double[][] directionPrecision;
    private final GaussianBlock block;
    private final double[] drawn;

    FitSampler(FitSwings swings, FitBalls balls, RandomGenerator random) {
        this.swings = swings;
        this.balls = balls;
        this.random = random;
        n = swings.size();
        sessions = balls.sessions;
        state = new FitState(swings, sessions);
        components = new FitComponents(swings, balls);
        scales = new FitScales(swings, balls, components, state, random);
        mishits = new FitMishits(swings, balls, components, state, random);
        carryPrecision = inverse(swings.carryCovariance());
        directionPrecision = inverse(directionCovariance(n));
        block = new GaussianBlock(n + sessions + 1);
        drawn = new double[n + sessions + 1];
        for (int j = 0; j < n; j++) {
            state.direction[j] = swings.pattern(j).directionRadians();
        }
    }

    FitState state() {
        return state;
    }

    FitScales scales() {
        return scales;
    }

    void sweep() {
        components.draw(state, random);
        drawCarries();
        drawDirections();
        scales.draw();
        mishits.draw();
        drawSessionSds();
        state.refresh(swings);
    }

    private void drawCarries() {
        block.clear();
        double session = 1 / square(state.sessionCarrySd);
        double ball = 1 / square(PriorTable.RANGE_BALL_LOSS_SD);
        startBlock(carryPrecision, session, ball);
        block.shift[n + sessions] = -PriorTable.RANGE_BALL_LOSS * ball;
        for (int i = 0; i < balls.size; i++) {
            int k = components.component[i];
            if (k == FitComponents.STRAY || Double.isNaN(balls.carry[i])) {
                continue;
            }
            int j = balls.swing[i];
            FitShapes shapes = swings.shapes(j);
            double factor = shapes.carry[k];
            double sd = k == 0 ? state.carrySd[j] * components.spread(i, state) : shapes.carrySd[k] / factor;
            double share = balls.carry[i] / swings.trend[j];
            int range = balls.rangeBall[i] ? n + sessions : -1;
            block.observe(balls.weight[i] / (sd * sd), share / factor - 1, j, n + balls.session[i], range);
        }
        block.draw(random, drawn);
        System.arraycopy(drawn, 0, state.carry, 0, n);
        System.arraycopy(drawn, n, state.sessionCarry, 0, sessions);
        state.rangeBall = drawn[n + sessions];
    }

    private void drawDirections() {
        block.clear();
        startBlock(directionPrecision, 1 / square(state.sessionDirectionSd), 1);
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                block.shift[a] += directionPrecision[a][b] * swings.pattern(b).directionRadians();
            }
        }
        for (int i = 0; i < balls.size; i++) {
            int k = components.component[i];
            if (k == FitComponents.STRAY || Double.isNaN(balls.direction[i])) {
                continue;
            }
            int j = balls.swing[i];
            FitShapes shapes = swings.shapes(j);
            double sd = k == 0 ? state.directionSd[j] * components.spread(i, state) : shapes.turnSd[k];
            block.observe(
                    balls.weight[i] / (sd * sd), balls.direction[i] - shapes.turn[k], j, n + balls.session[i], -1);
        }
        block.draw(random, drawn);
        System.arraycopy(drawn, 0, state.direction, 0, n);
        System.arraycopy(drawn, n, state.sessionDirection, 0, sessions);
    }

    private void startBlock(double[][] swingPrecision, double sessionPrecision, double lastPrecision) {
        for (int a = 0; a < n; a++) {
            System.arraycopy(swingPrecision[a], 0, block.precision[a], 0, a + 1);
        }
        for (int s = 0; s < sessions; s++) {
            block.precision[n + s][n + s] = sessionPrecision * balls.sessionWeight[s];
        }
        block.precision[n + sessions][n + sessions] = lastPrecision;
    }

    private void drawSessionSds() {
        state.sessionDirectionSd =
                sessionSd(state.sessionDirection, state.sessionDirectionSd, PriorTable.SESSION_DIRECTION_SD);
        state.sessionCarrySd = sessionSd(state.sessionCarry, state.sessionCarrySd, PriorTable.SESSION_CARRY_SD);
        state.sessionLogSpreadSd =
                sessionSd(state.sessionLogSpread, state.sessionLogSpreadSd, PriorTable.SESSION_LOG_SPREAD_SD);
    }

    private double sessionSd(double[] effects, double now, double prior) {
        double sum = 0;
        for (int s = 0; s < effects.length; s++) {
            sum += balls.sessionWeight[s] * effects[s] * effects[s];
        }
        double squares = sum;
        double middle = Math.log(prior);
        double x = SliceDraw.next(
                l -> -effects.length * l
                        - squares / 2 * Math.exp(-2 * l)
                        - square((l - middle) / PriorTable.SESSION_SD_LOG_SD) / 2,
                Math.log(now),
                PriorTable.SESSION_SD_LOG_SD,
                random);
        return Math.exp(x);
    }

    private static double[][] directionCovariance(int n) {
        double[][] out = new double[n][n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                out[a][b] = square(PriorTable.BIAS_SD) + (a == b ? square(PriorTable.CLUB_BIAS_SD) : 0);
            }
        }
        return out;
    }

    private static double[][] inverse(double[][] covariance) {
        return MatrixUtils.inverse(MatrixUtils.createRealMatrix(covariance)).getData();
    }

    private static double square(double x) {
        return x * x;
    }
}
