package loopwright.strategy;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import loopwright.course.CourseMap;
import loopwright.course.LocalRule;
import loopwright.course.Tree;
import loopwright.course.TreeCover;
import loopwright.geo.Box;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.Surface;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;

/**
 * A hole as square cells of one yard: surface, chance that a ball is not found, and trees, each exact for the cell's
 * centre. Hot loops address a place by its cell coordinates (column and row as doubles, cell (0, 0) from 0 to 1);
 * outside the raster the nearest edge cell answers.
 *
 * <p>On the green round the hole a yard is too coarse for where a ball rests: snapping a chip to it costs 0.03 strokes.
 * There {@link #restCell} answers with fine cells, numbered from {@link #cells} to {@link #restCells}.
 */
final class HoleRaster {
    static final double CELL_METRES = Distance.METRES_PER_YARD;
    /** Longest distance that is kept, cells. */
    private static final int FAR = 120;

    /** Fine cells stand for this many cells either side of the hole's. */
    private static final int FINE_REACH = 6;
    /** Fine cells to the side of a cell: with 6 the snapping adds 1 % to the variance of a chip from 7 yd. */
    private static final int FINE = 6;

    private static final int FINE_COLUMNS = (2 * FINE_REACH + 1) * FINE;

    private static final int[][] NEIGHBOURS = {{-1, -1}, {0, -1}, {1, -1}, {-1, 0}, {1, 0}, {-1, 1}, {0, 1}, {1, 1}};

    final double originX;
    final double originY;
    final int columns;
    final int rows;
    /** True if a ball in the fairway may be placed (Model Local Rule E-3). */
    final boolean preferredLies;

    private final Surface[] surfaces = Surface.values();
    private final byte[] surface;
    private final float[] notFound;
    /** Trees over a cell, or null. */
    private final @Nullable TreeCover[] trees;
    /** See {@link #sameTrees(int)}. */
    private final byte[] sameTrees;

    private final short[] ground;
    /** The south-western cell with fine cells. */
    private final int fineColumn;

    private final int fineRow;

    HoleRaster(CourseMap map, Box box) {
        originX = box.minX();
        originY = box.minY();
        columns = (int) Math.ceil(box.width() / CELL_METRES);
        rows = (int) Math.ceil(box.height() / CELL_METRES);
        preferredLies = map.hasLocalRule(LocalRule.PREFERRED_LIES);
        surface = new byte[columns * rows];
        notFound = new float[columns * rows];
        trees = new TreeCover[columns * rows];
        Arrays.fill(surface, (byte) Surface.ROUGH.ordinal());
        List<CourseMap.SurfaceLayer> layers = map.surfaceLayers();
        for (int i = layers.size() - 1; i >= 0; i--) {
            paint(layers.get(i));
        }
        plantTrees(map.course().trees());
        sameTrees = chessboardDistance((cell, beside) -> Objects.equals(trees[cell], trees[beside]) ? FAR : 1);
        for (int i = 0; i < cells(); i++) {
            sameTrees[i] = (byte) (trees[i] == null ? sameTrees[i] : -sameTrees[i]);
        }
        byte[] sameSurface = chessboardDistance((cell, beside) -> surface[cell] != surface[beside] ? 1 : FAR);
        Place hole = map.hole().holeLocation();
        fineColumn = columnOf(cell(hole)) - FINE_REACH;
        fineRow = rowOf(cell(hole)) - FINE_REACH;
        ground = new short[restCells()];
        Arrays.fill(ground, Ground.of(Surface.GREEN, false, false, 1));
        for (int i = 0; i < cells(); i++) {
            boolean mayReplay = notFound[i] > 0 || surface(i) == Surface.OUT_OF_BOUNDS;
            ground[i] = Ground.of(surface(i), mayReplay, hasFineCells(i), sameSurface[i]);
        }
    }

    private boolean hasFineCells(int cell) {
        int c = columnOf(cell) - fineColumn;
        int r = rowOf(cell) - fineRow;
        boolean near = c >= 0 && r >= 0 && c <= 2 * FINE_REACH && r <= 2 * FINE_REACH;
        return near && surface(cell) == Surface.GREEN;
    }

    int cells() {
        return columns * rows;
    }

    /** Cells a ball can rest in, the fine ones included. */
    int restCells() {
        return cells() + FINE_COLUMNS * FINE_COLUMNS;
    }

    private boolean isFine(int cell) {
        return cell >= cells();
    }

