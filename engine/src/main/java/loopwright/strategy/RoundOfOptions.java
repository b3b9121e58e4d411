package loopwright.strategy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A round in which every hole offers a few score distributions: the best choice for the mean, and the best choice for a
 * target at every number of strokes in hand.
 *
 * <p>With b strokes in hand before hole i, U_i(b) = max over options o of sum_s P_o(s) U_{i+1}(b - c_i(s)), where c_i(s)
 * is what s strokes count in the hole's table, and U_n(b) = 1 if b >= 0, else 0. This is the goal-probability form of a
 * decision process with the running total in the state (Xu and Mannor, IJCAI 2011; Yu, Lin and Yan 1998): exact, since
 * golf's costs are small whole numbers. One backward pass answers every target at once.
 */
public final class RoundOfOptions {
    /** Below this gain a change of choice is rounding, not golf; the option with the better mean is kept. */
    private static final double GAIN = 1e-12;

    private final List<List<ScoreDistribution>> holes;

    public RoundOfOptions(List<HoleOptions> holes) {
        this.holes = holes.stream().map(HoleOptions::counted).toList();
    }

    /** The option of each hole with the lowest mean; the first of equals. */
    public List<Integer> meanPlay() {
        return holes.stream().map(RoundOfOptions::lowestMean).toList();
    }

    /** The distribution of the round's sum if each hole is always played with the given option. */
    public ScoreDistribution distribution(List<Integer> choices) {
        List<ScoreDistribution> chosen = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            chosen.add(holes.get(i).get(choices.get(i)));
        }
        return ScoreDistribution.sumOf(chosen);
    }

    /** The best play for every target. */
    public TargetPlay targetPlay() {
        List<HandOver> before = new ArrayList<>(List.of(HandOver.END));
        List<int[]> choices = new ArrayList<>();
        for (int i = holes.size() - 1; i >= 0; i--) {
            HandOver after = before.get(before.size() - 1);
            int[] choice = new int[span(holes.get(i), after)];
            before.add(stepBack(holes.get(i), after, choice));
            choices.add(choice);
        }
        Collections.reverse(before);
        Collections.reverse(choices);
        return new TargetPlay(holes, before, choices, meanPlay());
    }

    private static HandOver stepBack(List<ScoreDistribution> options, HandOver after, int[] choice) {
        int lowest = after.lowest() + least(options);
        double[] chance = new double[choice.length];
        for (int k = 0; k < choice.length; k++) {
            choice[k] = lowestMean(options);
            chance[k] = chance(options.get(choice[k]), after, lowest + k);
            for (int o = 0; o < options.size(); o++) {
                double other = chance(options.get(o), after, lowest + k);
                if (other > chance[k] + GAIN) {
                    chance[k] = other;
                    choice[k] = o;
                }
            }
            // Rounding in the sums must not break the order that holds exactly.
            chance[k] = Math.min(1, k > 0 ? Math.max(chance[k], chance[k - 1]) : chance[k]);
        }
        return new HandOver(lowest, chance);
    }

    private static double chance(ScoreDistribution counts, HandOver after, int inHand) {
        double sum = 0;
        for (int c = counts.lowest(); c <= counts.highest(); c++) {
            sum += counts.probability(c) * after.at(inHand - c);
        }
        return sum;
    }

    /** From the first strokes in hand that leave hope to the first that leave no doubt under every option. */
    private static int span(List<ScoreDistribution> options, HandOver after) {
        int most = options.stream().mapToInt(ScoreDistribution::highest).max().getAsInt();
        return after.secured() + most - (after.lowest() + least(options));
    }

    private static int least(List<ScoreDistribution> options) {
        return options.stream().mapToInt(ScoreDistribution::lowest).min().getAsInt();
    }

    private static int lowestMean(List<ScoreDistribution> options) {
        int best = 0;
        for (int o = 1; o < options.size(); o++) {
            if (options.get(o).mean() < options.get(best).mean() - GAIN) {
                best = o;
            }
        }
        return best;
    }
}
