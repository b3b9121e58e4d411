package loopwright.strategy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loopwright.course.CourseMap;
import loopwright.ground.Surface;
import loopwright.rules.Relief;

/** Every crossing into a penalty area that a shot on this hole can make, with the cells where the Rules allow a drop. */
final class ReliefField {
    private static final int DIRECTIONS = 80;
    private static final int SECTORS_A_DIRECTION = TreeFan.SECTORS / DIRECTIONS;
    private static final double STEP_CELLS = 0.5;
    private static final int[] NOT_ASKED = {};

    private final CourseMap map;
    private final HoleRaster raster;
    /** By cell, twice: number of the crossing into a yellow and into a red area, or -1 while it is not known. */
    private final int[] known;

    private final List<int[]> drops = new ArrayList<>();
    private final List<Integer> cells = new ArrayList<>();
    private final List<Surface> areas = new ArrayList<>();
    /** By cell of a penalty area: number + 1 of the crossing, for each direction of flight, 0 while it is not
     * known; {@link #NOT_ASKED} for a cell that no shot has come to. */
    private final int[][] crossings;

    ReliefField(CourseMap map, HoleRaster raster) {
        this.map = map;
        this.raster = raster;
        known = new int[2 * raster.cells()];
        Arrays.fill(known, -1);
        crossings = new int[raster.cells()][];
        Arrays.fill(crossings, NOT_ASKED);
    }

    /** Number of the crossing by which a ball flying or running in a direction came to a cell of a penalty area. */
    int crossing(int cell, int sector) {
        int[] known = crossings[cell];
        if (known == NOT_ASKED) {
            known = new int[DIRECTIONS];
            crossings[cell] = known;
        }
        int direction = sector / SECTORS_A_DIRECTION;
        if (known[direction] == 0) {
            known[direction] = 1 + traceBack(cell, 2 * Math.PI * (direction + 0.5) / DIRECTIONS);
        }
        return known[direction] - 1;
    }

    private int traceBack(int cell, double bearing) {
        double x = raster.columnOf(cell) + 0.5;
        double y = raster.rowOf(cell) + 0.5;
        int at = cell;
        while (raster.isPenaltyArea(at) && raster.covers(x, y)) {
            x -= Math.sin(bearing) * STEP_CELLS;
            y -= Math.cos(bearing) * STEP_CELLS;
            at = raster.cell(x, y);
        }
        return record(at, raster.surface(cell));
    }

    /** Number of the crossing at this cell, last outside the area; new crossings get the next number. */
    private int record(int cell, Surface area) {
        int key = 2 * cell + (area == Surface.RED_PENALTY_AREA ? 1 : 0);
        if (known[key] < 0) {
            drops.add(Relief.fromPenaltyArea(map, raster.centre(cell), area).stream()
                    .filter(o -> raster.isDrop(o.place()))
                    .mapToInt(o -> raster.cell(o.place()))
                    .distinct()
                    .toArray());
            areas.add(area);
            cells.add(cell);
            known[key] = drops.size() - 1;
        }
        return known[key];
    }

    int size() {
        return drops.size();
    }

    /** The last cell outside the area. */
    int cell(int record) {
        return cells.get(record);
    }

    /** The kind of penalty area that was entered. */
    Surface area(int record) {
        return areas.get(record);
    }

    /** Cells of the drops of a crossing, each for one penalty stroke; may be empty. */
    int[] drops(int record) {
        return drops.get(record);
    }
}
