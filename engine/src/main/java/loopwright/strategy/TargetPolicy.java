package loopwright.strategy;

import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.rules.Relief;

/** Target play on one hole as a policy for any place, begun with some strokes in hand; a cost is a chance forgone. */
final class TargetPolicy extends SolvedPolicy {
    private final HoleTarget target;
    private final Lane lane;

    TargetPolicy(HoleTarget target, Lane lane) {
        super(target.hole.mean(), target.hole.evaluation());
        this.target = target;
        this.lane = lane;
    }

    @Override
    public Policy afterStrokes(int strokes) {
        return strokes == 0 ? this : new TargetPolicy(target, lane.after(strokes));
    }

    @Override
    Option option(int state) {
        return target.options.options.get(state).get(target.choice.option(lane, state));
    }

    @Override
    public double costOfReplay(Place from, Surface surface, Situation situation) {
        return -target.field().inState(lane.after(1), target.hole.mean().state(from, surface, situation));
    }

    @Override
    public double costOfDrop(Relief.Option drop, Surface surface) {
        HoleRaster raster = target.hole.mean().problem.raster;
        return raster.isDrop(drop.place())
                ? -target.field().ofCell(lane.after(drop.penaltyStrokes()), raster.cell(drop.place()))
                : Double.POSITIVE_INFINITY;
    }
}
