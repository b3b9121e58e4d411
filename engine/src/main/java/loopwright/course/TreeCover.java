package loopwright.course;

/**
 * Trees at one place, as an obstacle to a ball in flight: the crowns fill the height from {@code gapMetres} to
 * {@code heightMetres}. A ball that flies through crowns is stopped after a random length of them, exponentially
 * distributed; under the branches only trunks stand.
 *
 * @param heightMetres top of the crowns above the ground
 * @param gapMetres height of the lowest branches, from 0 to the top
 */
public record TreeCover(double heightMetres, double gapMetres) {
    /** Mean length of crown a ball passes before it is stopped: assumed; crowns are partly porous. */
    public static final double CROWN_MEAN_FREE_METRES = 5;

    /** Mean length under the branches a ball passes before it meets a trunk: assumed. */
    public static final double TRUNK_MEAN_FREE_METRES = 40;

    /** What a wood is taken for where nobody has surveyed it: assumed. */
    public static final TreeCover WOODS_DEFAULT = new TreeCover(12, 2);

    public TreeCover {
        if (!(gapMetres >= 0 && gapMetres <= heightMetres)) {
            throw new IllegalArgumentException("the lowest branches lie between the ground and the top of the tree");
        }
    }

    /** Expected stops per metre of flight at this height above the ground; 0 above the crowns. */
    public double stopsPerMetre(double flightHeightMetres) {
        if (flightHeightMetres > heightMetres) {
            return 0;
        }
        return 1 / (flightHeightMetres >= gapMetres ? CROWN_MEAN_FREE_METRES : TRUNK_MEAN_FREE_METRES);
    }
}
