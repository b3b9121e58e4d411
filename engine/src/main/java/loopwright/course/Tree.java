package loopwright.course;

import loopwright.geo.Place;

/** A single tree: where its trunk stands, crown radius and height in metres. */
public record Tree(String id, Place place, double crownRadiusMetres, double heightMetres) {
    public Tree {
        if (!(crownRadiusMetres > 0) || !(heightMetres > 0)) {
            throw new IllegalArgumentException("a tree needs a crown radius and a height above zero");
        }
    }

    /** Its crown as an obstacle: as dense as an ordinary wood, its lowest branches as high. */
    public TreeCover cover() {
        return new TreeCover(heightMetres, Math.min(TreeCover.WOODS_DEFAULT.gapMetres(), heightMetres));
    }
}
