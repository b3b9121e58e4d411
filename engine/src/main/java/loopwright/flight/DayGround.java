package loopwright.flight;

import loopwright.ground.BounceAndRoll;
import loopwright.ground.RunTable;
import loopwright.ground.Surface;

/** The runs of one day on fairway and green, tabulated once for every club. */
public record DayGround(RunTable fairway, RunTable green) {
    /** The ground of a standard day, which a player's own runs are stated on. */
    public static final DayGround STANDARD = of(DayConditions.STANDARD);

    public static DayGround of(DayConditions day) {
        BounceAndRoll ground = day.ground();
        return new DayGround(new RunTable(ground, Surface.FAIRWAY), new RunTable(ground, Surface.GREEN));
    }
}
