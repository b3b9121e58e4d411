package loopwright.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReferenceArray;
import loopwright.geo.Box;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.Surface;
import org.jspecify.annotations.Nullable;

/**
 * The exact surface at any place of one hole: the topmost area by the order of {@link AreaKind}, else rough inside the
 * boundary and out of bounds beyond it. Greens of other holes count as fairway (Rule 13.1f gives free relief from a
 * wrong green; the shot from beside it is much the same).
 *
 * <p>Answers come from the polygons themselves. Where the hole is played, a grid of 4 m cells, filled on first use, only
 * remembers which areas have an edge near a cell and which covers it whole, so that most answers need no polygon test.
 */
public final class CourseMap {
    private static final double CELL_METRES = 4;
    /** The grid reaches so far beyond the hole: farther than most balls go, and small where a map holds a whole bay. */
    private static final double REACH_METRES = 400;

    private static final double HALF_DIAGONAL = CELL_METRES / 2 * Math.sqrt(2) + 1e-6;

    private final Course course;
    private final Hole hole;
    private final List<Layer> layers;
    private final Box box;
    private final int columns;
    private final int rows;
    private final AtomicReferenceArray<@Nullable Cell> cells;
    /** Those that can stand over a cell of the grid. */
    private final List<Tree> treesOfGrid;

    /** One area with the surface it gives on this hole; {@code outside}: the surface lies beyond the region. */
    private record Layer(
            Region region, boolean outside, Surface surface, double notFoundChance, AreaSurvey survey, Box nearBox) {
        Layer(Region region, boolean outside, Surface surface, double notFoundChance, AreaSurvey survey) {
            this(region, outside, surface, notFoundChance, survey, region.box().grown(HALF_DIAGONAL));
        }

        boolean covers(double x, double y) {
            return region.contains(x, y) != outside;
        }

        /** The trees that stand all over it, or null. */
        @Nullable
        TreeCover trees() {
            return surface == Surface.WOODS ? survey.trees().orElse(TreeCover.WOODS_DEFAULT) : null;
        }
    }

    /** Areas with an edge near the cell, topmost first, then what covers the cell below them; and trees near it. */
    private static final class Cell {
        final Layer[] near;
        final Layer below;
        final Tree[] trees;

        Cell(List<Layer> near, Layer below, List<Tree> trees) {
            this.near = near.toArray(Layer[]::new);
            this.below = below;
            this.trees = trees.toArray(Tree[]::new);
        }
    }

    private static final Layer ROUGH =
            new Layer(Region.circle(new Place(0, 0), 1), false, Surface.ROUGH, 0, AreaSurvey.NOTHING);

    public CourseMap(Course course, Hole hole) {
        this.course = course;
        this.hole = hole;
        this.layers = layersOf(course, hole);
        this.box = Box.around(hole.line().places()).union(hole.green().box()).grown(REACH_METRES);
        this.columns = (int) Math.ceil(box.width() / CELL_METRES);
        this.rows = (int) Math.ceil(box.height() / CELL_METRES);
        this.cells = new AtomicReferenceArray<>(columns * rows);
        this.treesOfGrid = course.trees().stream()
                .filter(t -> box.grown(t.crownRadiusMetres() + 2 * HALF_DIAGONAL)
                        .contains(t.place().x(), t.place().y()))
                .toList();
    }

    private static List<Layer> layersOf(Course course, Hole hole) {
        List<Layer> out = new ArrayList<>();
        course.boundary().ifPresent(b -> out.add(new Layer(b, true, Surface.OUT_OF_BOUNDS, 0, AreaSurvey.NOTHING)));
        out.add(new Layer(hole.green(), false, Surface.GREEN, 0, AreaSurvey.NOTHING));
        course.areas().stream()
                .filter(a -> a.kind().surface() != null)
                .sorted(Comparator.comparing(Area::kind))
                .map(a -> new Layer(a.region(), false, surfaceHere(a), a.notFoundChance(), a.survey()))
                .forEach(out::add);
        return List.copyOf(out);
    }

