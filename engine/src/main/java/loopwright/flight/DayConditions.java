package loopwright.flight;

import loopwright.ground.BounceAndRoll;
import loopwright.ground.Firmness;

/**
 * What one day does to a ball: air, wind and ground.
 *
 * @param greenResistance rolling resistance of the greens (see {@code putting.GreenSpeed}), above 0
 */
public record DayConditions(Air air, Wind wind, Firmness firmness, double greenResistance) {
    /** A green speed of ten feet: a = 1.83^2 / (2 S) = (5/7) rho g; the very number {@code GreenSpeed} gives. */
    public static final double ORDINARY_GREEN_RESISTANCE = 1.83 * 1.83 / (2 * (10 * 0.3048)) * 7 / (5 * 9.80665);

    /** Still air at 24 C, sea level, 50 % humidity; ordinary ground. */
    public static final DayConditions STANDARD =
            new DayConditions(Air.STANDARD, Wind.NONE, Firmness.ORDINARY, ORDINARY_GREEN_RESISTANCE);

    public DayConditions {
        if (!(greenResistance > 0 && greenResistance < 1)) {
            throw new IllegalArgumentException("green resistance lies between 0 and 1, not " + greenResistance);
        }
    }

    /** The same air and ground without wind and gusts. */
    public DayConditions withoutWind() {
        return new DayConditions(air, Wind.NONE, firmness, greenResistance);
    }

    /** The same air and wind over ordinary ground. */
    public DayConditions withOrdinaryGround() {
        return new DayConditions(air, wind, Firmness.ORDINARY, ORDINARY_GREEN_RESISTANCE);
    }

    public BounceAndRoll ground() {
        return new BounceAndRoll(firmness, greenResistance);
    }
}
