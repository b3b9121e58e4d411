package loopwright.adapter.terrain;

import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.ground.HeightField;

/**
 * The linear map from the local frame to columns and rows of a window. A raster in degrees or in a projection is bent
 * against the local frame; over a golf course the bend is some 0.1 m, and what is left of it is measured and told.
 */
final class GridFit {
    private GridFit() {}

    static HeightField.Grid fit(RasterFrame raster, Raster.Window w, LocalFrame frame, TerrainOddities oddities) {
        double midColumn = w.column() + (w.columns() - 1) / 2.0;
        double midRow = w.row() + (w.rows() - 1) / 2.0;
        double armColumns = (w.columns() - 1) / 2.0;
        double armRows = (w.rows() - 1) / 2.0;
        Place middle = place(raster, frame, midColumn, midRow);
        Place east = place(raster, frame, midColumn + armColumns, midRow);
        Place west = place(raster, frame, midColumn - armColumns, midRow);
        Place high = place(raster, frame, midColumn, midRow + armRows);
        Place low = place(raster, frame, midColumn, midRow - armRows);
        // metres per column and per row
        double xc = (east.x() - west.x()) / (2 * armColumns);
        double yc = (east.y() - west.y()) / (2 * armColumns);
        double xr = (high.x() - low.x()) / (2 * armRows);
        double yr = (high.y() - low.y()) / (2 * armRows);
        double determinant = xc * yr - xr * yc;
        double ax = yr / determinant;
        double ay = -xr / determinant;
        double bx = -yc / determinant;
        double by = xc / determinant;
        double a0 = midColumn - w.column() - ax * middle.x() - ay * middle.y();
        double b0 = midRow - w.row() - bx * middle.x() - by * middle.y();
        HeightField.Grid grid = new HeightField.Grid(a0, ax, ay, b0, bx, by);
        oddities.bend(worstMetres(grid, raster, w, frame));
        return grid;
    }

    /** The largest distance between a corner of the window and where the linear map puts it. */
    private static double worstMetres(HeightField.Grid grid, RasterFrame raster, Raster.Window w, LocalFrame frame) {
        double worst = 0;
        for (int c : new int[] {0, w.columns() - 1}) {
            for (int r : new int[] {0, w.rows() - 1}) {
                Place exact = place(raster, frame, w.column() + c, w.row() + r);
                worst = Math.max(worst, exact.distanceTo(grid.place(c, r)));
            }
        }
        return worst;
    }

    private static Place place(RasterFrame raster, LocalFrame frame, double column, double row) {
        double[] at = raster.degrees(column, row);
        return frame.toPlace(new LatLon(at[1], at[0]));
    }
}
