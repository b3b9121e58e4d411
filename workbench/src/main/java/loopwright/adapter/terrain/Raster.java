package loopwright.adapter.terrain;

/** An elevation raster whose header has been read; heights are read for one window only. */
interface Raster {
    int columns();

    int rows();

    RasterFrame frame();

    /** Heights in metres row by row as the raster stores them, NaN where it has none. */
    float[] read(Window window);

    /** A part of a raster, first column and row and how many of each. */
    record Window(int column, int row, int columns, int rows) {}
}
