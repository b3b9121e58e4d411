package loopwright.practice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import loopwright.player.DayEffect;
import loopwright.player.Player;
import loopwright.putting.GreenSpeed;
import loopwright.strategy.ScoreDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * What drill scores say of a player's skills: of each skill the logarithm x of what is left beside the model (0: as the model has
 * him; below 0: better). Prior: x normal about 0. Likelihood: the probability of each score by {@link Drill#scores} of the player
 * with those skills, so that a drill that several skills decide leaves them tied together as they are. The answer is the greatest
 * posterior with the normal approximation there; over many sessions it is as good as exact (ledger).
 */
public final class SkillPosterior {
    private static final double STEP = 0.03;
    private static final double FARTHEST = 1.6;
    private static final int MOST_STEPS = 25;
    private static final double SETTLED = 1e-4;
    private static final double LONGEST_STEP = 0.4;
    /** A score no skill explains (a slip of the pen) must not decide. */
    private static final double LEAST_LIKELIHOOD = 1e-6;

    /** Standard deviations of a normal law that hold 90 %. */
    private static final double NINETY = 1.645;

    /** One playing of a drill. */
    public record Played(Drill drill, int score) {}

    /**
     * A skill as it was measured.
     *
     * @param log of what is left beside the model
     * @param sd its standard deviation
     */
    public record Measured(double log, double sd) {
        public double left() {
            return Math.exp(log);
        }

        public double low() {
            return Math.exp(log - NINETY * sd);
        }

        public double high() {
            return Math.exp(log + NINETY * sd);
        }
    }

    private final Player model;
    private final DayEffect days;
    private final GreenSpeed speed;
    private final Map<Drill, TreeMap<Integer, Integer>> scores = new LinkedHashMap<>();
    private final List<Skill> skills;
    private final double[] priorSd;

    private SkillPosterior(
            Player model, DayEffect days, GreenSpeed speed, List<Played> played, Map<Skill, Double> priorSd) {
        this.model = model;
        this.days = days;
        this.speed = speed;
        TreeSet<Skill> found = new TreeSet<>();
        for (Played p : played) {
            scores.computeIfAbsent(p.drill(), d -> new TreeMap<>()).merge(p.score(), 1, Integer::sum);
            found.addAll(p.drill().skills(model));
        }
        skills = new ArrayList<>(found);
        skills.removeIf(s -> priorSd.getOrDefault(s, 0.0) <= 0);
        this.priorSd =
                skills.stream().mapToDouble(s -> priorSd.getOrDefault(s, 0.0)).toArray();
    }

    /**
     * Skills from drill scores.
     *
     * @param model the player the drills are compared with
     * @param priorSd by skill, how far x may be from 0; a skill without one is taken as the model has it
     */
    public static Map<Skill, Measured> of(
            Player model, DayEffect days, GreenSpeed speed, List<Played> played, Map<Skill, Double> priorSd) {
        return new SkillPosterior(model, days, speed, played, priorSd).peak();
    }

    private Map<Skill, Measured> peak() {
        Map<Skill, Measured> out = new EnumMap<>(Skill.class);
        if (skills.isEmpty()) {
            return out;
        }
        double[] x = new double[skills.size()];
        double size = Double.POSITIVE_INFINITY;
        Slopes slopes = slopes(x);
        for (int step = 0; step < MOST_STEPS && size > SETTLED; step++) {
            double[] next = slopes.newton(x);
            double value = loss(next);
            for (int half = 0; half < 6 && value > slopes.value + 1e-9; half++) {
                for (int i = 0; i < x.length; i++) {
                    next[i] = (next[i] + x[i]) / 2;
                }
                value = loss(next);
            }
            size = 0;
            for (int i = 0; i < x.length; i++) {
                size = Math.max(size, Math.abs(next[i] - x[i]));
            }
            x = next;
            slopes = slopes(x);
        }
        RealMatrix covariance = slopes.covariance();
        for (int i = 0; i < x.length; i++) {
            out.put(skills.get(i), new Measured(x[i], Math.sqrt(Math.max(0, covariance.getEntry(i, i)))));
        }
        return out;
    }

    /** Minus the logarithm of the posterior. */
    private double loss(double[] x) {
        double loss = 0;
        Map<Skill, Double> left = new EnumMap<>(Skill.class);
        for (int i = 0; i < x.length; i++) {
            loss += x[i] * x[i] / (2 * priorSd[i] * priorSd[i]);
            left.put(skills.get(i), Math.exp(x[i]));
        }
        Player player = new SkillLevels(left).player(model);
        for (Map.Entry<Drill, TreeMap<Integer, Integer>> e : scores.entrySet()) {
            ScoreDistribution law = e.getKey().scores(player, days, speed);
            for (Map.Entry<Integer, Integer> score : e.getValue().entrySet()) {
                loss -= score.getValue() * Math.log(Math.max(LEAST_LIKELIHOOD, law.probability(score.getKey())));
            }
        }
        return loss;
    }

    /** Value, gradient and curvature at a point, by central differences. */
    private Slopes slopes(double[] x) {
        int n = x.length;
        double value = loss(x);
        double[] plus = new double[n];
        double[] minus = new double[n];
        double[] gradient = new double[n];
        RealMatrix curvature = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            plus[i] = loss(moved(x, i, STEP, i, 0));
            minus[i] = loss(moved(x, i, -STEP, i, 0));
            gradient[i] = (plus[i] - minus[i]) / (2 * STEP);
            curvature.setEntry(i, i, (plus[i] - 2 * value + minus[i]) / (STEP * STEP));
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double both = loss(moved(x, i, STEP, j, STEP));
                double mixed = (both - plus[i] - plus[j] + value) / (STEP * STEP);
                curvature.setEntry(i, j, mixed);
                curvature.setEntry(j, i, mixed);
            }
        }
        return new Slopes(value, gradient, curvature);
    }

    private static double[] moved(double[] x, int i, double a, int j, double b) {
        double[] out = x.clone();
        out[i] += a;
        out[j] += b;
        return out;
    }

    private final class Slopes {
        final double value;
        private final double[] gradient;
        private final RealMatrix curvature;

        Slopes(double value, double[] gradient, RealMatrix curvature) {
            this.value = value;
            this.gradient = gradient;
            this.curvature = curvature;
            for (int i = 0; i < gradient.length; i++) {
                // never flatter than the prior, which the true curvature cannot be by much
                double least = 0.5 / (priorSd[i] * priorSd[i]);
                curvature.setEntry(i, i, Math.max(least, curvature.getEntry(i, i)));
            }
        }

        double[] newton(double[] x) {
            double[] step = new LUDecomposition(curvature)
                    .getSolver()
                    .solve(new ArrayRealVector(gradient))
                    .toArray();
            double[] out = x.clone();
            for (int i = 0; i < x.length; i++) {
                double held = Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, step[i]));
                out[i] = Math.max(-FARTHEST, Math.min(FARTHEST, x[i] - held));
            }
            return out;
        }

        RealMatrix covariance() {
            return new LUDecomposition(curvature).getSolver().getInverse();
        }
    }
}
