package loopwright.strategy;

import loopwright.player.RoundDay;

/** What the player can do on one of the days that stand for all. */
public record DayAbility(Ability ability, RoundDay day) {
    /** How much the day counts. */
    public double weight() {
        return day.weight();
    }
}