    private static Surface surfaceHere(Area area) {
        Surface surface = Objects.requireNonNull(area.kind().surface());
        return surface == Surface.GREEN ? Surface.FAIRWAY : surface;
    }

    public Course course() {
        return course;
    }

    public Hole hole() {
        return hole;
    }

    public Surface surfaceAt(double x, double y) {
        return layerAt(x, y).surface;
    }

    public Surface surfaceAt(Place place) {
        return surfaceAt(place.x(), place.y());
    }

    /** Chance, 0 to 1, that a ball at rest here is not found within three minutes. */
    public double notFoundChanceAt(double x, double y) {
        return layerAt(x, y).notFoundChance;
    }

    /** Trees above this place, or null where none stand; where crowns overlap, the highest. */
    public @Nullable TreeCover findTreesAt(double x, double y) {
        Cell cell = cellAt(x, y);
        TreeCover highest = surfaceIn(cell, x, y).trees();
        for (Tree tree : cell.trees) {
            boolean over = Math.hypot(tree.place().x() - x, tree.place().y() - y) <= tree.crownRadiusMetres();
            highest = over ? TreeCover.higher(highest, tree.cover()) : highest;
        }
        return highest;
    }

    /** What was measured of the bunker at this place; nothing where there is none or nobody has measured it. */
    public AreaSurvey bunkerSurveyAt(Place place) {
        Layer here = layerAt(place.x(), place.y());
        return here.surface == Surface.BUNKER ? here.survey : AreaSurvey.NOTHING;
    }

    /** True if a local rule is in force on this hole. */
    public boolean hasLocalRule(LocalRule rule) {
        return hole.survey().notes().localRules().contains(rule);
    }

    /** Areas that give a surface on this hole, topmost first, for drawing into a raster. */
    public List<SurfaceLayer> surfaceLayers() {
        return layers.stream()
                .map(l -> new SurfaceLayer(l.region, l.outside, l.surface, l.notFoundChance, l.trees()))
                .toList();
    }

    /**
     * A region and the surface it gives where nothing above it covers it (or, {@code outside}, all beyond it), and the
     * trees that stand all over it.
     */
    public record SurfaceLayer(
            Region region,
            boolean outside,
            Surface surface,
            double notFoundChance,
            @Nullable TreeCover trees) {}

    private Layer layerAt(double x, double y) {
        return surfaceIn(cellAt(x, y), x, y);
    }

    private static Layer surfaceIn(Cell cell, double x, double y) {
        for (Layer layer : cell.near) {
            if (layer.covers(x, y)) {
                return layer;
            }
        }
        return cell.below;
    }

    /** The cell of a place: remembered in the grid, looked at anew beyond it. */
    private Cell cellAt(double x, double y) {
        int column = (int) Math.floor((x - box.minX()) / CELL_METRES);
        int row = (int) Math.floor((y - box.minY()) / CELL_METRES);
        if (column < 0 || row < 0 || column >= columns || row >= rows) {
            return fill(column, row, course.trees());
        }
        Cell cell = cells.get(row * columns + column);
        if (cell == null) {
            cell = fill(column, row, treesOfGrid);
            cells.set(row * columns + column, cell);
        }
        return cell;
    }

    private Cell fill(int column, int row, List<Tree> trees) {
        Place centre = new Place(box.minX() + (column + 0.5) * CELL_METRES, box.minY() + (row + 0.5) * CELL_METRES);
        List<Tree> over = trees.stream()
                .filter(t -> t.place().distanceTo(centre) <= t.crownRadiusMetres() + HALF_DIAGONAL)
                .toList();
        List<Layer> near = new ArrayList<>();
        for (Layer layer : layers) {
            boolean mayBeNear = layer.nearBox.contains(centre.x(), centre.y());
            if (mayBeNear && layer.region.distanceToEdge(centre) <= HALF_DIAGONAL) {
                near.add(layer);
            } else if (layer.covers(centre.x(), centre.y())) {
                return new Cell(near, layer, over);
            }
        }
        return new Cell(near, ROUGH, over);
    }
}
