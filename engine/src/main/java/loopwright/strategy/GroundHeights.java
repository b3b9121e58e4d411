package loopwright.strategy;

import loopwright.ground.HeightField;

/** Height of the ground at the cells of a hole, read from the course's own heights once. */
final class GroundHeights {
    private final HoleRaster raster;
    private final float[] metres;

    GroundHeights(HoleRaster raster, HeightField field) {
        this.raster = raster;
        metres = new float[raster.cells()];
        for (int cell = 0; cell < metres.length; cell++) {
            metres[cell] = (float) field.heightMetres(raster.centre(cell));
        }
    }

    /** Height at a place in cell coordinates, of its cell's centre. */
    double metres(double column, double row) {
        return metres[raster.cell(column, row)];
    }

    double metres(int cell) {
        return metres[cell];
    }
}
