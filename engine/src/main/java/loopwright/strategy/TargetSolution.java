package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import loopwright.player.RoundDay;

/** A round solved for every target: chances of target play and of mean play, averaged over the days that count. */
public final class TargetSolution {
    private final List<HoleTarget> holes;
    private final List<RoundDay> days;
    private final List<RoundScores> meanPlayFrom = new ArrayList<>();

    TargetSolution(List<HoleTarget> holes, List<RoundDay> days) {
        this.holes = holes;
        this.days = days;
        meanPlayFrom.add(RoundScores.none(days));
        for (int i = holes.size() - 1; i >= 0; i--) {
            meanPlayFrom.add(0, meanPlayFrom.get(0).plus(holes.get(i).meanPlay()));
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

    /**
     * The same from the tee of a hole (0 the first) with so many strokes in hand. What the days on which bias and spread meet
     * add is that of mean play: from day to day the two go the same way.
     */
    public double targetPlayFrom(int hole, int inHand) {
        return overDays(day -> targetPlayFrom(hole, inHand, day), hole, inHand);
    }

    public double meanPlayFrom(int hole, int inHand) {
        return overDays(day -> meanPlayFrom(hole, inHand, day), hole, inHand);
    }

    private double overDays(IntToDoubleFunction ofDay, int hole, int inHand) {
        double sum = meanPlayFrom.get(hole).meetingUpTo(inHand);
        for (int day = 0; day < days.size(); day++) {
            sum += days.get(day).weight() * ofDay.applyAsDouble(day);
        }
        return Math.max(0, Math.min(1, sum));
    }

    /** The same on one day. */
    double targetPlayFrom(int hole, int inHand, int day) {
        return hole == holes.size()
                ? HandOver.END.at(inHand)
                : holes.get(hole).before().get(day).at(inHand);
    }

    double meanPlayFrom(int hole, int inHand, int day) {
        return meanPlayFrom.get(hole).onDay(day).probabilityAtMost(inHand);
    }

    /** The distribution of the round's sum under mean play. */
    public ScoreDistribution meanPlay() {
        return meanPlayFrom.get(0).overDays();
    }
}
