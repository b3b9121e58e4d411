package loopwright.adapter.chart;

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
import loopwright.course.Tree;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** Synthetic test data: two plain holes side by side, with one area of every kind. */
final class SyntheticCourse {
    private SyntheticCourse() {}

    static Course twoHoles() {
        List<Area> areas = new ArrayList<>();
        double x = -180;
        for (AreaKind kind : AreaKind.values()) {
            areas.add(Area.of("area/" + kind, kind, Region.circle(new Place(x, 250), 11)));
            x += 25;
        }
        areas.add(Area.of("fairway/1", AreaKind.FAIRWAY, Region.strip(line(-60, 60, -60, 330), 17)));
        areas.add(Area.of("fairway/2", AreaKind.FAIRWAY, Region.strip(line(60, 330, 60, 150), 17)));
        areas.add(Area.of("green/1", AreaKind.GREEN, green(-60, 360)));
        areas.add(Area.of("green/2", AreaKind.GREEN, green(60, 0)));
        Region border = Region.of(
                List.of(new Place(-200, -60), new Place(200, -60), new Place(200, 420), new Place(-200, 420)));
        TeeSet back = new TeeSet(
                "back",
                0,
                Map.of(
                        1, new TeePlace(new Place(-60, 0), Optional.empty()),
                        2, new TeePlace(new Place(60, 360), Optional.empty())));
        return new Course(
                "Synthetic <Test> & Sons",
                new LatLon(0, 0),
                Optional.of(border),
                false,
                areas,
                List.of(new Tree("tree/1", new Place(0, 100), 5, 12)),
                List.of(hole(1, line(-60, 0, -60, 360)), hole(2, line(60, 360, 60, 0))),
                List.of(back));
    }

    private static Hole hole(int number, Line line) {
        return new Hole(
                number,
                4,
                "tag",
                OptionalInt.of(number),
                line,
                green(line.end().x(), line.end().y()),
                false,
                line.end(),
                HoleSurvey.NOTHING);
    }

    private static Region green(double x, double y) {
        return Region.circle(new Place(x, y), 12);
    }

    private static Line line(double x, double y, double toX, double toY) {
        return new Line(List.of(new Place(x, y), new Place(toX, toY)));
    }
}
