package loopwright.strategy;

import java.util.List;

/** The best play for a target over a {@link RoundOfOptions}: its chance, its choices, and the scores it leads to. */
public final class TargetPlay {
    private final List<List<ScoreDistribution>> holes;
    private final List<HandOver> before;
    private final List<int[]> choices;
    private final List<Integer> meanPlay;

    TargetPlay(
            List<List<ScoreDistribution>> holes, List<HandOver> before, List<int[]> choices, List<Integer> meanPlay) {
        this.holes = holes;
        this.before = before;
        this.choices = choices;
        this.meanPlay = meanPlay;
    }

    /** P(round's sum <= limit) under the best play for that limit. */
    public double chance(int limit) {
        return before.get(0).at(limit);
    }

    /** What is at stake before hole {@code hole} (0 the first, the number of holes: after the last). */
    public HandOver before(int hole) {
        return before.get(hole);
    }

    /**
     * The option to play on a hole with so many strokes in hand. Where the target is lost or certain, or options are
     * equal, it is the option with the better mean.
     */
    public int choice(int hole, int inHand) {
        int[] choice = choices.get(hole);
        int k = inHand - before.get(hole).lowest();
        return k < 0 || k >= choice.length ? meanPlay.get(hole) : choice[k];
    }

    /** The distribution of the round's sum under the play that is best for this limit. */
    public ScoreDistribution distribution(int limit) {
        ScoreDistribution sum = ScoreDistribution.certain(0);
        for (int hole = 0; hole < holes.size(); hole++) {
            sum = afterHole(hole, limit, sum);
        }
        return sum;
    }

    private ScoreDistribution afterHole(int hole, int limit, ScoreDistribution sum) {
        List<ScoreDistribution> options = holes.get(hole);
        int low = options.stream().mapToInt(ScoreDistribution::lowest).min().getAsInt();
        int high = options.stream().mapToInt(ScoreDistribution::highest).max().getAsInt();
        double[] out = new double[sum.highest() + high - sum.lowest() - low + 1];
        for (int s = sum.lowest(); s <= sum.highest(); s++) {
            ScoreDistribution played = options.get(choice(hole, limit - s));
            for (int c = played.lowest(); c <= played.highest(); c++) {
                out[s + c - sum.lowest() - low] += sum.probability(s) * played.probability(c);
            }
        }
        return ScoreDistribution.of(sum.lowest() + low, out);
    }
}
