package loopwright.action;

import loopwright.course.Course;
import loopwright.flight.DayConditions;
import loopwright.numerics.Watch;
import loopwright.player.DayFlight;
import loopwright.player.Player;
import loopwright.player.StrikeModel;

/** The bags flown last: a bag is flown once for a day, however many holes are solved on it. */
final class Flights {
    private static final int KEPT = 6;

    private final Remembered<Flown, DayFlight> kept = new Remembered<>(KEPT);

    private record Flown(Player player, DayConditions day) {}

    /** On the usual day and level ground a pattern is what it is; anything else is flown. */
    StrikeModel strikes(Player player, PlanDay day, Course course) {
        if (day.isUsual() && course.heights().isEmpty()) {
            return new StrikeModel(player);
        }
        DayFlight flown = kept.get(
                new Flown(player, day.conditions()),
                () -> new DayFlight(player.swings(), day.conditions(), Watch.NONE));
        return new StrikeModel(player, flown);
    }
}
