package loopwright.rules;

import java.util.ArrayList;
import java.util.List;
import loopwright.course.AreaKind;
import loopwright.course.CourseMap;
import loopwright.course.LocalRule;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.Surface;

/**
 * Model Local Rule E-5: for two penalty strokes a ball lost or out of bounds is dropped beside the fairway instead of
 * being replayed. With r the distance from the hole to the ball reference point (where the ball was lost, or where it
 * last crossed the edge of the course), the fairway reference point is the place in the fairway of the hole nearest to
 * it that is no nearer the hole than r. The relief area lies between the lines from the hole through both points, and
 * two club-lengths outside either, in the general area and no nearer the hole than r; it reaches back without end.
 * Where no fairway lies that far from the hole, the tee stands in for it.
 *
 * <p>The area is stood for by places on it: rows at r and somewhat further back, from edge to edge.
 */
public final class FairwayDrop {
    /** As the rule stands in the Committee Procedures. */
    public static final String RULE = "MLR E-5";

    /** A fairway this near to the line of play is the hole's own. */
    private static final double OWN_FAIRWAY_METRES = 15;

    private static final double[] BACK_METRES = {0, 5, 15, 30};
    private static final double STEP_METRES = 4;
    /** Nearer the hole by less than this is a rounding, not a distance. */
    private static final double ROUNDING_METRES = 1e-6;

    private final CourseMap map;
    private final Place hole;
    private final List<Region> fairways;

    private FairwayDrop(CourseMap map) {
        this.map = map;
        hole = map.hole().holeLocation();
        fairways = map.course().areas().stream()
                .filter(a -> a.kind() == AreaKind.FAIRWAY && isOwn(a.region()))
                .map(a -> a.region())
                .toList();
    }

    private boolean isOwn(Region fairway) {
        double length = map.hole().line().lengthMetres();
        for (double s = 0; s <= length; s += OWN_FAIRWAY_METRES / 2) {
            if (fairway.distanceTo(map.hole().line().placeAt(s)) <= OWN_FAIRWAY_METRES) {
                return true;
            }
        }
        return false;
    }

    /** The drops of a hole; empty where the rule is not in force. */
    public static java.util.Optional<FairwayDrop> find(CourseMap map) {
        return map.hasLocalRule(LocalRule.DROP_INSTEAD_OF_STROKE_AND_DISTANCE)
                ? java.util.Optional.of(new FairwayDrop(map))
                : java.util.Optional.empty();
    }

    /** Where a ball that was lost or went out of bounds at the ball reference point may be dropped. */
    public List<Relief.Option> from(Place ballReference) {
        double r = hole.distanceTo(ballReference);
        double middle = hole.bearingTo(ballReference);
        double turn = turn(hole.bearingTo(fairwayReference(ballReference)) - middle);
        List<Relief.Option> out = new ArrayList<>();
        for (double back : BACK_METRES) {
            double distance = r + back + ROUNDING_METRES;
            double outside = Relief.TWO_CLUB_LENGTHS_METRES / distance;
            double from = Math.min(0, turn) - outside;
            double to = Math.max(0, turn) + outside;
            int steps = (int) Math.ceil((to - from) * distance / STEP_METRES);
            for (int i = 0; i <= steps; i++) {
                offer(hole.along(middle + from + (to - from) * i / steps, distance), out);
            }
        }
        return out;
    }

    private void offer(Place drop, List<Relief.Option> out) {
        if (isGeneralArea(map.surfaceAt(drop))) {
            out.add(new Relief.Option(Relief.Kind.BESIDE_THE_FAIRWAY, drop, 2, RULE));
        }
    }

    private static boolean isGeneralArea(Surface s) {
        return s.isPlayable() && s != Surface.BUNKER && s != Surface.GREEN && s != Surface.TEE;
    }

    /** The place in the hole's own fairway nearest to a place and no nearer the hole; else the tee. */
    Place fairwayReference(Place ballReference) {
        double r = hole.distanceTo(ballReference);
        Place best = map.hole().line().start();
        double least = Double.POSITIVE_INFINITY;
        for (Region fairway : fairways) {
            if (fairway.contains(ballReference)) {
                return ballReference;
            }
            for (Place p : edgePlaces(fairway, ballReference, r)) {
                if (p.distanceTo(ballReference) < least && hole.distanceTo(p) >= r - ROUNDING_METRES) {
                    least = p.distanceTo(ballReference);
                    best = p;
                }
            }
        }
        return best;
    }

    /** On every edge: its ends, the place nearest to the ball, and where the circle round the hole crosses it. */
    private List<Place> edgePlaces(Region fairway, Place ball, double r) {
        List<Place> out = new ArrayList<>();
        for (List<List<Place>> polygon : fairway.polygons()) {
            for (List<Place> ring : polygon) {
                for (int i = 1; i < ring.size(); i++) {
                    Place a = ring.get(i - 1);
                    Place b = ring.get(i);
                    out.add(b);
                    out.add(on(a, b, nearest(a, b, ball)));
                    addCircle(a, b, r, out);
                }
            }
        }
        return out;
    }

    private static Place on(Place a, Place b, double t) {
        double share = Math.max(0, Math.min(1, t));
        return new Place(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
    }

    /** The share of the way from a to b at which the line passes nearest to a place. */
    private static double nearest(Place a, Place b, Place place) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double squared = dx * dx + dy * dy;
        return squared == 0 ? 0 : ((place.x() - a.x()) * dx + (place.y() - a.y()) * dy) / squared;
    }

    private void addCircle(Place a, Place b, double r, List<Place> out) {
        double length = a.distanceTo(b);
        double foot = nearest(a, b, hole);
        Place at = new Place(a.x() + foot * (b.x() - a.x()), a.y() + foot * (b.y() - a.y()));
        double half = r * r - Math.pow(at.distanceTo(hole), 2);
        if (length == 0 || half < 0) {
            return;
        }
        out.add(on(a, b, foot - Math.sqrt(half) / length));
        out.add(on(a, b, foot + Math.sqrt(half) / length));
    }

    /** An angle within half a turn. */
    private static double turn(double angle) {
        return angle - 2 * Math.PI * Math.rint(angle / (2 * Math.PI));
    }
}
