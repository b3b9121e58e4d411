package loopwright.adapter.terrain;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** A synthetic course of one straight hole, 300 m to the north of its tee, round the origin of the frame. */
final class FlatCourse {
    private FlatCourse() {}

    static Course at(LatLon origin) {
        Place tee = new Place(0, -150);
        Place cup = new Place(0, 150);
        Hole hole = new Hole(
                1,
                4,
                "tag",
                OptionalInt.empty(),
                new Line(List.of(tee, cup)),
                Region.circle(cup, 10),
                false,
                cup,
                HoleSurvey.NOTHING);
        return new Course(
                "synthetic",
                origin,
                Optional.empty(),
                false,
                List.of(),
                List.of(),
                List.of(hole),
                List.of(new TeeSet("back", 0, Map.of(1, new TeePlace(tee, Optional.empty())))));
    }
}
