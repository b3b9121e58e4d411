package loopwright.strategy;

import loopwright.ground.RunResistance;
import loopwright.ground.Surface;

/**
 * Where a ball comes to rest that has landed on a hole's raster: it runs along its line of flight, each surface using up
 * its resistance, in steps as long as the surface surely stays the same. The answer is an outcome code: the cell
 * of rest, or {@code restCells() + r} for the r-th crossing into a penalty area.
 */
final class GroundRun {
    private static final double SHORTEST_STEP = 1;

    private final HoleRaster raster;
    private final ReliefField relief;
    private final double[] resistance = new double[Surface.values().length];

    GroundRun(HoleRaster raster, ReliefField relief) {
        this.raster = raster;
        this.relief = relief;
        for (Surface s : Surface.values()) {
            resistance[s.ordinal()] = RunResistance.of(s);
        }
    }

    /**
     * Outcome code of a ball landing at a place (cell coordinates) with a run in cells of level fairway.
     *
     * @param east direction of flight, eastward part of a unit vector
     * @param north northward part
     * @param sector the same direction as a sector of {@link TreeFan}
     */
    int code(double column, double row, double run, double east, double north, int sector) {
        double x = column;
        double y = row;
        double left = run;
        int cell = raster.cell(x, y);
        short ground = raster.ground(cell);
        while (left > 0 && !HoleRaster.Ground.isPenaltyArea(ground)) {
            double cost = resistance[HoleRaster.Ground.surfaceIndex(ground)];
            double step = Math.max(SHORTEST_STEP, HoleRaster.Ground.sameSurfaceDistance(ground) - 1);
            boolean last = cost * step >= left;
            if (last) {
                step = left / cost;
            }
            left = last ? 0 : left - cost * step;
            x += east * step;
            y += north * step;
            cell = raster.cell(x, y);
            ground = raster.ground(cell);
        }
        return HoleRaster.Ground.isPenaltyArea(ground)
                ? raster.restCells() + relief.crossing(cell, sector)
                : raster.restCell(x, y);
    }
}
