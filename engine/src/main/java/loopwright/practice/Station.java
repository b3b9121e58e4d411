package loopwright.practice;

import java.util.Set;
import loopwright.player.Player;
import loopwright.putting.GreenSpeed;

/** One task of a drill, tried several times; every try gives whole points. */
public sealed interface Station permits PuttStation, ShotStation, UpAndDownStation {
    /** Times it is tried in one playing of the drill, 1 or more. */
    int tries();

    /** Most points of one try. */
    int most();

    /** Probability of each number of points of one try, from none to the most, for a player on the ordinary day. */
    double[] points(Player player, GreenSpeed speed);

    /** The skills that the points tell about. */
    Set<Skill> skills(Player player);
}
