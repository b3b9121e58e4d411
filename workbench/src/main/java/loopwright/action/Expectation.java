package loopwright.action;

import java.util.List;
import java.util.Optional;

/**
 * What a player may expect of a round on a course, and how a round that beats the target is made.
 *
 * @param rounds simulated
 * @param beaten how many of them beat the target
 * @param usual counts of a round, averaged over all
 * @param atTarget the same over the rounds that beat the target, where there were enough of them
 * @param typical the commonest make-up of a round of exactly the target
 * @param today what the warm-up and the coach's dial changed about the player
 */
public record Expectation(
        String course,
        String tees,
        int holes,
        int drivingHoles,
        int par,
        int target,
        int rounds,
        int beaten,
        Counts usual,
        Optional<Counts> atTarget,
        Optional<MakeUp> typical,
        List<Putt> putts,
        Today today) {
    public Expectation {
        putts = List.copyOf(putts);
    }

    /** Averages per round; up and downs as a share of the tries. */
    public record Counts(
            double strokes,
            double birdiesOrBetter,
            double pars,
            double bogeys,
            double doubles,
            double triplesOrWorse,
            double fairways,
            double greens,
            double upAndDownTries,
            double upAndDownShare,
            double putts,
            double threePutts,
            double penalties) {}

    /** A round as a number of holes of each kind. */
    public record MakeUp(int birdiesOrBetter, int pars, int bogeys, int doubles, int triplesOrWorse, int rounds) {}

    /** Odds of a putt on a level green. */
    public record Putt(double metres, double one, double threeOrMore) {}
}
