package loopwright.course;

import org.jspecify.annotations.Nullable;

/**
 * Trees at one place, as an obstacle to a ball in flight: the crowns fill the height from {@code gapMetres} to
 * {@code heightMetres}. A ball that flies through crowns is stopped after a random length of them, exponentially
 * distributed; under the branches only trunks stand.
 *
 * @param heightMetres top of the crowns above the ground
 * @param gapMetres height of the lowest branches, from 0 to the top
 * @param density stops a ball this many times as often as an ordinary wood (1); 0.1 to 10
 */
public record TreeCover(double heightMetres, double gapMetres, double density) {
    /** Mean length of crown a ball passes before it is stopped: assumed; crowns are partly porous. */
    public static final double CROWN_MEAN_FREE_METRES = 5;

    /** Mean length under the branches a ball passes before it meets a trunk: assumed. */
    public static final double TRUNK_MEAN_FREE_METRES = 40;

    /** What a wood is taken for where nobody has surveyed it: assumed. */
    public static final TreeCover WOODS_DEFAULT = new TreeCover(12, 2);

    /** Trees as dense as an ordinary wood. */
    public TreeCover(double heightMetres, double gapMetres) {
        this(heightMetres, gapMetres, 1);
    }

    public TreeCover {
        check(heightMetres, gapMetres, density);
    }

    static void check(double heightMetres, double gapMetres, double density) {
        if (!(density >= 0.1 && density <= 10)) {
            throw new IllegalArgumentException("the density of trees lies between 0.1 and 10, not " + density);
        }
        if (!(gapMetres >= 0 && gapMetres <= heightMetres)) {
            throw new IllegalArgumentException("the lowest branches lie between the ground and the top of the tree");
        }
    }

    /** The higher of two, either of which may be missing. */
    public static @Nullable TreeCover higher(@Nullable TreeCover a, @Nullable TreeCover b) {
        return a == null || (b != null && b.heightMetres > a.heightMetres) ? b : a;
    }

    /** Expected stops per metre of flight at this height above the ground; 0 above the crowns. */
    public double stopsPerMetre(double flightHeightMetres) {
        if (flightHeightMetres > heightMetres) {
            return 0;
        }
        return density / (flightHeightMetres >= gapMetres ? CROWN_MEAN_FREE_METRES : TRUNK_MEAN_FREE_METRES);
    }
}
