package loopwright.strategy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.course.CourseMap;
import loopwright.ground.Surface;
import loopwright.rules.Relief;

/** Every crossing into a penalty area that a shot on this hole can make, with the cells where the Rules allow a drop. */
final class ReliefField {
    private final CourseMap map;
    private final HoleRaster raster;
    private final Map<Long, Integer> known = new HashMap<>();
    private final List<int[]> drops = new ArrayList<>();

    ReliefField(CourseMap map, HoleRaster raster) {
        this.map = map;
        this.raster = raster;
    }

    /** Number of the crossing at this cell, last outside the area; new crossings get the next number. */
    synchronized int record(int cell, Surface area) {
        long key = (long) cell * 2 + (area == Surface.RED_PENALTY_AREA ? 1 : 0);
        return known.computeIfAbsent(key, k -> {
            drops.add(Relief.fromPenaltyArea(map, raster.centre(cell), area).stream()
                    .mapToInt(o -> raster.cell(o.place()))
                    .filter(c -> raster.surface(c).isPlayable())
                    .distinct()
                    .toArray());
            return drops.size() - 1;
        });
    }

    synchronized int size() {
        return drops.size();
    }

    /** Cells of the drops of a crossing, each for one penalty stroke; may be empty. */
    synchronized int[] drops(int record) {
        return drops.get(record);
    }
}
