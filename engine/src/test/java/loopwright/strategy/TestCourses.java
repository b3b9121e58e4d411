package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.course.LocalRule;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.course.Tree;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.HeightField;

/** Small synthetic holes for the tests of solver and referee. */
public final class TestCourses {
    private TestCourses() {}

    /** A straight par 4 of 360 m playing north: fairway, round green, two bunkers, a pond, woods, bounds on the right. */
    public static Course parFour() {
        List<Area> areas = new ArrayList<>();
        areas.add(area("fairway", AreaKind.FAIRWAY, rectangle(-16, 130, 16, 345)));
        areas.add(area("tee", AreaKind.TEE, rectangle(-5, -6, 5, 6)));
        areas.add(area("bunker-left", AreaKind.BUNKER, Region.circle(new Place(-20, 355), 6)));
        areas.add(area("bunker-right", AreaKind.BUNKER, Region.circle(new Place(19, 348), 5)));
        areas.add(area("pond", AreaKind.RED_PENALTY_AREA, rectangle(-60, 190, -20, 260)));
        areas.add(area("wood", AreaKind.WOODS, rectangle(30, 60, 60, 300)));
        return course(areas, List.of(new Place(0, 0), new Place(0, 360)), 4, rectangle(-90, -60, 75, 430));
    }

    /** A par 3 of 150 m over water. */
    public static Course parThree() {
        List<Area> areas = new ArrayList<>();
        areas.add(area("tee", AreaKind.TEE, rectangle(-5, -6, 5, 6)));
        areas.add(area("lake", AreaKind.YELLOW_PENALTY_AREA, rectangle(-40, 60, 40, 128)));
        areas.add(area("bunker", AreaKind.BUNKER, Region.circle(new Place(-18, 152), 6)));
        return course(areas, List.of(new Place(0, 0), new Place(0, 150)), 3, rectangle(-90, -60, 90, 230));
    }

    /** Heights at a square of nodes from its south-western one on. */
    public static HeightField heights(Place first, int nodes, double stepMetres, DoubleBinaryOperator metres) {
        float[] heights = new float[nodes * nodes];
        for (int i = 0; i < heights.length; i++) {
            int row = i / nodes;
            int column = i % nodes;
            heights[i] = (float) metres.applyAsDouble(first.x() + stepMetres * column, first.y() + stepMetres * row);
        }
        return new HeightField(nodes, nodes, heights, HeightField.Grid.square(first, stepMetres));
    }

    public static Course course(List<Area> areas, List<Place> line, int par, Region boundary) {
        return courseWithGreen(areas, line, par, boundary, Region.circle(line.get(line.size() - 1), 12));
    }

    public static Course courseWithGreen(List<Area> areas, List<Place> line, int par, Region boundary, Region green) {
        Place end = line.get(line.size() - 1);
        Hole hole = new Hole(
                1,
                par,
                "tag",
                OptionalInt.empty(),
                new Line(line),
                green,
                false,
                end,
                new HoleSurvey(true, true, true, true));
        TeeSet tees = new TeeSet("back", 0, Map.of(1, new TeePlace(line.get(0), Optional.empty())));
        return new Course(
                "test",
                new LatLon(0, 0),
                Optional.of(boundary),
                false,
                areas,
                List.<Tree>of(),
                List.of(hole),
                List.of(tees));
    }

    /** The course with these local rules in force on every hole. */
    public static Course withLocalRules(Course course, Set<LocalRule> rules) {
        return course.withHoles(course.holes().stream()
                .map(h -> h.withSurvey(h.survey().withNotes(h.survey().notes().withLocalRules(rules))))
                .toList());
    }

    public static Area area(String id, AreaKind kind, Region region) {
        return Area.of(id, kind, region);
    }

    public static Region rectangle(double minX, double minY, double maxX, double maxY) {
        return Region.of(
                List.of(new Place(minX, minY), new Place(maxX, minY), new Place(maxX, maxY), new Place(minX, maxY)));
    }
}
