package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/**
 * A level hole for questions that are asked without a course: straight north from the tee, rough all round, a green 28 yd
 * across (5,500 sq ft: common practice, no source), and in front of it whatever the question is about.
 */
record PlainHole(Course course, Hole hole, Place tee) {
    static final double GREEN_RADIUS_METRES = 12.8;

    /**
     * @param metres from the tee to the middle of the green
     * @param front metres from the front edge of the green to the hole
     * @param ground what lies from the tee to the green, 36 m wide; empty: rough
     */
    static PlainHole of(double metres, double front, Optional<AreaKind> ground) {
        Place tee = new Place(0, 0);
        Place middle = new Place(0, metres);
        List<Area> areas = new ArrayList<>();
        ground.ifPresent(kind -> areas.add(Area.of("ground", kind, strip(metres))));
        Hole hole = new Hole(
                1,
                3,
                "tag",
                OptionalInt.empty(),
                new Line(List.of(tee, middle)),
                Region.circle(middle, GREEN_RADIUS_METRES),
                false,
                new Place(0, metres - GREEN_RADIUS_METRES + front),
                new HoleSurvey(true, true, true, true));
        TeeSet tees = new TeeSet("tees", 0, Map.of(1, new TeePlace(tee, Optional.empty())));
        Course course = new Course(
                "plain ground",
                new LatLon(0, 0),
                Optional.empty(),
                false,
                areas,
                List.of(),
                List.of(hole),
                List.of(tees));
        return new PlainHole(course, hole, tee);
    }

    private static Region strip(double metres) {
        return Region.of(List.of(new Place(-18, -8), new Place(18, -8), new Place(18, metres), new Place(-18, metres)));
    }

    CourseMap map() {
        return new CourseMap(course, hole);
    }

    /** The place straight in front of the hole, so many metres from it. */
    Place shortOf(double metres) {
        return hole.holeLocation().offset(0, -metres, 0);
    }
}
