package loopwright.ground;

import java.util.Arrays;
import loopwright.geo.Box;
import loopwright.geo.Place;

/**
 * Heights of the ground on a regular grid, metres above the source's own zero, bilinear between the grid's nodes.
 *
 * <p>The grid may be turned and stretched against the local frame (a raster in degrees, or in the metres of a map
 * projection): column = a0 + ax x + ay y, row = b0 + bx x + by y, with x and y in metres. Beyond the outermost nodes
 * the height of the nearest place on the edge holds. Differences of height and slopes are only as good as the distance
 * between nodes: see {@link #resolutionMetres()} and {@link #showsGreens()}.
 */
public final class HeightField {
    /** Nodes further apart than this cannot show the slope of a green, which is some 20 m across: three nodes or so. */
    private static final double GREEN_RESOLUTION_METRES = 5;

    private static final double SLOPE_ARM_METRES = 1;

    private final int columns;
    private final int rows;
    private final float[] heights;
    private final Grid grid;

    /**
     * Where the grid lies.
     *
     * @param a0 column of the frame's centre; ax, ay: columns per metre east and north
     * @param b0 row of the frame's centre; bx, by: rows per metre east and north
     */
    public record Grid(double a0, double ax, double ay, double b0, double bx, double by) {
        public Grid {
            double determinant = ax * by - ay * bx;
            if (!(Math.abs(determinant) > 0) || !Double.isFinite(a0 + b0 + determinant)) {
                throw new IllegalArgumentException("the grid has no extent");
            }
        }

        /** A grid along the axes with square cells whose node (0, 0) lies at a place. */
        public static Grid square(Place first, double stepMetres) {
            double k = 1 / stepMetres;
            return new Grid(-first.x() * k, k, 0, -first.y() * k, 0, k);
        }

        double column(double x, double y) {
            return a0 + ax * x + ay * y;
        }

        double row(double x, double y) {
            return b0 + bx * x + by * y;
        }

        /** The place of a node. */
        public Place place(double column, double row) {
            double determinant = ax * by - ay * bx;
            double c = column - a0;
            double r = row - b0;
            return new Place((c * by - ay * r) / determinant, (ax * r - c * bx) / determinant);
        }
    }

    /** Heights row by row, row 0 first; every height must be finite. */
    public HeightField(int columns, int rows, float[] heightsMetres, Grid grid) {
        if (columns < 2 || rows < 2 || heightsMetres.length != columns * rows) {
            throw new IllegalArgumentException("a height field needs 2 by 2 nodes or more, and a height at each");
        }
        for (float h : heightsMetres) {
            if (!Float.isFinite(h)) {
                throw new IllegalArgumentException("every node needs a height");
            }
        }
        this.columns = columns;
        this.rows = rows;
        this.heights = heightsMetres.clone();
        this.grid = grid;
    }

    public double heightMetres(double x, double y) {
        double column = Math.max(0, Math.min(columns - 1, grid.column(x, y)));
        double row = Math.max(0, Math.min(rows - 1, grid.row(x, y)));
        int c = Math.min(columns - 2, (int) column);
        int r = Math.min(rows - 2, (int) row);
        double u = column - c;
        double v = row - r;
        int at = r * columns + c;
        double south = heights[at] * (1 - u) + heights[at + 1] * u;
        double north = heights[at + columns] * (1 - u) + heights[at + columns + 1] * u;
        return south * (1 - v) + north * v;
    }

    public double heightMetres(Place place) {
        return heightMetres(place.x(), place.y());
    }

    /** How much higher {@code to} lies than {@code from}, metres; negative downhill. */
    public double riseMetres(Place from, Place to) {
        return heightMetres(to) - heightMetres(from);
    }

    /** Rise per metre towards the east at a place, from two heights 2 m apart or half the resolution, if more. */
    public double slopeEast(Place place) {
        double arm = armMetres();
        return (heightMetres(place.x() + arm, place.y()) - heightMetres(place.x() - arm, place.y())) / (2 * arm);
    }

    /** Rise per metre towards the north at a place. */
    public double slopeNorth(Place place) {
        double arm = armMetres();
        return (heightMetres(place.x(), place.y() + arm) - heightMetres(place.x(), place.y() - arm)) / (2 * arm);
    }

    private double armMetres() {
        return Math.max(SLOPE_ARM_METRES, resolutionMetres() / 2);
    }

    /** Rise per metre along a bearing (radians clockwise from north): the uphill or downhill lie of a stance. */
    public double slopeAlong(Place place, double bearing) {
        return slopeEast(place) * Math.sin(bearing) + slopeNorth(place) * Math.cos(bearing);
    }

    /** Distance between nodes, metres; of the two directions the coarser. */
    public double resolutionMetres() {
        Place here = grid.place(0, 0);
        return Math.max(here.distanceTo(grid.place(1, 0)), here.distanceTo(grid.place(0, 1)));
    }

    /** True if the grid is fine enough to show the slope of a green; else only the lie of the land is known. */
    public boolean showsGreens() {
        return resolutionMetres() <= GREEN_RESOLUTION_METRES;
    }

    /** True if the place lies inside the outermost nodes. */
    public boolean covers(Place place) {
        double column = grid.column(place.x(), place.y());
        double row = grid.row(place.x(), place.y());
        return column >= 0 && column <= columns - 1 && row >= 0 && row <= rows - 1;
    }

    public int columns() {
        return columns;
    }

    public int rows() {
        return rows;
    }

    public Grid grid() {
        return grid;
    }

    /** A copy of all heights, row by row. */
    public float[] heights() {
        return heights.clone();
    }

    /** The smallest box along the axes that holds all nodes. */
    public Box box() {
        return Box.around(java.util.List.of(
                grid.place(0, 0),
                grid.place(columns - 1, 0),
                grid.place(0, rows - 1),
                grid.place(columns - 1, rows - 1)));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof HeightField f
                && columns == f.columns
                && rows == f.rows
                && grid.equals(f.grid)
                && Arrays.equals(heights, f.heights);
    }

    @Override
    public int hashCode() {
        return 31 * grid.hashCode() + Arrays.hashCode(heights);
    }
}
