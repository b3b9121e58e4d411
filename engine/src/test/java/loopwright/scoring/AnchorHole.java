package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.units.Distance;

/**
 * A plain hole on which the prior is set against published anchors: fairway, rough, woods from 32 yd off the line, the
 * course's boundary 60 yd to the right, a green of 28 yd across with two bunkers; on request a small
 * place of another surface, so that shots from it can be valued while their misses find ordinary ground.
 */
final class AnchorHole {
    private AnchorHole() {}

    static ReferenceCourse.Ground plain(double yards, int par) {
        return hole(yards, par, 0, List.of());
    }

    /** With a place of this surface, 6 yd across, so many yards short of the hole; the hole is cut 5 yd from the front. */
    static ReferenceCourse.Ground withPlace(AreaKind kind, double yardsToHole) {
        return hole(400, 4, -9, List.of(area("place", kind, disc(0, 391 - yardsToHole, 3))));
    }

    /** Where that place is. */
    static Place shortOfTheHole(double yards) {
        return place(0, 391 - yards);
    }

    private static ReferenceCourse.Ground hole(double yards, int par, double toTheBack, List<Area> more) {
        List<Area> areas = new ArrayList<>(more);
        areas.add(area("tee", AreaKind.TEE, box(-5, -6, 5, 6)));
        double start = par == 3 ? yards - 30 : Math.min(140, yards - 60);
        if (more.stream().anyMatch(a -> a.kind() == AreaKind.ROUGH)) {
            Region place = more.get(0).region();
            areas.removeAll(more);
            areas.add(area(
                    "fairway",
                    AreaKind.FAIRWAY,
                    Region.of(
                            box(-16, start, 16, yards).polygons().get(0).get(0),
                            List.of(place.polygons().get(0).get(0)))));
        } else {
            areas.add(area("fairway", AreaKind.FAIRWAY, box(-16, start, 16, yards)));
        }
        areas.add(area("front bunker", AreaKind.BUNKER, disc(-17, yards - 10, 5)));
        areas.add(area("side bunker", AreaKind.BUNKER, disc(19, yards + 4, 5)));
        areas.add(area("left wood", AreaKind.WOODS, box(-130, 40, -32, yards + 60)));
        areas.add(area("right wood", AreaKind.WOODS, box(32, 40, 130, yards + 60)));
        Place tee = place(0, 0);
        Hole hole = new Hole(
                1,
                par,
                "tag",
                OptionalInt.empty(),
                new Line(List.of(tee, place(0, yards))),
                disc(0, yards, 14),
                false,
                place(0, yards + toTheBack),
                new HoleSurvey(true, true, true, true));
        TeeSet tees = new TeeSet("tees", 0, Map.of(1, new TeePlace(tee, Optional.empty())));
        Course course = new Course(
                "anchors",
                new LatLon(0, 0),
                Optional.of(box(-140, -60, 60, yards + 60)),
                false,
                areas,
                List.of(),
                List.of(hole),
                List.of(tees));
        return new ReferenceCourse.Ground(course, hole, tee);
    }

    private static Area area(String id, AreaKind kind, Region region) {
        return Area.of(id, kind, region);
    }

    private static Region disc(double xYards, double yYards, double radiusYards) {
        return Region.circle(
                place(xYards, yYards), Distance.ofYards(radiusYards).metres());
    }

    private static Region box(double minX, double minY, double maxX, double maxY) {
        return Region.of(List.of(place(minX, minY), place(maxX, minY), place(maxX, maxY), place(minX, maxY)));
    }

    private static Place place(double xYards, double yYards) {
        return new Place(
                Distance.ofYards(xYards).metres(), Distance.ofYards(yYards).metres());
    }
}
