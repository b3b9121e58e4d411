package loopwright.adapter.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.GreenSurvey;
import loopwright.course.Hole;
import loopwright.course.HoleNotes;
import loopwright.course.HoleSurvey;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** Synthetic courses of one hole each that strain a page. */
final class OddCourses {
    static final double YARD = 0.9144;

    private OddCourses() {}

    static List<Course> all() {
        return List.of(
                course(
                        "620 yards",
                        Region.circle(new Place(0, 567), 11),
                        false,
                        line(0, 0, 40, 300, 0, 567),
                        List.of()),
                course(
                        "turns back",
                        Region.circle(new Place(20, 260), 11),
                        false,
                        line(0, 0, 260, 120, 20, 260),
                        List.of()),
                course("no green", Region.circle(new Place(0, 330), 5.5), true, line(0, 0, 0, 330), List.of()),
                course("tiny", Region.circle(new Place(0, 55), 9), false, line(0, 0, 0, 55), List.of()),
                course("deep green", rectangle(0, 380, 20, 60), false, line(0, 0, 0, 380), List.of()),
                course(
                        "island green",
                        Region.circle(new Place(0, 130), 11),
                        false,
                        line(0, 0, 0, 130),
                        List.of(Area.of("pond", AreaKind.RED_PENALTY_AREA, Region.circle(new Place(0, 130), 45)))),
                course(
                        "very wide",
                        Region.circle(new Place(0, 380), 11),
                        false,
                        line(0, 0, 0, 380),
                        List.of(Area.of("field", AreaKind.FAIRWAY, rectangle(0, 220, 1000, 240)))));
    }

    /** A green of 30 by 20 yards on a straight hole of 300 yards, a fairway 30 yards wide and 150 long across its middle. */
    static Course measured() {
        return course(
                "measured",
                rectangle(0, 300 * YARD, 20 * YARD, 30 * YARD),
                false,
                line(0, 0, 0, 300 * YARD),
                List.of(Area.of("fairway", AreaKind.FAIRWAY, rectangle(0, 150 * YARD, 30 * YARD, 150 * YARD))));
    }

    static Region rectangle(double x, double y, double wide, double deep) {
        return Region.of(List.of(
                new Place(x - wide / 2, y - deep / 2),
                new Place(x + wide / 2, y - deep / 2),
                new Place(x + wide / 2, y + deep / 2),
                new Place(x - wide / 2, y + deep / 2)));
    }

    static Line line(double... xy) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            places.add(new Place(xy[i], xy[i + 1]));
        }
        return new Line(places);
    }

    static Course course(String name, Region green, boolean assumed, Line line, List<Area> more) {
        List<Area> areas = new ArrayList<>(more);
        areas.add(Area.of("green", AreaKind.GREEN, green));
        Hole hole = new Hole(1, 4, "tag", OptionalInt.empty(), line, green, assumed, line.end(), HoleSurvey.NOTHING);
        TeeSet back = new TeeSet("back", 0, Map.of(1, new TeePlace(line.start(), Optional.empty())));
        return new Course(
                name, new LatLon(0, 0), Optional.empty(), false, areas, List.of(), List.of(hole), List.of(back));
    }

    /** The same with a green somebody has measured with nine arrows. */
    static Course withArrows(Course course) {
        Hole hole = course.holes().get(0);
        double[] falls = {0.01, 0.02, 0.03, 0.01, 0.02, 0.03, 0.01, 0.02, 0.03};
        GreenSurvey green = GreenSurvey.NOTHING.withNineSpots(hole, falls, new double[9]);
        return course.withHoles(List.of(hole.withSurvey(hole.survey().withNotes(HoleNotes.NOTHING.withGreen(green)))));
    }
}
