package loopwright.player;

/**
 * A player with what is uncertain about him.
 *
 * @param player the numbers to plan with (posterior means)
 * @param day how rounds differ
 */
public record PlayerProfile(Player player, DayEffect day) {}
