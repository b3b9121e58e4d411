package loopwright.strategy;

import java.util.Optional;

/**
 * What a stroke leads to in one lane: the chance in every cell one stroke on, after the best drop from every crossing,
 * and for a replay from the same state. Where another field decides, the drops and whether they are taken are its own.
 */
final class LaneStakes {
    private final LaneField field;
    private final Lane lane;
    private final Lane one;
    private final Lane two;
    private final double[] found;
    private final LaneStakes decider;
    private final int[] drop;
    private final double[] dropped;

    /** Decides itself. */
    LaneStakes(LaneField field, Lane lane) {
        this(field, lane, new int[0], Optional.empty());
    }

    /** Does as another field has decided, where that knows the crossing. */
    LaneStakes(LaneField field, Lane lane, LaneStakes decider) {
        this(field, lane, decider.drop, Optional.of(decider));
    }

    private LaneStakes(LaneField field, Lane lane, int[] decided, Optional<LaneStakes> decider) {
        this.field = field;
        this.lane = lane;
        this.decider = decider.orElse(this);
        one = lane.after(1);
        two = lane.after(2);
        found = one.settled() ? new double[0] : field.found(one);
        drop = new int[field.relief.size()];
        dropped = new double[drop.length];
        for (int r = 0; r < drop.length; r++) {
            drop[r] = r < decided.length ? decided[r] : bestDrop(r);
            dropped[r] = drop[r] < 0 ? -1 : field.inCell(afterDrop(r), drop[r]);
        }
    }

    /** The lane after the stroke and the penalty strokes of a drop. */
    private Lane afterDrop(int crossing) {
        return lane.after(1 + field.relief.penalty(crossing));
    }

    private int bestDrop(int crossing) {
        int best = -1;
        double most = Double.NEGATIVE_INFINITY;
        for (int cell : field.relief.drops(crossing)) {
            double chance = field.inCell(afterDrop(crossing), cell);
            if (chance > most) {
                most = chance;
                best = cell;
            }
        }
        return best;
    }

    /** Chance of the target if the stroke of a row is played from a state in this lane. */
    double chance(ChanceRows rows, int row, int state) {
        if (rows.isDrop(row)) {
            return field.inCell(lane.after(rows.cost(row)), rows.dropCell(row));
        }
        if (one.settled()) {
            return field.holed(one);
        }
        double again = field.inState(two, state);
        return rows.sum(row, found, this, state, again);
    }

    /** The better of the best drop and a replay. */
    double relieved(int crossing, int state, double again) {
        LaneStakes who = crossing < decider.drop.length ? decider : this;
        boolean drops = who.dropped[crossing] > (who == this ? again : who.again(state));
        return drops ? dropped[crossing] : again;
    }

    private double again(int state) {
        return field.inState(two, state);
    }
}
