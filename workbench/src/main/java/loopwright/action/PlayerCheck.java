package loopwright.action;

import java.util.List;
import java.util.Locale;
import loopwright.strategy.ScoreDistribution;

/**
 * A player played by his habits beside his real scores.
 *
 * @param course name of the course he was played on
 * @param modelled what a round takes by habit, good and bad days included
 * @param scores real scores as they count here
 * @param converted how many of them were brought here from other tees by rating and slope
 * @param setAside rows that could not be used, and why, in sentences
 * @param habitCost strokes a round that the habit costs beside the best play for the average
 */
public record PlayerCheck(
        String player,
        String course,
        String tees,
        int holes,
        int par,
        ScoreDistribution modelled,
        List<Double> scores,
        int converted,
        Calibration calibration,
        double habitCost,
        List<String> setAside) {
    public PlayerCheck {
        scores = List.copyOf(scores);
        setAside = List.copyOf(setAside);
    }

    /** The score that this share of real rounds does not exceed, 0 to 1. */
    public double realQuantile(double share) {
        List<Double> sorted = scores.stream().sorted().toList();
        double at = share * (sorted.size() - 1);
        int below = (int) at;
        int above = Math.min(below + 1, sorted.size() - 1);
        return sorted.get(below) + (at - below) * (sorted.get(above) - sorted.get(below));
    }

    /** The same of modelled rounds. */
    public int modelledQuantile(double share) {
        int score = modelled.lowest();
        while (score < modelled.highest() && modelled.probabilityAtMost(score) < share) {
            score++;
        }
        return score;
    }

    /** What the spreads say beside each other; empty while there are too few rounds to tell. */
    public String spreadInWords() {
        if (scores.size() < 8) { // a spread from fewer is off by a quarter and more (1 in 3)
            return "";
        }
        double ratio = calibration.realSd() / calibration.modelledSd();
        double error = 1 / Math.sqrt(2.0 * (scores.size() - 1));
        if (Math.abs(Math.log(ratio)) < 1.6449 * error) {
            return "The real rounds differ among each other as much as modelled ones.";
        }
        return String.format(
                Locale.ROOT,
                "The real rounds differ among each other %s than modelled ones (%.1f against %.1f): the odds of a very good or"
                        + " bad round are %s.",
                ratio > 1 ? "more" : "less",
                calibration.realSd(),
                calibration.modelledSd(),
                ratio > 1 ? "too low" : "too high");
    }
}
