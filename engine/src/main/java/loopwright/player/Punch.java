package loopwright.player;

import java.util.List;

/**
 * The punch out of trees, for a player who has not measured one: kept under the branches with a middle iron, its
 * length chosen. Spread and mishits grow with the level; all values assumed.
 */
final class Punch {
    private Punch() {}

    static TouchShot assumed(Player player) {
        double over = Math.max(0, player.level() - 70) / 30;
        double longest = 0.75 * player.swings().get(0).pattern().carryMetres();
        return new TouchShot(
                TouchShot.Kind.PUNCH,
                15,
                Math.max(30, longest),
                2,
                0.10 + 0.06 * over,
                Math.toRadians(4 + 2 * over),
                0.45,
                List.of(new Mishit(Mishit.Kind.FAT, 0.04 + 0.06 * over, 0.45, 0.15, 0, Math.toRadians(6), true)),
                Evidence.ASSUMED);
    }
}
