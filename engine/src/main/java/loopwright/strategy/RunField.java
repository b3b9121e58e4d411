package loopwright.strategy;

import java.util.concurrent.atomic.AtomicReferenceArray;
import loopwright.ground.RunResistance;
import loopwright.ground.Surface;
import org.jspecify.annotations.Nullable;

/**
 * Where a ball comes to rest that lands in a cell, by run and direction: found once per cell and kept, since many shots
 * land there. The answer is an outcome code: the cell of rest, or {@code cells() + r} for the r-th crossing into
 * a penalty area.
 */
final class RunField {
    static final double RUN_STEP_CELLS = 2;
    static final int RUN_CLASSES = 32;
    static final int DIRECTIONS = 48;

    private static final double WALK_CELLS = 0.5;

    private final HoleRaster raster;
    private final ReliefField relief;
    private final AtomicReferenceArray<int @Nullable []> codes =
            new AtomicReferenceArray<>(RUN_CLASSES * DIRECTIONS);
    private final double[] resistance = new double[Surface.values().length];

    RunField(HoleRaster raster, ReliefField relief) {
        this.raster = raster;
        this.relief = relief;
        for (Surface s : Surface.values()) {
            resistance[s.ordinal()] = RunResistance.of(s);
        }
    }

    /** The sector of a bearing in radians, any turn. */
    static int direction(double bearing) {
        double turns = bearing / (2 * Math.PI);
        return (int) ((turns - Math.floor(turns)) * DIRECTIONS) % DIRECTIONS;
    }

    /** Outcome code of a ball that lands in a cell. */
    int code(int cell, int runClass, int direction) {
        int slot = runClass * DIRECTIONS + direction;
        int[] known = codes.get(slot);
        if (known == null) {
            known = new int[raster.cells()];
            codes.set(slot, known);
        }
        int code = known[cell];
        if (code == 0) {
            code = walk(cell, runClass * RUN_STEP_CELLS, (direction + 0.5) * 2 * Math.PI / DIRECTIONS) + 1;
            known[cell] = code;
        }
        return code - 1;
    }

    private int walk(int landing, double run, double bearing) {
        double dx = Math.sin(bearing) * WALK_CELLS;
        double dy = Math.cos(bearing) * WALK_CELLS;
        double x = landing % raster.columns + 0.5;
        double y = Math.floor((double) landing / raster.columns) + 0.5;
        int cell = landing;
        double left = run;
        while (left > 0 && !raster.surface(cell).isPenaltyArea()) {
            double cost = resistance[raster.surface(cell).ordinal()] * WALK_CELLS;
            double share = cost > left ? left / cost : 1;
            left -= cost;
            x += dx * share;
            y += dy * share;
            cell = raster.cell(x, y);
        }
        return raster.surface(cell).isPenaltyArea() ? crossing(x, y, dx, dy) : cell;
    }

    private int crossing(double x, double y, double dx, double dy) {
        double backX = x;
        double backY = y;
        Surface area = raster.surface(raster.cell(x, y));
        int cell = raster.cell(x, y);
        while (raster.surface(cell).isPenaltyArea()) {
            backX -= dx;
            backY -= dy;
            if (backX < 0 || backY < 0 || backX >= raster.columns || backY >= raster.rows) {
                break;
            }
            cell = raster.cell(backX, backY);
        }
        return raster.cells() + relief.record(cell, area);
    }
}
