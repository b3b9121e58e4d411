package loopwright.action;

import loopwright.course.Course;
import loopwright.flight.DayConditions;
import loopwright.numerics.Watch;
import loopwright.player.DayFlight;
import loopwright.player.Player;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.putting.PuttingSkill;

/**
 * What was worked out last for players: a bag is flown once for a day, and putting on level greens solved once for a green
 * speed, however many holes are solved with them.
 */
final class Flights {
    private static final int KEPT = 6;

    private final Remembered<Flown, DayFlight> kept = new Remembered<>(KEPT);

    private record Flown(Player player, DayConditions day) {}

    private final Remembered<Putted, LevelGreenOdds> putting = new Remembered<>(KEPT);

    private record Putted(PuttingSkill skill, GreenSpeed speed) {}

    LevelGreenOdds putting(PuttingSkill skill, GreenSpeed speed) {
        return putting.get(new Putted(skill, speed), () -> new LevelGreenOdds(skill, speed));
    }

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
