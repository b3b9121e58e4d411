package loopwright.strategy;

import loopwright.ground.RunResistance;
import loopwright.ground.Surface;
import org.jspecify.annotations.Nullable;

/**
 * Where a ball comes to rest that has landed on a hole's raster: it runs along its line of flight, each surface using up
 * its resistance, in steps as long as the surface surely stays the same. Where heights are known a climb costs and a
 * fall gives back, and steps are short. The answer is an outcome code: the cell
 * of rest, or {@code restCells() + r} for the r-th crossing into a penalty area.
 */
final class GroundRun {
    /** Length of a step where the ground's slope counts, cells. */
    private static final double SLOPE_STEP = 10;

    /** Cells of level fairway that a climb of one metre costs. */
    private static final double CLIMB_CELLS = 1 / (HoleRaster.CELL_METRES * RunResistance.CLIMB);

    private static final double LONGEST_RUN = RunResistance.LONGEST_RUN_METRES / HoleRaster.CELL_METRES;

    private final HoleRaster raster;
    private final ReliefField relief;
    private final double[] resistance = new double[Surface.values().length];

    private final @Nullable GroundHeights heights;

    GroundRun(HoleRaster raster, ReliefField relief, @Nullable GroundHeights heights) {
        this.heights = heights;
        this.raster = raster;
        this.relief = relief;
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
     */
    int code(double column, double row, double run, double greenRun, double east, double north, int sector) {
        int landed = raster.cell(column, row);
        boolean onGreen = HoleRaster.Ground.surfaceIndex(raster.ground(landed)) == Surface.GREEN.ordinal();
        double left = onGreen ? greenRun : run;
        return heights == null
                ? level(landed, column, row, left, east, north, sector)
                : sloping(heights, landed, column, row, left, east, north, sector);
    }

    private int outcome(int cell, double x, double y, int sector) {
        return raster.isPenaltyArea(cell)
                ? raster.restCells() + relief.crossing(cell, sector)
                : raster.restCell(cell, x, y);
    }

    private int level(int landed, double column, double row, double run, double east, double north, int sector) {
        double x = column;
        double y = row;
        double left = run;
        int cell = landed;
        short ground = raster.ground(cell);
        while (left > 0 && !HoleRaster.Ground.isPenaltyArea(ground)) {
            double perCell = resistance[HoleRaster.Ground.surfaceIndex(ground)];
            double step = HoleRaster.Ground.sameSurfaceDistance(ground);
            double cost = perCell * step;
            if (cost >= left) {
                step = left / perCell;
                cost = left;
            }
            left -= cost;
            x += east * step;
            y += north * step;
            cell = raster.cell(x, y);
            ground = raster.ground(cell);
        }
        return outcome(cell, x, y, sector);
    }

    private int sloping(
            GroundHeights heights,
            int landed,
            double column,
            double row,
            double run,
            double east,
            double north,
            int sector) {
        double x = column;
        double y = row;
        double left = run;
        double gone = 0;
        int cell = landed;
        short ground = raster.ground(cell);
        double height = heights.metres(cell);
        while (left > 0 && gone < LONGEST_RUN && !HoleRaster.Ground.isPenaltyArea(ground)) {
            double step = Math.min(SLOPE_STEP, HoleRaster.Ground.sameSurfaceDistance(ground));
            cell = raster.cell(x + east * step, y + north * step);
            double ahead = heights.metres(cell);
            double climb = (ahead - height) * CLIMB_CELLS;
            double cost = resistance[HoleRaster.Ground.surfaceIndex(ground)] * step + climb;
            if (cost >= left) {
                step *= left / cost;
            }
            left -= cost;
            gone += step;
            x += east * step;
            y += north * step;
            height = ahead;
            ground = raster.ground(cell);
        }
        return outcome(raster.cell(x, y), x, y, sector);
    }
}