    /** Where a ball rests at a place in a cell: a fine cell on the green round the hole, elsewhere the cell itself. */
    int restCell(int cell, double column, double row) {
        if (!Ground.hasFineCells(ground[cell])) {
            return cell;
        }
        int c = (int) ((column - fineColumn) * FINE);
        int r = (int) ((row - fineRow) * FINE);
        return cells() + r * FINE_COLUMNS + c;
    }

    /** Length of a side of a cell, in cells: 1, or less for a fine one. */
    double side(int cell) {
        return isFine(cell) ? 1.0 / FINE : 1;
    }

    /** Western edge of a cell in cell coordinates. */
    double west(int cell) {
        return isFine(cell) ? fineColumn + side(cell) * ((cell - cells()) % FINE_COLUMNS) : columnOf(cell);
    }

    /** Southern edge of a cell in cell coordinates. */
    double south(int cell) {
        if (!isFine(cell)) {
            return rowOf(cell);
        }
        int fine = (cell - cells()) / FINE_COLUMNS;
        return fineRow + side(cell) * fine;
    }

    double column(Place place) {
        return (place.x() - originX) / CELL_METRES;
    }

    double row(Place place) {
        return (place.y() - originY) / CELL_METRES;
    }

    Place place(double column, double row) {
        return new Place(originX + column * CELL_METRES, originY + row * CELL_METRES);
    }

    /** The centre of a cell. */
    Place centre(int cell) {
        double half = side(cell) / 2;
        return place(west(cell) + half, south(cell) + half);
    }

    int columnOf(int cell) {
        return cell % columns;
    }

    int rowOf(int cell) {
        return cell / columns;
    }

    /** The cell of a place in cell coordinates, clamped to the raster. */
    int cell(double column, double row) {
        return heldRow(row) * columns + heldColumn(column);
    }

    /** The column of cells that a place lies in, clamped to the raster. */
    int heldColumn(double column) {
        return column < 0 ? 0 : Math.min((int) column, columns - 1);
    }

    int heldRow(double row) {
        return row < 0 ? 0 : Math.min((int) row, rows - 1);
    }

    int cell(Place place) {
        return cell(column(place), row(place));
    }

    Surface surface(int cell) {
        return isFine(cell) ? Surface.GREEN : surfaces[surface[cell]];
    }

    /** Everything a running ball needs of a cell in one number; read it with the functions of {@link Ground}. */
    short ground(int cell) {
        return ground[cell];
    }

    /** Readers of {@link #ground}. */
    static final class Ground {
        private static final int SURFACE = 15;
        private static final int PENALTY_AREA = 16;
        private static final int MAY_REPLAY = 32;
        private static final int FINE_CELLS = 64;

        private Ground() {}

        static int surfaceIndex(short ground) {
            return ground & SURFACE;
        }

        static boolean isPenaltyArea(short ground) {
            return (ground & PENALTY_AREA) != 0;
        }

        /** True if a ball here may be lost or is out of bounds. */
        static boolean mayReplay(short ground) {
            return (ground & MAY_REPLAY) != 0;
        }

        /** True where fine cells tell better where a ball rests. */
        static boolean hasFineCells(short ground) {
            return (ground & FINE_CELLS) != 0;
        }

        /** Every cell nearer than this along any ray, in cells, has the same surface; 1 or more. */
        static int sameSurfaceDistance(short ground) {
            return ground >> 8;
        }

        static short of(Surface surface, boolean mayReplay, boolean fine, int sameSurfaceDistance) {
            return (short) (surface.ordinal()
                    | (surface.isPenaltyArea() ? PENALTY_AREA : 0)
                    | (mayReplay ? MAY_REPLAY : 0)
                    | (fine ? FINE_CELLS : 0)
                    | sameSurfaceDistance << 8);
        }
    }

    /** True if a ball dropped here lies on the raster, in play. */
    boolean isDrop(Place place) {
        return covers(column(place), row(place)) && surface(cell(place)).isPlayable();
    }

    boolean covers(double column, double row) {
        return column >= 0 && row >= 0 && column < columns && row < rows;
    }

    boolean isPenaltyArea(int cell) {
        return Ground.isPenaltyArea(ground[cell]);
    }

    float notFound(int cell) {
        return isFine(cell) ? 0 : notFound[cell];
    }

    /** Trees over a cell, or null. */
    @Nullable
    TreeCover trees(int cell) {
        return trees[cell];
    }

    /** Every cell nearer than this along any ray, in cells, has no trees; where below zero, the same trees. */
    int sameTrees(int cell) {
        return sameTrees[cell];
    }

