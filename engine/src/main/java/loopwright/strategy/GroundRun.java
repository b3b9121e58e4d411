package loopwright.strategy;

import loopwright.ground.RunResistance;
import loopwright.ground.Surface;
import org.jspecify.annotations.Nullable;

/**
 * Where a ball comes to rest that has landed on a hole's raster: it runs along its line of flight, each surface using up
 * its resistance, in steps as long as the surface surely stays the same. Where heights are known a climb costs and a
 * fall gives back, and steps are short: each takes the slope of where it starts. The answer is an outcome code: the cell
 * of rest, or {@code restCells() + r} for the r-th crossing into a penalty area.
 */
final class GroundRun {
    /** Longest step where the ground's slope counts, cells. */
    private static final int SLOPE_STEP = 10;

    /** Cells of level fairway that a climb of one metre costs. */
    private static final double CLIMB_CELLS = 1 / (HoleRaster.CELL_METRES * RunResistance.CLIMB);

    private static final double LONGEST_RUN = RunResistance.LONGEST_RUN_METRES / HoleRaster.CELL_METRES;

    private final HoleRaster raster;
    private final ReliefField relief;
    private final @Nullable GroundHeights heights;
    private final int longestStep;
    private final double[] resistance = new double[Surface.values().length];

    GroundRun(HoleRaster raster, ReliefField relief, @Nullable GroundHeights heights) {
        this.raster = raster;
        this.relief = relief;
        this.heights = heights;
        longestStep = heights == null ? Integer.MAX_VALUE : SLOPE_STEP;
        for (Surface s : Surface.values()) {
            resistance[s.ordinal()] = RunResistance.of(s);
        }
    }

    /**
     * Outcome code of a ball landing at a place (cell coordinates).
     *
     * @param run in cells of level fairway, where it does not land on the green
     * @param greenRun in cells of level green, where it does
     * @param east direction of travel, eastward part of a unit vector
     * @param north northward part
     * @param sector the same direction as a sector of {@link TreeFan}
     * @param landingSlope rise of the ground along the travel where it lands, metres per cell
     */
    int code(
            double column,
            double row,
            double run,
            double greenRun,
            double east,
            double north,
            int sector,
            double landingSlope) {
        double x = column;
        double y = row;
        int cell = raster.cell(x, y);
        short ground = raster.ground(cell);
        boolean onGreen = HoleRaster.Ground.surfaceIndex(ground) == Surface.GREEN.ordinal();
        double left = onGreen ? greenRun : run;
        double gone = 0;
        double slope = landingSlope;
        while (left > 0 && gone < LONGEST_RUN && !HoleRaster.Ground.isPenaltyArea(ground)) {
            double perCell = resistance[HoleRaster.Ground.surfaceIndex(ground)] + CLIMB_CELLS * slope;
            double step = Math.min(HoleRaster.Ground.sameSurfaceDistance(ground), longestStep);
            boolean ends = perCell * step >= left;
            if (ends) {
                step = left / perCell;
            }
            x += east * step;
            y += north * step;
            int c = raster.heldColumn(x);
            int r = raster.heldRow(y);
            cell = r * raster.columns + c;
            if (ends) {
                break;
            }
            left -= perCell * step;
            gone += step;
            ground = raster.ground(cell);
            if (heights != null) {
                slope = heights.slope(heights.plane(c, r), (float) east, (float) north);
            }
        }
        return raster.isPenaltyArea(cell)
                ? raster.restCells() + relief.crossing(cell, sector)
                : raster.restCell(cell, x, y);
    }
}
