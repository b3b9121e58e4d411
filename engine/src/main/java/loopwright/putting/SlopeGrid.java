package loopwright.putting;

/**
 * A green known by its slope at the nodes of a square grid, bilinear between them; outside the grid the nearest edge
 * holds. Made from a height grid here, from spot heights by {@link SpotHeights}, from arrows by {@link SlopeArrows}.
 */
public final class SlopeGrid implements GreenSurface {
    private final double west;
    private final double south;
    private final double step;
    private final int columns;
    private final int rows;
    private final double[] east;
    private final double[] north;

    /** The slope of a green at one place: rise over run towards east and north. */
    public record Slope(double east, double north) {}

    /** Where slopes come from while a grid is filled. */
    @FunctionalInterface
    public interface Source {
        Slope at(double x, double y);
    }

    private SlopeGrid(double west, double south, double step, int columns, int rows, Source source) {
        if (!(step > 0) || columns < 2 || rows < 2) {
            throw new IllegalArgumentException("a slope grid needs a step above 0 and two rows and columns or more");
        }
        this.west = west;
        this.south = south;
        this.step = step;
        this.columns = columns;
        this.rows = rows;
        this.east = new double[rows * columns];
        this.north = new double[rows * columns];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                Slope slope = source.at(west + c * step, south + r * step);
                east[r * columns + c] = slope.east();
                north[r * columns + c] = slope.north();
            }
        }
    }

    /** Fills a grid that covers a rectangle. */
    public static SlopeGrid over(double west, double south, double east, double north, double step, Source source) {
        int columns = Math.max(2, (int) Math.ceil((east - west) / step) + 1);
        int rows = Math.max(2, (int) Math.ceil((north - south) / step) + 1);
        return new SlopeGrid(west, south, step, columns, rows, source);
    }

    /**
     * From heights {@code [row][column]}, rows from south to north: central differences, one-sided at the edge.
     *
     * @param west x of column 0
     * @param south y of row 0
     */
    public static SlopeGrid ofHeights(double west, double south, double step, double[][] heights) {
        int rows = heights.length;
        int columns = heights[0].length;
        return new SlopeGrid(west, south, step, columns, rows, (x, y) -> {
            int c = (int) Math.round((x - west) / step);
            int r = (int) Math.round((y - south) / step);
            int left = Math.max(0, c - 1);
            int right = Math.min(columns - 1, c + 1);
            int below = Math.max(0, r - 1);
            int above = Math.min(rows - 1, r + 1);
            return new Slope(
                    (heights[r][right] - heights[r][left]) / ((right - left) * step),
                    (heights[above][c] - heights[below][c]) / ((above - below) * step));
        });
    }

    @Override
    public double slopeEast(double x, double y) {
        return at(east, x, y);
    }

    @Override
    public double slopeNorth(double x, double y) {
        return at(north, x, y);
    }

    private double at(double[] values, double x, double y) {
        double cx = Math.max(0, Math.min(columns - 1, (x - west) / step));
        double cy = Math.max(0, Math.min(rows - 1, (y - south) / step));
        int c = Math.min((int) cx, columns - 2);
        int r = Math.min((int) cy, rows - 2);
        double tx = cx - c;
        double ty = cy - r;
        int i = r * columns + c;
        double low = values[i] + tx * (values[i + 1] - values[i]);
        double high = values[i + columns] + tx * (values[i + columns + 1] - values[i + columns]);
        return low + ty * (high - low);
    }
}