    private void paint(CourseMap.SurfaceLayer layer) {
        Box box = layer.region().box();
        if (layer.outside()) {
            boolean[] inside = new boolean[cells()];
            fill(layer.region(), 0, rows - 1, (from, to) -> Arrays.fill(inside, from, to, true));
            for (int i = 0; i < inside.length; i++) {
                if (!inside[i]) {
                    set(i, layer);
                }
            }
            return;
        }
        int first = Math.max(0, (int) Math.floor((box.minY() - originY) / CELL_METRES));
        int last = Math.min(rows - 1, (int) Math.floor((box.maxY() - originY) / CELL_METRES));
        fill(layer.region(), first, last, (from, to) -> {
            for (int i = from; i < to; i++) {
                set(i, layer);
            }
        });
    }

    private void set(int cell, CourseMap.SurfaceLayer layer) {
        surface[cell] = (byte) layer.surface().ordinal();
        notFound[cell] = (float) layer.notFoundChance();
        trees[cell] = layer.trees();
    }

    private interface Span {
        void cover(int fromCell, int toCell);
    }

    /** Calls back for every run of cells whose centres lie in the region: even-odd rule along each row. */
    private void fill(Region region, int firstRow, int lastRow, Span span) {
        List<List<Place>> rings =
                region.polygons().stream().flatMap(List::stream).toList();
        double[] crossings = new double[64];
        for (int r = firstRow; r <= lastRow; r++) {
            double y = originY + (r + 0.5) * CELL_METRES;
            int n = 0;
            for (List<Place> ring : rings) {
                for (int i = 1; i < ring.size(); i++) {
                    Place a = ring.get(i - 1);
                    Place b = ring.get(i);
                    if ((a.y() <= y) != (b.y() <= y)) {
                        if (n == crossings.length) {
                            crossings = Arrays.copyOf(crossings, 2 * n);
                        }
                        crossings[n++] = a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
                    }
                }
            }
            Arrays.sort(crossings, 0, n);
            for (int i = 0; i + 1 < n; i += 2) {
                int from = Math.max(0, (int) Math.ceil((crossings[i] - originX) / CELL_METRES - 0.5));
                int to = Math.min(columns, (int) Math.ceil((crossings[i + 1] - originX) / CELL_METRES - 0.5));
                if (from < to) {
                    span.cover(r * columns + from, r * columns + to);
                }
            }
        }
    }

    private void plantTrees(List<Tree> single) {
        for (Tree tree : single) {
            TreeCover cover = tree.cover();
            double reach = tree.crownRadiusMetres() / CELL_METRES;
            double c0 = column(tree.place());
            double r0 = row(tree.place());
            for (int r = (int) Math.max(0, r0 - reach); r <= Math.min(rows - 1, r0 + reach); r++) {
                for (int c = (int) Math.max(0, c0 - reach); c <= Math.min(columns - 1, c0 + reach); c++) {
                    if (Math.hypot(c + 0.5 - c0, r + 0.5 - r0) <= reach) {
                        int i = r * columns + c;
                        trees[i] = TreeCover.higher(trees[i], cover);
                    }
                }
            }
        }
    }

    /** What a cell starts with, given itself and one neighbour. */
    private interface Start {
        int of(int cell, int beside);
    }

    /** Chessboard distances, a lower bound of the way along any ray, from the cells that start near: in two passes. */
    private byte[] chessboardDistance(Start start) {
        byte[] distance = new byte[cells()];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                int i = r * columns + c;
                int least = FAR;
                for (int[] d : NEIGHBOURS) {
                    if (c + d[0] >= 0 && c + d[0] < columns && r + d[1] >= 0 && r + d[1] < rows) {
                        least = Math.min(least, start.of(i, i + d[1] * columns + d[0]));
                    }
                }
                distance[i] = (byte) least;
            }
        }
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                relax(distance, r, c, -1);
            }
        }
        for (int r = rows - 1; r >= 0; r--) {
            for (int c = columns - 1; c >= 0; c--) {
                relax(distance, r, c, 1);
            }
        }
        return distance;
    }

    private void relax(byte[] distance, int r, int c, int side) {
        int i = r * columns + c;
        int best = distance[i];
        best = Math.min(best, neighbour(distance, r, c + side));
        best = Math.min(best, neighbour(distance, r + side, c - 1));
        best = Math.min(best, neighbour(distance, r + side, c));
        best = Math.min(best, neighbour(distance, r + side, c + 1));
        distance[i] = (byte) best;
    }

    private int neighbour(byte[] distance, int r, int c) {
        return r < 0 || c < 0 || r >= rows || c >= columns ? FAR : distance[r * columns + c] + 1;
    }
}
