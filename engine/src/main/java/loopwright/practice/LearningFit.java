package loopwright.practice;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How fast a player learns, from his own drills: every skill's hours are the table's times exp(-(u + v)), u shared by the player's
 * skills and v the skill's own, both normal about 0 (standard deviations 0.4 and 0.5: assumed). A skill measured at several sums
 * of hours is compared with its curve; where it stood at the start is unknown by 0.3 in the logarithm and integrated out in closed
 * form, u and v on a grid. A skill without drills learns something from the others through u.
 */
public final class LearningFit {
    static final double SHARED_SD = 0.4;
    static final double OWN_SD = 0.5;
    private static final double START_SD = 0.3;

    private static final int HALF = 20;
    private static final double STEP = 0.1;

    private final LearningTable table;
    private final Map<Skill, List<Point>> points;

    /**
     * One measurement.
     *
     * @param hours practised before
     * @param log of what is left beside the start, as measured
     * @param sd of the measurement
     */
    public record Point(double hours, double log, double sd) {
        public Point {
            if (!(hours >= 0) || !(sd > 0)) {
                throw new IllegalArgumentException("a measurement has hours of zero or more and a spread above zero");
            }
        }
    }

    private LearningFit(LearningTable table, Map<Skill, List<Point>> points) {
        this.table = table;
        this.points = points;
    }

    /** The table with the hours of every skill at their posterior mean (of the logarithm). */
    public static LearningTable of(LearningTable table, Map<Skill, List<Point>> points) {
        return new LearningFit(table, points).fitted();
    }

    private LearningTable fitted() {
        double[] shared = new double[2 * HALF + 1];
        Map<Skill, double[]> meanGivenShared = new EnumMap<>(Skill.class);
        for (int i = 0; i < shared.length; i++) {
            shared[i] = normal(at(i), SHARED_SD);
        }
        for (Skill skill : table.curves().keySet()) {
            double[] mean = new double[shared.length];
            List<Point> measured = points.getOrDefault(skill, List.of());
            for (int i = 0; i < shared.length; i++) {
                double sum = 0;
                double weighted = 0;
                for (int j = 0; j < shared.length; j++) {
                    double weight = normal(at(j), OWN_SD) + logLikelihood(skill, at(i) + at(j), measured);
                    double p = Math.exp(weight);
                    sum += p;
                    weighted += p * (at(i) + at(j));
                }
                mean[i] = weighted / sum;
                shared[i] += measured.isEmpty() ? 0 : Math.log(sum);
            }
            meanGivenShared.put(skill, mean);
        }
        LearningTable out = table;
        for (Map.Entry<Skill, double[]> e : meanGivenShared.entrySet()) {
            LearningCurve c = table.get(e.getKey());
            out = out.with(e.getKey(), c.withHours(c.hours() * Math.exp(-average(shared, e.getValue()))));
        }
        return out;
    }

    private static double at(int i) {
        return (i - HALF) * STEP;
    }

    /** Logarithm of a normal density but for a constant. */
    private static double normal(double x, double sd) {
        return -x * x / (2 * sd * sd);
    }

    private static double average(double[] logWeight, double[] values) {
        double most = Double.NEGATIVE_INFINITY;
        for (double w : logWeight) {
            most = Math.max(most, w);
        }
        double sum = 0;
        double weighted = 0;
        for (int i = 0; i < values.length; i++) {
            double p = Math.exp(logWeight[i] - most);
            sum += p;
            weighted += p * values[i];
        }
        return weighted / sum;
    }

    /** Of the measurements of a skill at a rate, the start integrated out: residuals are normal about one unknown mean. */
    private double logLikelihood(Skill skill, double logRate, List<Point> measured) {
        LearningCurve assumed = table.get(skill);
        LearningCurve curve = assumed.withHours(assumed.hours() * Math.exp(-logRate));
        double weights = 1 / (START_SD * START_SD);
        double sum = 0;
        double squares = 0;
        for (Point p : measured) {
            double residual = p.log() - Math.log(curve.left(p.hours()));
            double w = 1 / (p.sd() * p.sd());
            weights += w;
            sum += w * residual;
            squares += w * residual * residual;
        }
        return -0.5 * (squares - sum * sum / weights);
    }
}
