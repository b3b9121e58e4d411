package loopwright.scoring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import loopwright.geo.Box;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.putting.PuttingOdds;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.PolicyEvaluation;
import loopwright.units.Distance;

/**
 * Gathers solved holes into a {@link BenchmarkTable}. Off the green a value is the mean over the places of a lie within
 * {@value #CORRIDOR_METRES} m of the line of play (ours), weighted by nearness in distance. Strokes beyond bogey come from
 * the exact scores; penalty strokes from the chance of none, taken as events that come independently.
 */
public final class BenchmarkMaker {
    private static final double CORRIDOR_METRES = 45;
    private static final double STEP_METRES = 4;
    private static final double[] YARDS = {
        10, 20, 30, 40, 50, 60, 80, 100, 120, 140, 160, 180, 200, 220, 240, 260, 280, 300, 340, 380, 420, 460, 500, 540
    };
    private static final double[] FEET = {0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 25, 30, 40, 50, 60, 90};
    /** A point of a curve needs so many places near it. */
    private static final double FEWEST = 5;

    private final Map<Integer, BenchmarkTable.Hole> holes = new TreeMap<>();
    private final Map<Lie, double[][]> sums = new EnumMap<>(Lie.class);

    /** Adds a solved hole; the evaluation belongs to the problem. */
    public void add(HoleProblem problem, PolicyEvaluation evaluation) {
        int par = problem.map().hole().par();
        double[] scores = evaluation.scores();
        double beyond = 0;
        for (int k = par + 2; k < scores.length; k++) {
            beyond += (k - par - 1) * scores[k];
        }
        double clean = Math.max(1e-3, evaluation.withoutPenalty());
        holes.put(
                problem.map().hole().number(),
                new BenchmarkTable.Hole(
                        problem.line().lengthMetres(), evaluation.expected(), beyond, -Math.log(clean)));
        addPlaces(problem, evaluation);
    }

    private void addPlaces(HoleProblem problem, PolicyEvaluation evaluation) {
        Line line = problem.line();
        Box box = Box.around(line.places()).grown(CORRIDOR_METRES);
        for (double x = box.minX(); x <= box.maxX(); x += STEP_METRES) {
            for (double y = box.minY(); y <= box.maxY(); y += STEP_METRES) {
                Place place = new Place(x, y);
                Lie lie = lieOf(problem.map().surfaceAt(place));
                if (lie != Lie.GREEN && lie != Lie.TEE && line.distanceTo(place) <= CORRIDOR_METRES) {
                    double strokes = evaluation.expectedFrom(place);
                    if (strokes > 0) {
                        add(lie, place.distanceTo(problem.hole()) / Distance.METRES_PER_YARD, strokes);
                    }
                }
            }
        }
    }

    /** A triangle of weight round each point of the curve, as wide as the way to its neighbours. */
    private void add(Lie lie, double yards, double strokes) {
        double[][] sum = sums.computeIfAbsent(lie, l -> new double[3][YARDS.length]);
        for (int i = 0; i < YARDS.length; i++) {
            double low = i == 0 ? 0 : YARDS[i - 1];
            double high = i + 1 < YARDS.length ? YARDS[i + 1] : 2 * YARDS[i] - low;
            double way = yards < YARDS[i] ? (yards - low) / (YARDS[i] - low) : (high - yards) / (high - YARDS[i]);
            if (way > 0) {
                sum[0][i] += way;
                sum[1][i] += way * strokes;
                sum[2][i] += way * yards;
            }
        }
    }

    /** The table; a point is where its places lie on average. */
    public BenchmarkTable table(String name, PuttingOdds putting) {
        Map<Lie, Curve> curves = new EnumMap<>(Lie.class);
        sums.forEach((lie, sum) -> {
            List<Curve.Point> points = new ArrayList<>();
            for (int i = 0; i < YARDS.length; i++) {
                if (sum[0][i] >= FEWEST) {
                    points.add(new Curve.Point(sum[2][i] / sum[0][i], sum[1][i] / sum[0][i]));
                }
            }
            if (points.size() >= 2) {
                curves.put(lie, new Curve(points));
            }
        });
        return new BenchmarkTable(
                name,
                holes,
                curves,
                byFeet(putting::expectedPutts),
                byFeet(d -> putting.probability(d, 1)),
                byFeet(d -> beyondTwo(putting, d)));
    }

    private static double beyondTwo(PuttingOdds putting, double metres) {
        return Math.max(0, putting.expectedPutts(metres) - 2 + putting.probability(metres, 1));
    }

    private static Curve byFeet(DoubleUnaryOperator value) {
        List<Curve.Point> points = new ArrayList<>();
        for (double feet : FEET) {
            points.add(new Curve.Point(feet, value.applyAsDouble(feet * Distance.METRES_PER_FOOT)));
        }
        return new Curve(points);
    }

    /** The word of the published tables for a surface. */
    public static Lie lieOf(Surface surface) {
        return switch (surface) {
            case TEE -> Lie.TEE;
            case GREEN -> Lie.GREEN;
            case FAIRWAY -> Lie.FAIRWAY;
            case BUNKER, WASTE_AREA -> Lie.SAND;
            case WOODS -> Lie.RECOVERY;
            default -> Lie.ROUGH;
        };
    }
}
