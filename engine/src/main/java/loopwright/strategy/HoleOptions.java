package loopwright.strategy;

import java.util.List;

/** A hole as seen from the round: a few ways to play it, each a distribution of strokes, and the table they count in. */
public record HoleOptions(ScoreTable table, List<ScoreDistribution> options) {
    public HoleOptions {
        options = List.copyOf(options);
        if (options.isEmpty()) {
            throw new IllegalArgumentException("a hole needs at least one way to play it");
        }
        for (ScoreDistribution option : options) {
            if (option.lowest() < 1) {
                throw new IllegalArgumentException("a hole takes at least one stroke, not " + option.lowest());
            }
        }
    }

    /** What each option counts in the round's sum. */
    public List<ScoreDistribution> counted() {
        return options.stream().map(option -> option.countedBy(table)).toList();
    }
}
