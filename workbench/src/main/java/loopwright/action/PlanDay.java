package loopwright.action;

import loopwright.flight.DayConditions;
import loopwright.putting.GreenSpeed;
import loopwright.units.Distance;

/** The day a round is planned for: air, wind and ground, and the speed of the greens, one and the same in both. */
public record PlanDay(DayConditions conditions, GreenSpeed greens) {
    /** Still standard air, ordinary ground; greens of 10 ft (common practice, no source). */
    public static final PlanDay USUAL =
            new PlanDay(DayConditions.STANDARD, GreenSpeed.ofRollMetres(10 * Distance.METRES_PER_FOOT));

    /** True if the day changes no flight and no run. */
    public boolean isUsual() {
        return conditions.equals(DayConditions.STANDARD);
    }
}
