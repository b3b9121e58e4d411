package loopwright.rules;

import java.util.ArrayList;
import java.util.List;
import loopwright.course.CourseMap;
import loopwright.course.LocalRule;
import loopwright.geo.Place;
import loopwright.ground.Surface;

/**
 * Where a ball may be dropped, and for how many strokes: Rules 17.1d (penalty areas) and 19.2, 19.3 (unplayable);
 * {@link FairwayDrop} has the local rule for lost balls.
 * Stroke and distance (Rules 14.6, 18.1) is always open besides and needs no list: one stroke, from where the last
 * stroke was made.
 *
 * <p>A relief area is stood for by places on it: the player tries to drop at the edge he likes best. The hole is that
 * of the map; no place is nearer to it than the reference point.
 */
public final class Relief {
    /** Two club-lengths of the longest club but the putter, 46 in. */
    public static final double TWO_CLUB_LENGTHS_METRES = 2 * 46 * 0.0254;

    /** How far back on the line a drop is looked at, and in which steps. */
    private static final double FURTHEST_BACK_METRES = 140;

    private static final double BACK_STEP_METRES = 5;
    private static final int DIRECTIONS = 12;

    /** The ways of Rules 17 and 19, and those of local rules. */
    public enum Kind {
        BACK_ON_THE_LINE,
        LATERAL,
        DROPPING_ZONE,
        BESIDE_THE_FAIRWAY
    }

    /** A place to drop, its cost in penalty strokes, and the Rule that allows it. */
    public record Option(Kind kind, Place place, int penaltyStrokes, String rule) {}

    private Relief() {}

    /**
     * Relief from a penalty area, besides stroke and distance; dropping zones count where the local rule is in force.
     *
     * @param crossing where the ball last crossed the edge
     * @param area red: back on the line and lateral; yellow: back on the line only
     */
    public static List<Option> fromPenaltyArea(CourseMap map, Place crossing, Surface area) {
        List<Option> out = backOnTheLine(map, crossing, 1, "17.1d(2)");
        if (area == Surface.RED_PENALTY_AREA) {
            out.addAll(lateral(map, crossing, "17.1d(3)", false));
        }
        if (map.hasLocalRule(LocalRule.DROP_ZONE)) {
            out.addAll(droppingZones(map));
        }
        return out;
    }

    /** Model Local Rule E-1: the committee's dropping zones, for the stroke of Rule 17.1d; they may be nearer the hole. */
    private static List<Option> droppingZones(CourseMap map) {
        return map.hole().survey().notes().dropZones().stream()
                .filter(p -> map.surfaceAt(p).isPlayable())
                .map(p -> new Option(Kind.DROPPING_ZONE, p, 1, "MLR E-1"))
                .toList();
    }

    /** An unplayable ball, besides stroke and distance: one stroke; out of a bunker back on the line costs two. */
    public static List<Option> unplayable(CourseMap map, Place ball, Surface surface) {
        boolean bunker = surface == Surface.BUNKER;
        List<Option> out = backOnTheLine(map, ball, bunker ? 2 : 1, bunker ? "19.3b" : "19.2b");
        if (bunker) {
            out.removeIf(o -> map.surfaceAt(o.place()) == Surface.BUNKER);
        }
        out.addAll(lateral(map, ball, bunker ? "19.3a" : "19.2c", bunker));
        return out;
    }

    private static List<Option> backOnTheLine(CourseMap map, Place reference, int penalty, String rule) {
        Place hole = map.hole().holeLocation();
        double bearing = hole.bearingTo(reference);
        List<Option> out = new ArrayList<>();
        for (double back = BACK_STEP_METRES / 2; back <= FURTHEST_BACK_METRES; back += BACK_STEP_METRES) {
            Place drop = reference.along(bearing, back);
            if (map.surfaceAt(drop).isPlayable()) {
                out.add(new Option(Kind.BACK_ON_THE_LINE, drop, penalty, rule));
            }
        }
        return out;
    }

    private static List<Option> lateral(CourseMap map, Place reference, String rule, boolean stayInBunker) {
        Place hole = map.hole().holeLocation();
        double limit = hole.distanceTo(reference);
        List<Option> out = new ArrayList<>();
        for (int i = 0; i < DIRECTIONS; i++) {
            Place drop = reference.along(2 * Math.PI * i / DIRECTIONS, TWO_CLUB_LENGTHS_METRES);
            Surface surface = map.surfaceAt(drop);
            boolean allowed = stayInBunker ? surface == Surface.BUNKER : surface.isPlayable();
            if (allowed && surface != Surface.GREEN && hole.distanceTo(drop) >= limit) {
                out.add(new Option(Kind.LATERAL, drop, 1, rule));
            }
        }
        return out;
    }
}
