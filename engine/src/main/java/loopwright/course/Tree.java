package loopwright.course;

import loopwright.geo.Place;

/**
 * A single tree.
 *
 * @param place where its trunk stands
 * @param crownRadiusMetres above 0
 * @param heightMetres top of the crown above the ground, above 0
 * @param gapMetres height of the lowest branches, from 0 to the top
 * @param density stops a ball this many times as often as an ordinary wood (1); 0.1 to 10
 */
public record Tree(
        String id, Place place, double crownRadiusMetres, double heightMetres, double gapMetres, double density) {
    public Tree {
        if (!(crownRadiusMetres > 0) || !(heightMetres > 0)) {
            throw new IllegalArgumentException("a tree needs a crown radius and a height above zero");
        }
        TreeCover.check(heightMetres, gapMetres, density);
    }

    /** A tree nobody has looked at closely: as dense as an ordinary wood, its lowest branches as high. */
    public Tree(String id, Place place, double crownRadiusMetres, double heightMetres) {
        this(id, place, crownRadiusMetres, heightMetres, assumedGapMetres(heightMetres), 1);
    }

    /** What the lowest branches of a tree are taken for where nobody has looked: assumed. */
    public static double assumedGapMetres(double heightMetres) {
        return Math.min(TreeCover.WOODS_DEFAULT.gapMetres(), heightMetres);
    }

    /** Its crown as an obstacle. */
    public TreeCover cover() {
        return new TreeCover(heightMetres, gapMetres, density);
    }
}
