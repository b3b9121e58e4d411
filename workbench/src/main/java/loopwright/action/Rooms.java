package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.course.CourseMap;
import loopwright.geo.Place;
import loopwright.ground.Surface;

/** What stands beside and across a line: the room between the troubles at a distance, and what has to be carried. */
final class Rooms {
    /** Beyond this to either side nothing is looked for. */
    private static final double FURTHEST_METRES = 60;

    private static final double STEP_METRES = 0.5;
    /** Hazards this far off the line still have to be carried: half the width of a ball's usual miss in depth. */
    private static final double[] BESIDE_METRES = {-5, 0, 5};

    private final CourseMap map;

    Rooms(CourseMap map) {
        this.map = map;
    }

    static boolean isTrouble(Surface s) {
        return s.isPenaltyArea()
                || s == Surface.OUT_OF_BOUNDS
                || s == Surface.WOODS
                || s == Surface.BUNKER
                || s == Surface.DEEP_ROUGH;
    }

    /** A surface as the trade says it. */
    static String words(Surface s) {
        return switch (s) {
            case RED_PENALTY_AREA, YELLOW_PENALTY_AREA -> "penalty area";
            default -> s.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    /** Room square to the line at a distance; the widths are of the given finishes, square to the same line. */
    Optional<HolePicture.Room> at(Place from, double bearing, double metres, List<Place> finishes) {
        Place middle = from.along(bearing, metres);
        if (finishes.isEmpty() || isTrouble(map.surfaceAt(middle))) {
            return Optional.empty();
        }
        double left = edge(middle, bearing, -1);
        double right = edge(middle, bearing, 1);
        double[] across = finishes.stream()
                .mapToDouble(p -> (p.x() - from.x()) * Math.cos(bearing) - (p.y() - from.y()) * Math.sin(bearing))
                .sorted()
                .toArray();
        return Optional.of(new HolePicture.Room(
                middle.offset(bearing, 0, -left),
                name(middle, bearing, -left),
                middle.offset(bearing, 0, right),
                name(middle, bearing, right),
                quantile(across, 0.9) - quantile(across, 0.1),
                quantile(across, 0.975) - quantile(across, 0.025)));
    }

    private double edge(Place middle, double bearing, int side) {
        double s = 0;
        while (s < FURTHEST_METRES && !isTrouble(map.surfaceAt(middle.offset(bearing, 0, side * s)))) {
            s += STEP_METRES;
        }
        return s;
    }

    private String name(Place middle, double bearing, double offset) {
        Surface there = map.surfaceAt(middle.offset(bearing, 0, offset));
        return isTrouble(there) ? words(there) : "open";
    }

    private static double quantile(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1, Math.round(share * (sorted.length - 1)))];
    }

    /** Bunkers and penalty areas on the line up to a distance, each with the carry that clears it. */
    List<RoundPlan.Carry> across(Place from, double bearing, double upToMetres) {
        List<RoundPlan.Carry> out = new ArrayList<>();
        Surface open = Surface.FAIRWAY;
        double end = 0;
        for (double s = 5; s <= upToMetres; s += STEP_METRES) {
            Surface here = hazardAt(from, bearing, s);
            if (here != open && isCarried(open)) {
                out.add(new RoundPlan.Carry(words(open), end));
            }
            end = s + STEP_METRES;
            open = here;
        }
        return out;
    }

    private static boolean isCarried(Surface s) {
        return s.isPenaltyArea() || s == Surface.BUNKER;
    }

    private Surface hazardAt(Place from, double bearing, double metres) {
        for (double beside : BESIDE_METRES) {
            Surface s = map.surfaceAt(from.offset(bearing, metres, beside));
            if (isCarried(s)) {
                return s;
            }
        }
        return Surface.FAIRWAY;
    }
}
