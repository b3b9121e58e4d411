package loopwright.strategy;

import loopwright.ground.HeightField;

/**
 * The lie of the land round a hole, read from the course's own heights once: planes, each the best fit to a square of
 * {@value #SIDE} by {@value #SIDE} cells. So few numbers stay at hand where a hundred million balls ask for them, and a
 * plane tells the slope with the height. Lengths are in cells, heights in metres.
 */
final class GroundHeights {
    private static final int SIDE_BITS = 3;
    private static final int SIDE = 1 << SIDE_BITS;
    /** Numbers of a plane: height at cell coordinates (0, 0), rise per cell east, rise per cell north. */
    private static final int FIELDS = 3;

    private final HoleRaster raster;
    private final int columns;
    private final int rows;
    private final float[] planes;

    GroundHeights(HoleRaster raster, HeightField field) {
        this.raster = raster;
        columns = squares(raster.columns);
        rows = squares(raster.rows);
        planes = new float[FIELDS * columns * rows];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                fit(field, c * SIDE, r * SIDE);
            }
        }
    }

    private static int squares(int cells) {
        return (cells + SIDE - 1) >> SIDE_BITS;
    }

    /** By least squares over the middles of the cells. */
    private void fit(HeightField field, int firstColumn, int firstRow) {
        double sum = 0;
        double east = 0;
        double north = 0;
        double squares = 0;
        double middleColumn = firstColumn + SIDE / 2.0;
        double middleRow = firstRow + SIDE / 2.0;
        for (int r = 0; r < SIDE; r++) {
            for (int c = 0; c < SIDE; c++) {
                double x = firstColumn + c + 0.5;
                double y = firstRow + r + 0.5;
                double height = field.heightMetres(raster.place(x, y));
                sum += height;
                east += (x - middleColumn) * height;
                north += (y - middleRow) * height;
                squares += (x - middleColumn) * (x - middleColumn);
            }
        }
        int plane = plane(firstColumn, firstRow);
        double riseEast = east / squares;
        double riseNorth = north / squares;
        planes[plane] = (float) (sum / (SIDE * SIDE) - riseEast * middleColumn - riseNorth * middleRow);
        planes[plane + 1] = (float) riseEast;
        planes[plane + 2] = (float) riseNorth;
    }

    /** The plane of a cell. */
    int plane(int column, int row) {
        return FIELDS * ((row >> SIDE_BITS) * columns + (column >> SIDE_BITS));
    }

    /** The plane of a place in cell coordinates; beyond the raster the nearest. */
    int planeAt(float column, float row) {
        return FIELDS * (held((int) row >> SIDE_BITS, rows) * columns + held((int) column >> SIDE_BITS, columns));
    }

    private static int held(int index, int count) {
        return Math.max(0, Math.min(index, count - 1));
    }

    /** Height of a plane, also where it is carried on beyond its square. */
    float metres(int plane, float column, float row) {
        return planes[plane] + planes[plane + 1] * column + planes[plane + 2] * row;
    }

    float metresAt(float column, float row) {
        return metres(planeAt(column, row), column, row);
    }

    /** Rise of a plane along a direction, metres per cell. */
    float slope(int plane, float east, float north) {
        return planes[plane + 1] * east + planes[plane + 2] * north;
    }
}
