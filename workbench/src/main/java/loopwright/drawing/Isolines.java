package loopwright.drawing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lines of equal value through a grid, by marching squares: on each cell the line is straight between points found by
 * linear interpolation on the cell's edges; a saddle is decided by the mean of its four corners. Cells with an unknown
 * corner (NaN) carry no line.
 */
public final class Isolines {
    private final double[][] values;
    private final double level;
    private final Map<Long, List<Long>> neighbours = new HashMap<>();
    private final List<Long> order = new ArrayList<>();

    private Isolines(double[][] values, double level) {
        this.values = values;
        this.level = level;
    }

    /** Traces in grid units (x = column, y = row) of one level through {@code values[row][column]}. */
    public static List<Trace> of(double[][] values, double level) {
        Isolines lines = new Isolines(values, level);
        for (int r = 0; r + 1 < values.length; r++) {
            for (int c = 0; c + 1 < values[r].length; c++) {
                lines.cell(r, c);
            }
        }
        return lines.join();
    }

    private void cell(int r, int c) {
        double[] corner = {values[r][c], values[r][c + 1], values[r + 1][c + 1], values[r + 1][c]};
        int above = 0;
        boolean known = true;
        for (double v : corner) {
            above += v >= level ? 1 : 0;
            known &= !Double.isNaN(v);
        }
        if (!known || above == 0 || above == corner.length) {
            return;
        }
        long[] edge = {edge(r, c, 0), edge(r, c + 1, 1), edge(r + 1, c, 0), edge(r, c, 1)};
        List<Long> crossed = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            if (corner[i] >= level != corner[(i + 1) % 4] >= level) {
                crossed.add(edge[i]);
            }
        }
        if (crossed.size() == 2) {
            link(crossed.get(0), crossed.get(1));
        } else if (crossed.size() == 4) {
            boolean middleIn = (corner[0] + corner[1] + corner[2] + corner[3]) / 4 >= level;
            boolean firstIn = corner[0] >= level;
            int shift = middleIn == firstIn ? 0 : 3;
            link(edge[shift % 4], edge[(shift + 1) % 4]);
            link(edge[(shift + 2) % 4], edge[(shift + 3) % 4]);
        }
    }

    /** Edge to the right of (r, c) if {@code kind} is 0, downward if 1. */
    private long edge(int r, int c, int kind) {
        return (((long) r * (values[0].length + 1)) + c) * 2 + kind;
    }

    private void link(long a, long b) {
        neighbours.computeIfAbsent(a, this::first).add(b);
        neighbours.computeIfAbsent(b, this::first).add(a);
    }

    private List<Long> first(long edge) {
        order.add(edge);
        return new ArrayList<>(2);
    }

    private List<Trace> join() {
        List<Trace> out = new ArrayList<>();
        for (long start : order) {
            if (neighbours.containsKey(start)) {
                out.add(follow(start));
            }
        }
        return out;
    }

    private Trace follow(long start) {
        Deque<Long> path = new ArrayDeque<>();
        path.add(start);
        List<Long> both = removed(start);
        boolean closed = false;
        for (int way = 0; way < both.size() && !closed; way++) {
            long at = both.get(way);
            long from = start;
            while (true) {
                if (at == start) {
                    closed = true;
                    break;
                }
                if (way == 0) {
                    path.addLast(at);
                } else {
                    path.addFirst(at);
                }
                long came = from;
                from = at;
                List<Long> next = removed(at);
                if (next.size() < 2) {
                    break;
                }
                at = next.get(0) == came ? next.get(1) : next.get(0);
            }
        }
        return new Trace(path.stream().map(this::point).toList(), closed);
    }

    private List<Long> removed(long edge) {
        List<Long> found = neighbours.remove(edge);
        return found == null ? List.of() : found;
    }

    private Point point(long edge) {
        int kind = (int) (edge % 2);
        int width = values[0].length + 1;
        int c = (int) (edge / 2 % width);
        int r = (int) (edge / 2 / width);
        double a = values[r][c];
        double b = kind == 0 ? values[r][c + 1] : values[r + 1][c];
        double t = b == a ? 0.5 : (level - a) / (b - a);
        return kind == 0 ? new Point(c + t, r) : new Point(c, r + t);
    }
}
