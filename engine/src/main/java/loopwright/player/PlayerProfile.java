package loopwright.player;

/**
 * A player with what is uncertain about him and how he plays.
 *
 * @param player the numbers to plan with (posterior means)
 * @param day how rounds differ
 * @param habit how he plays without a plan
 */
public record PlayerProfile(Player player, DayEffect day, Habit habit) {
    /** One whose habits nobody has stated. */
    public PlayerProfile(Player player, DayEffect day) {
        this(player, day, Habit.USUAL);
    }
}
