package loopwright.flight;

import loopwright.ground.BounceAndRoll;
import loopwright.ground.Firmness;

/**
 * What one day does to a ball: air, wind and ground.
 *
 * @param greenResistance rolling resistance of the greens (see {@code putting.GreenSpeed}), above 0
 */
public record DayConditions(Air air, Wind wind, Firmness firmness, double greenResistance) {
    /** A green speed of ten feet: 18/10 ft/s2 = (5/7) rho g. */
    public static final double ORDINARY_GREEN_RESISTANCE = 0.0784;

    /** Still air at 24 C, sea level, 50 % humidity; ordinary ground. */
    public static final DayConditions STANDARD =
            new DayConditions(Air.STANDARD, Wind.NONE, Firmness.ORDINARY, ORDINARY_GREEN_RESISTANCE);

    public DayConditions {
        if (!(greenResistance > 0 && greenResistance < 1)) {
            throw new IllegalArgumentException("green resistance lies between 0 and 1, not " + greenResistance);
        }
    }

    public BounceAndRoll ground() {
        return new BounceAndRoll(firmness, greenResistance);
    }
}
