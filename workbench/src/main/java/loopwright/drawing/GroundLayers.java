package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Tree;
import loopwright.geo.Box;

/** Draws the ground of a course: areas in the order in which they cover each other, then trees, then the border. */
public final class GroundLayers {
    /** From the bottom up. Kinds that decide the surface stand as in {@link AreaKind}, seen from below. */
    private static final List<AreaKind> UPWARD = List.of(
            AreaKind.PRACTICE,
            AreaKind.ROUGH,
            AreaKind.DEEP_ROUGH,
            AreaKind.WOODS,
            AreaKind.WASTE_AREA,
            AreaKind.FAIRWAY,
            AreaKind.OUT_OF_BOUNDS,
            AreaKind.RED_PENALTY_AREA,
            AreaKind.YELLOW_PENALTY_AREA,
            AreaKind.ROAD,
            AreaKind.PATH,
            AreaKind.TEE,
            AreaKind.BUNKER,
            AreaKind.GREEN,
            AreaKind.BUILDING);

    private final SheetView view;
    private final Lies lies;
    private final Extent window;

    public GroundLayers(SheetView view, Extent window, double detail) {
        this.view = view;
        this.window = window;
        this.lies = new Lies(detail, window.grown(12));
    }

    public List<Mark> marks(Course course) {
        List<Mark> out = new ArrayList<>();
        // Generous: borders and crowns reach a little beyond their areas.
        Box shown = view.groundOf(window.grown(20));
        for (AreaKind kind : UPWARD) {
            for (Area area : course.areas()) {
                if (area.kind() == kind && area.region().box().intersects(shown)) {
                    out.addAll(lies.marks(kind, view.toSheet(area.region())));
                }
            }
        }
        out.addAll(trees(course.trees()));
        course.boundary().ifPresent(b -> view.toSheet(b).forEach(r -> out.addAll(lies.border(r, true))));
        return out;
    }

    private List<Mark> trees(List<Tree> trees) {
        List<Point> centres = new ArrayList<>();
        List<Double> radii = new ArrayList<>();
        for (Tree tree : trees) {
            double radius = Math.max(1.4, tree.crownRadiusMetres() * view.pointsPerMetre());
            Point centre = view.toSheet(tree.place());
            if (window.grown(radius).contains(centre)) {
                centres.add(centre);
                radii.add(radius);
            }
        }
        return lies.crowns(centres, radii);
    }
}
