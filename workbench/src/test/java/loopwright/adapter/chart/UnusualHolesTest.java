package loopwright.adapter.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import loopwright.action.HolePicture;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Ink;
import loopwright.drawing.Labels;
import loopwright.drawing.Mark;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Synthetic holes that strain the sheet: very long, very wide, island green, no green, tiny. */
class UnusualHolesTest {
    static Stream<Course> unusual() {
        return Stream.of(
                course("very long", false, line(0, 0, 40, 300, 0, 567), List.of()),
                course("turns back", false, line(0, 0, 260, 120, 20, 260), List.of()),
                course("sharp turn", false, line(0, 0, 0, 200, 240, 200), List.of()),
                course("no green", true, line(0, 0, 0, 330), List.of()),
                course("tiny", false, line(0, 0, 0, 55), List.of()),
                course(
                        "island green",
                        false,
                        line(0, 0, 0, 130),
                        List.of(Area.of("pond", AreaKind.RED_PENALTY_AREA, Region.circle(new Place(0, 130), 45)))),
                course(
                        "very wide",
                        false,
                        line(0, 0, 0, 380),
                        List.of(Area.of(
                                "field",
                                AreaKind.FAIRWAY,
                                Region.of(List.of(
                                        new Place(-500, 100),
                                        new Place(500, 100),
                                        new Place(500, 340),
                                        new Place(-500, 340)))))));
    }

    @ParameterizedTest
    @MethodSource("unusual")
    void everythingStaysOnTheSheetAndApart(Course course) {
        for (HolePicture picture : List.of(SyntheticPlan.of(course, 1, true), ground(course))) {
            Drawing chart = HoleChart.of(picture);
            List<Mark.Label> labels = Labels.of(chart.marks());
            assertThat(labels).allMatch(l -> chart.sheet().grown(-12).contains(l.extent()));
            assertThat(Labels.listOverlaps(labels)).as(course.name()).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("unusual")
    void lineAndGreenAreInsideTheWindow(Course course) {
        Drawing chart = HoleChart.of(ground(course));
        Mark.Window window = (Mark.Window) chart.marks().stream()
                .filter(m -> m instanceof Mark.Window)
                .findFirst()
                .orElseThrow();
        Extent seen = window.window().extent();
        List<Extent> greens = new ArrayList<>();
        List<Extent> lines = new ArrayList<>();
        for (Mark mark : window.inside()) {
            if (mark instanceof Mark.Shape s && s.fill() == Ink.GREEN) {
                s.traces().forEach(t -> greens.add(t.extent()));
            }
            if (mark instanceof Mark.Shape s
                    && s.pen() != null
                    && s.pen().dashes().size() == 4) {
                s.traces().forEach(t -> lines.add(t.extent()));
            }
        }
        assertThat(lines).hasSize(1).allMatch(seen::contains);
        assertThat(greens).allMatch(seen::contains);
    }

    @Test
    void anAssumedGreenIsSaid() {
        Course course =
                unusual().filter(c -> c.name().equals("no green")).findFirst().orElseThrow();
        assertThat(Labels.of(HoleChart.of(ground(course)).marks()).stream().map(Mark.Label::text))
                .contains("The map has no green here; a circle of 12 yards stands in for it.");
    }

    private static HolePicture ground(Course course) {
        Hole hole = course.getHole(1);
        return HolePicture.ofGround(course, hole, "back", hole.line().start());
    }

    private static Line line(double... xy) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            places.add(new Place(xy[i], xy[i + 1]));
        }
        return new Line(places);
    }

    private static Course course(String name, boolean assumed, Line line, List<Area> more) {
        Region green = Region.circle(line.end(), assumed ? 5.5 : 11);
        List<Area> areas = new ArrayList<>(more);
        areas.add(Area.of("green", AreaKind.GREEN, green));
        Hole hole = new Hole(1, 4, "tag", OptionalInt.empty(), line, green, assumed, line.end(), HoleSurvey.NOTHING);
        TeeSet back = new TeeSet("back", 0, Map.of(1, new TeePlace(line.start(), Optional.empty())));
        return new Course(
                name, new LatLon(0, 0), Optional.empty(), false, areas, List.of(), List.of(hole), List.of(back));
    }
}
