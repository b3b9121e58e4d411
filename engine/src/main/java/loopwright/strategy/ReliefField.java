package loopwright.strategy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.course.CourseMap;
import loopwright.ground.Surface;
import loopwright.rules.FairwayDrop;
import loopwright.rules.Relief;

/**
 * Every crossing into a penalty area that a shot on this hole can make, with the cells where the Rules allow a drop.
 * Where Model Local Rule E-5 is in force, balls that are lost or out of bounds are crossings of their own.
 */
final class ReliefField {
    private static final int DIRECTIONS = 80;
    private static final int SECTORS_A_DIRECTION = TreeFan.SECTORS / DIRECTIONS;
    private static final double STEP_CELLS = 0.5;
    private static final int[] NOT_ASKED = {};

    private final CourseMap map;
    private final HoleRaster raster;
    private final Optional<FairwayDrop> fairwayDrop;
    /** Number of the crossing at a cell by {@link #key}. */
    private final Map<Integer, Integer> known = new HashMap<>();

    private final List<int[]> drops = new ArrayList<>();
    private final List<Integer> penalties = new ArrayList<>();
    private final List<Integer> cells = new ArrayList<>();
    private final List<Surface> areas = new ArrayList<>();
    /** By cell of a penalty area: number + 1 of the crossing, for each direction of flight, 0 while it is not
     * known; {@link #NOT_ASKED} for a cell that no shot has come to. */
    private final int[][] crossings;

    ReliefField(CourseMap map, HoleRaster raster) {
        this.map = map;
        this.raster = raster;
        fairwayDrop = FairwayDrop.find(map);
        crossings = new int[raster.cells()][];
        Arrays.fill(crossings, NOT_ASKED);
    }

    /** True if a ball lost or out of bounds may be dropped beside the fairway for two strokes. */
    boolean dropsByTheFairway() {
        return fairwayDrop.isPresent();
    }

    /** Number of the crossing that stands for a ball lost in a cell; only where it may be dropped by the fairway. */
    int lost(int cell) {
        return record(cell, raster.surface(cell), true);
    }

    /**
     * Number of the crossing by which a ball flying or running in a direction came to a cell of a penalty area or out
     * of bounds.
     */
    int crossing(int cell, int sector) {
        int direction = sector / SECTORS_A_DIRECTION;
        int[] known = crossings[cell];
        int number = known == NOT_ASKED ? 0 : known[direction];
        return (number > 0 ? number : ask(cell, direction)) - 1;
    }

    /** Several days of one hole are looked at side by side: only one at a time finds new crossings. */
    private synchronized int ask(int cell, int direction) {
        if (crossings[cell] == NOT_ASKED) {
            crossings[cell] = new int[DIRECTIONS];
        }
        int[] known = crossings[cell];
        if (known[direction] == 0) {
            known[direction] = 1 + traceBack(cell, 2 * Math.PI * (direction + 0.5) / DIRECTIONS);
        }
        return known[direction];
    }

    private int traceBack(int cell, double bearing) {
        double x = raster.columnOf(cell) + 0.5;
        double y = raster.rowOf(cell) + 0.5;
        int at = cell;
        double east = Math.sin(bearing);
        double north = Math.cos(bearing);
        boolean penaltyArea = raster.isPenaltyArea(cell);
        while ((penaltyArea ? raster.isPenaltyArea(at) : raster.surface(at) == Surface.OUT_OF_BOUNDS)
                && raster.covers(x, y)) {
            double step = Math.max(STEP_CELLS, HoleRaster.Ground.sameSurfaceDistance(raster.ground(at)) - 1);
            x -= east * step;
            y -= north * step;
            at = raster.cell(x, y);
        }
        return record(at, raster.surface(cell), !penaltyArea);
    }

    /** Number of the crossing at this cell, last outside the area; new crossings get the next number. */
    private synchronized int record(int cell, Surface area, boolean gone) {
        return known.computeIfAbsent(key(cell, area, gone), k -> {
            List<Relief.Option> options = gone
                    ? fairwayDrop.orElseThrow().from(raster.centre(cell))
                    : Relief.fromPenaltyArea(map, raster.centre(cell), area);
            drops.add(options.stream()
                    .filter(o -> raster.isDrop(o.place()))
                    .mapToInt(o -> raster.cell(o.place()))
                    .distinct()
                    .toArray());
            penalties.add(gone ? 2 : 1);
            areas.add(area);
            cells.add(cell);
            return drops.size() - 1;
        });
    }

    /** What becomes of a ball depends on the cell and on these three kinds of trouble. */
    private static int key(int cell, Surface area, boolean gone) {
        return 3 * cell + (gone ? 2 : area == Surface.RED_PENALTY_AREA ? 1 : 0);
    }

    synchronized int size() {
        return drops.size();
    }

    /** The last cell outside the area. */
    synchronized int cell(int record) {
        return cells.get(record);
    }

    /** Penalty strokes of every drop of a crossing. */
    synchronized int penalty(int record) {
        return penalties.get(record);
    }

    /** The kind of penalty area that was entered, or where the ball was lost. */
    synchronized Surface area(int record) {
        return areas.get(record);
    }

    /** Cells of the drops of a crossing; may be empty. */
    synchronized int[] drops(int record) {
        return drops.get(record);
    }
}
