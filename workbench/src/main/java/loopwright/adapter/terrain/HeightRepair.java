package loopwright.adapter.terrain;

import java.nio.file.Path;
import java.util.ArrayDeque;
import loopwright.action.UserFault;

/** Gives every cell a height, kept to the centimetre; cells without one take that of the nearest cell that has one. */
final class HeightRepair {
    /** Nothing on land lies beyond these; larger values are a missing-data mark that the file does not declare. */
    private static final double LOWEST_METRES = -500;

    private static final double HIGHEST_METRES = 9_000;

    private HeightRepair() {}

    static void fillMissing(float[] heights, int columns, Path file, TerrainOddities oddities) {
        ArrayDeque<Integer> edge = new ArrayDeque<>();
        int zeros = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < heights.length; i++) {
            if (!(heights[i] >= LOWEST_METRES && heights[i] <= HIGHEST_METRES)) {
                heights[i] = Float.NaN;
                continue;
            }
            heights[i] = Math.round(heights[i] * 100) / 100f;
            zeros += heights[i] == 0 ? 1 : 0;
            highest = Math.max(highest, heights[i]);
            edge.add(i);
        }
        if (edge.isEmpty()) {
            throw new UserFault(file + " has no height at all under the course; choose another raster.");
        }
        oddities.missing(heights.length - edge.size(), heights.length);
        if (zeros > 0 && highest > 5) {
            oddities.zeros(zeros, heights.length);
        }
        spread(heights, columns, edge);
    }

    private static void spread(float[] heights, int columns, ArrayDeque<Integer> edge) {
        while (!edge.isEmpty()) {
            int at = edge.removeFirst();
            int column = at % columns;
            put(heights, at, column > 0 ? at - 1 : -1, edge);
            put(heights, at, column < columns - 1 ? at + 1 : -1, edge);
            put(heights, at, at - columns, edge);
            put(heights, at, at + columns, edge);
        }
    }

    private static void put(float[] heights, int from, int to, ArrayDeque<Integer> edge) {
        if (to >= 0 && to < heights.length && Float.isNaN(heights[to])) {
            heights[to] = heights[from];
            edge.add(to);
        }
    }
}
