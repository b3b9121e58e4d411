package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;
import loopwright.player.StrikeModel;

/** The cheapest option seen for one state, and the best few beside it. */
final class CheapestOption {
    /** Swings that end this near each other, cells either way, cannot be told apart. */
    private static final double SAME_AIM_CELLS = 1.5;
    /** Touch shots. */
    private static final double SAME_TOUCH_CELLS = 0.4;
    /** Options this near each other, strokes, are told apart on more points. */
    private static final double TOSS_UP = 0.03;

    private static final double TEE_TOSS_UP = 0.1;

    private static final Option NOTHING = Option.stroke(0, 0, 0);

    private final StrikeModel strikes;
    private final boolean onTee;
    private final int points;
    private final Cost cost;
    private final Shortlist shortlist = new Shortlist();
    private final List<Option> tried = new ArrayList<>();
    private Option option = NOTHING;
    private double value = Double.POSITIVE_INFINITY;

    /** Expected strokes with an option, on so many points of its cloud. */
    interface Cost {
        double of(Option option, int points);
    }

    CheapestOption(StrikeModel strikes, boolean onTee, int points, Cost cost) {
        this.strikes = strikes;
        this.onTee = onTee;
        this.points = points;
        this.cost = cost;
    }

    Option option() {
        return option;
    }

    /** Its expected strokes; infinite as long as none was tried that ends. */
    double value() {
        return value;
    }

    Shortlist shortlist() {
        return shortlist;
    }

    /** Tries options but for aims so close to one of the same shot before that they cannot be told apart. */
    boolean tryOthers(List<Option> options) {
        boolean better = false;
        for (Option o : options) {
            better |= !wasTried(o) && tryAll(List.of(o));
        }
        return better;
    }

    private boolean wasTried(Option o) {
        if (o.isDrop() || onTee) {
            return false; // the tee's points are enough to tell aims apart
        }
        double close = strikes.isTouch(o.shot()) ? SAME_TOUCH_CELLS : SAME_AIM_CELLS;
        for (Option t : tried) {
            if (t.isNear(o, close)) {
                return true;
            }
        }
        return false;
    }

    /** True if one of them is cheaper than all before. */
    boolean tryAll(List<Option> options) {
        boolean better = false;
        for (Option o : options) {
            tried.add(o);
            double v = cost.of(o, points);
            shortlist.offer(o, v);
            if (v < value || tried.size() == 1) {
                value = v;
                option = o;
                better = true;
            }
        }
        return better;
    }

    /** Chooses again, on more points, among the options that the points so far can hardly tell apart. */
    void runOff(int morePoints) {
        List<Option> close = shortlist.within(onTee ? TEE_TOSS_UP : TOSS_UP);
        if (close.size() < 2) {
            return;
        }
        value = Double.POSITIVE_INFINITY;
        for (Option o : close) {
            double v = cost.of(o, morePoints);
            if (v < value) {
                value = v;
                option = o;
            }
        }
    }
}
