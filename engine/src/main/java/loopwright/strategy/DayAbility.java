package loopwright.strategy;

/** What the player can do on one of the days that stand for all, and how much that day counts. */
public record DayAbility(Ability ability, double weight) {
    public DayAbility {
        if (!(weight >= 0)) {
            throw new IllegalArgumentException("a day counts zero or more, not " + weight);
        }
    }
}
