package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;

/** A round solved for every target: chances of target play and of mean play, averaged over the days that count. */
public final class TargetSolution {
    private final List<HoleTarget> holes;
    private final List<Double> weights;
    private final List<List<ScoreDistribution>> meanPlayFrom = new ArrayList<>();

    TargetSolution(List<HoleTarget> holes, List<Double> weights) {
        this.holes = holes;
        this.weights = weights;
        List<ScoreDistribution> rest =
                weights.stream().map(w -> ScoreDistribution.certain(0)).toList();
        meanPlayFrom.add(rest);
        for (int i = holes.size() - 1; i >= 0; i--) {
            List<ScoreDistribution> next = new ArrayList<>();
            for (int day = 0; day < weights.size(); day++) {
                next.add(holes.get(i)
                        .meanPlay()
                        .get(day)
                        .plus(meanPlayFrom.get(0).get(day)));
            }
            meanPlayFrom.add(0, next);
        }
    }

    /** The holes in playing order. */
    public List<HoleTarget> holes() {
        return holes;
    }

    /** P(total &lt;= limit) under the best play for that limit. */
    public double targetPlay(int limit) {
        return targetPlayFrom(0, limit);
    }

    /** P(total &lt;= limit) under the play with the best average. */
    public double meanPlay(int limit) {
        return meanPlayFrom(0, limit);
    }

    /** The same from the tee of a hole (0 the first) with so many strokes in hand. */
    public double targetPlayFrom(int hole, int inHand) {
        double sum = 0;
        for (int day = 0; day < weights.size(); day++) {
            sum += weights.get(day) * targetPlayFrom(hole, inHand, day);
        }
        return sum;
    }

    public double meanPlayFrom(int hole, int inHand) {
        double sum = 0;
        for (int day = 0; day < weights.size(); day++) {
            sum += weights.get(day) * meanPlayFrom(hole, inHand, day);
        }
        return sum;
    }

    /** The same on one day. */
    double targetPlayFrom(int hole, int inHand, int day) {
        return hole == holes.size()
                ? HandOver.END.at(inHand)
                : holes.get(hole).before().get(day).at(inHand);
    }

    double meanPlayFrom(int hole, int inHand, int day) {
        return meanPlayFrom.get(hole).get(day).probabilityAtMost(inHand);
    }

    /** The distribution of the round's sum under mean play. */
    public ScoreDistribution meanPlay() {
        return ScoreDistribution.mixtureOf(
                meanPlayFrom.get(0),
                weights.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
