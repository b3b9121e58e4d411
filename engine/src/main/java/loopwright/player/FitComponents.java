package loopwright.player;

import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * Tells for each ball which component of its club's mixture it came from: drawn with the probability of the component given
 * the ball and the unknowns. 0 is solid, 1 and up are the mishits in their order, {@link #STRAY} is a ball that says nothing.
 *
 * <p>A counted ball has no place: component and place are drawn together from the pattern until they fall into its zone, which
 * is the exact conditional distribution (rejection); if {@value #MOST_TRIES} tries fail, its last place is kept.
 */
final class FitComponents {
    static final int STRAY = -1;
    private static final int MOST_TRIES = 2000;
    private static final double LOW_RUN = 0.12;

    private final FitSwings swings;
    private final FitBalls balls;
    final int[] component;
    private final double[] density = new double[16];

    FitComponents(FitSwings swings, FitBalls balls) {
        this.swings = swings;
        this.balls = balls;
        component = new int[balls.size];
        java.util.Arrays.fill(component, STRAY);
    }

    void draw(FitState state, RandomGenerator random) {
        for (int i = 0; i < balls.measured; i++) {
            component[i] = drawMeasured(i, state, random);
        }
        for (int i = balls.measured; i < balls.size; i++) {
            drawCounted(i, state, random);
        }
    }

    private int drawMeasured(int i, FitState state, RandomGenerator random) {
        int j = balls.swing[i];
        FitShapes shapes = swings.shapes(j);
        double rate = settingRate(i, state);
        double spread = spread(i, state);
        double length = 1 + lengthShift(i, state);
        double middle = direction(i, state);
        double c = balls.carry[i] / swings.trend[j];
        double d = balls.direction[i];
        double[] kinds = state.kindShare[swings.family(j)];
        double sum =
                (1 - rate) * density(c, length, state.carrySd[j] * spread, d, middle, state.directionSd[j] * spread);
        density[0] = sum;
        for (int k = 1; k < shapes.components(); k++) {
            double mean = shapes.carry[k] * length;
            density[k] = rate
                    * kinds[k - 1]
                    * density(c, mean, shapes.carrySd[k], d, middle + shapes.turn[k], shapes.turnSd[k]);
            sum += density[k];
        }
        double stray = PriorTable.STRAY_RATE * strayCarry(c) * normal(d, 0, PriorTable.STRAY_DIRECTION_SD);
        double u = random.nextDouble() * (sum * (1 - PriorTable.STRAY_RATE) + stray);
        for (int k = 0; k < shapes.components(); k++) {
            u -= density[k] * (1 - PriorTable.STRAY_RATE);
            if (u < 0) {
                return k;
            }
        }
        return STRAY;
    }

    private void drawCounted(int i, FitState state, RandomGenerator random) {
        Zone zone = balls.zones.get(i - balls.measured);
        Optional<Mishit.Kind> kind = zone.kind();
        if (kind.isPresent()) {
            component[i] = named(balls.swing[i], kind.get(), state, random);
            balls.carry[i] = Double.NaN;
            return;
        }
        for (int t = 0; t < MOST_TRIES; t++) {
            if (tryPlace(i, zone, state, random)) {
                return;
            }
        }
    }

    /** The named kind; where the club's family does not list it, any of its mishits. */
    private int named(int j, Mishit.Kind kind, FitState state, RandomGenerator random) {
        ShotPattern p = swings.pattern(j);
        for (int k = 0; k < p.mishits().size(); k++) {
            if (p.mishits().get(k).kind() == kind) {
                return k + 1;
            }
        }
        return 1 + pick(state.kindShare[swings.family(j)], random.nextDouble());
    }

    private boolean tryPlace(int i, Zone zone, FitState state, RandomGenerator random) {
        int j = balls.swing[i];
        double trend = swings.trend[j];
        FitShapes shapes = swings.shapes(j);
        int k = random.nextDouble() >= settingRate(i, state)
                ? 0
                : 1 + pick(state.kindShare[swings.family(j)], random.nextDouble());
        double spread = spread(i, state);
        double carrySd = k == 0 ? state.carrySd[j] * spread : shapes.carrySd[k];
        double turnSd = k == 0 ? state.directionSd[j] * spread : shapes.turnSd[k];
        double c = shapes.carry[k] * (1 + lengthShift(i, state)) + carrySd * random.nextGaussian();
        double d = direction(i, state) + shapes.turn[k] + turnSd * random.nextGaussian();
        double measure = Math.max(0, c * trend);
        if (zone.measure() == Zone.Measure.TOTAL) {
            boolean low = k > 0 && swings.pattern(j).mishits().get(k - 1).low();
            measure += low ? LOW_RUN * trend : balls.runShare[j] * trend * Math.max(0, Math.min(1, c));
        }
        if (!zone.holds(measure, measure * Math.sin(d))) {
            return false;
        }
        component[i] = k;
        balls.carry[i] = c * trend;
        balls.direction[i] = d;
        return true;
    }

    double lengthShift(int i, FitState state) {
        double ball = balls.rangeBall[i] ? state.rangeBall : 0;
        return state.carry[balls.swing[i]] + state.sessionCarry[balls.session[i]] + ball;
    }

    double direction(int i, FitState state) {
        return state.direction[balls.swing[i]] + state.sessionDirection[balls.session[i]];
    }

    double spread(int i, FitState state) {
        return (balls.course[i] ? 1 : state.rangeSpread) * state.sessionSpread[balls.session[i]];
    }

    /** A mat hides part of the mishits, a range's grass half as many. */
    double settingRate(int i, FitState state) {
        return state.mishitRate[balls.swing[i]] * hidden(i);
    }

    double hidden(int i) {
        if (balls.course[i]) {
            return 1;
        }
        return 1 - PriorTable.MAT_HIDES * (balls.mat[i] ? 1 : 0.5);
    }

    private static int pick(double[] shares, double u) {
        double left = u;
        for (int k = 0; k < shares.length - 1; k++) {
            left -= shares[k];
            if (left < 0) {
                return k;
            }
        }
        return shares.length - 1;
    }

    /** Density of carry and direction together; a part that was not measured is left out. */
    private static double density(double c, double carry, double carrySd, double d, double middle, double sd) {
        if (Double.isNaN(c) || Double.isNaN(d)) {
            return normal(c, carry, carrySd) * normal(d, middle, sd);
        }
        double z1 = (c - carry) / carrySd;
        double z2 = (d - middle) / sd;
        return Math.exp(-(z1 * z1 + z2 * z2) / 2) / (carrySd * sd * 2 * Math.PI);
    }

    /** Normal density; 1 where the value was not measured. */
    private static double normal(double x, double mean, double sd) {
        if (Double.isNaN(x)) {
            return 1;
        }
        double z = (x - mean) / sd;
        return Math.exp(-z * z / 2) / (sd * 2.5066282746310002);
    }

    /** Anywhere up to 1.6 times the trend, and hardly beyond. */
    private static double strayCarry(double share) {
        return share <= 1.6 ? 1 / 1.6 : 1e-3;
    }
}
