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
        return hole(400, 4, -9, List.of(Area.of("place", kind, ReferenceCourse.disc(0, 391 - yardsToHole, 3))));
    }

    /** Where that place is. */
    static Place shortOfTheHole(double yards) {
        return ReferenceCourse.place(0, 391 - yards);
    }

    private static ReferenceCourse.Ground hole(double yards, int par, double toTheBack, List<Area> more) {
        List<Area> areas = new ArrayList<>(more);
        areas.add(Area.of("tee", AreaKind.TEE, ReferenceCourse.box(-5, -6, 5, 6)));
        double start = par == 3 ? yards - 30 : Math.min(140, yards - 60);
        if (more.stream().anyMatch(a -> a.kind() == AreaKind.ROUGH)) {
            Region place = more.get(0).region();
            areas.removeAll(more);
            areas.add(Area.of(
                    "fairway",
                    AreaKind.FAIRWAY,
                    Region.of(
                            ReferenceCourse.box(-16, start, 16, yards)
                                    .polygons()
                                    .get(0)
                                    .get(0),
                            List.of(place.polygons().get(0).get(0)))));
        } else {
            areas.add(Area.of("fairway", AreaKind.FAIRWAY, ReferenceCourse.box(-16, start, 16, yards)));
        }
        areas.add(Area.of("front bunker", AreaKind.BUNKER, ReferenceCourse.disc(-17, yards - 10, 5)));
        areas.add(Area.of("side bunker", AreaKind.BUNKER, ReferenceCourse.disc(19, yards + 4, 5)));
        areas.add(Area.of("left wood", AreaKind.WOODS, ReferenceCourse.box(-130, 40, -32, yards + 60)));
        areas.add(Area.of("right wood", AreaKind.WOODS, ReferenceCourse.box(32, 40, 130, yards + 60)));
        Place tee = ReferenceCourse.place(0, 0);
        Hole hole = new Hole(
                1,
                par,
                "tag",
                OptionalInt.empty(),
                new Line(List.of(tee, ReferenceCourse.place(0, yards))),
                ReferenceCourse.disc(0, yards, 14),
                false,
                ReferenceCourse.place(0, yards + toTheBack),
                new HoleSurvey(true, true, true, true));
        TeeSet tees = new TeeSet("tees", 0, Map.of(1, new TeePlace(tee, Optional.empty())));
        Course course = new Course(
                "anchors",
                new LatLon(0, 0),
                Optional.of(ReferenceCourse.box(-140, -60, 60, yards + 60)),
                false,
                areas,
                List.of(),
                List.of(hole),
                List.of(tees));
        return new ReferenceCourse.Ground(course, hole, tee);
    }
}
