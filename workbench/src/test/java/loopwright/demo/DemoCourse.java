package loopwright.demo;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;
import loopwright.course.Tree;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/**
 * The invented course of the demo. Everything about it is made up: its name, its ground and its place, which is open
 * sea. Same seed, same course.
 */
public final class DemoCourse {
    static final long SEED = 79;
    private static final String[] SETS = {"black", "blue", "white", "yellow", "red"};

    private final List<DemoHole> holes;
    private final List<Area> areas = new ArrayList<>();
    private final List<Tree> trees;
    private final SplittableRandom random = new SplittableRandom(SEED);

    private DemoCourse() {
        holes = DemoRouting.routes().stream().map(r -> new DemoHole(r, SEED)).toList();
        water();
        grounds();
        DemoPlanting planting = new DemoPlanting(holes, areas, boundary(), random.split());
        bunkers();
        areas.addAll(planting.woods());
        areas.addAll(planting.deepRough());
        holes.forEach(h -> areas.addAll(h.areas()));
        trees = planting.trees(areas);
    }

    public static Course create() {
        DemoCourse demo = new DemoCourse();
        List<TeeSet> sets = new ArrayList<>();
        for (int i = 0; i < SETS.length; i++) {
            Map<Integer, TeePlace> places = new HashMap<>();
            for (DemoHole hole : demo.holes) {
                places.put(hole.route().number(), new TeePlace(hole.tees().get(i), Optional.empty()));
            }
            sets.add(new TeeSet(SETS[i], i, places));
        }
        return new Course(
                "Quernholt (an invented course)",
                new LatLon(-33.4, -128.6),
                Optional.of(boundary()),
                false,
                demo.areas,
                demo.trees,
                demo.holes.stream().map(DemoHole::hole).toList(),
                sets);
    }

    /** White stakes around the property. */
    static Region boundary() {
        return Region.of(Shapes.roundedRing(
                DemoRouting.places(
                        -392, -420, -300, -428, -180, -440, -20, -446, 140, -446, 300, -448, 420, -440, 446, -380, 446,
                        -180, 442, 20, 466, 160, 462, 300, 452, 420, 424, 492, 300, 494, 190, 456, 110, 408, 66, 430,
                        30, 478, -100, 486, -260, 480, -372, 462, -402, 380, -404, 200, -394, 60, -396, -120, -394,
                        -300),
                2));
    }

    private void water() {
        Line creek = Shapes.rounded(
                DemoRouting.line(
                        -420, 92, -372, 36, -318, 28, -270, 62, -225, 48, -190, 34, -150, 44, -104, 62, -62, 26, -10,
                        14, 24, -26, 62, -24, 108, -34, 132, -92, 118, -160, 150, -226, 196, -236, 246, -222, 290, -252,
                        340, -232, 392, -226, 470, -250),
                2);
        DoubleUnaryOperator left = Shapes.waver(70, random);
        DoubleUnaryOperator right = Shapes.waver(55, random);
        add(
                "creek",
                AreaKind.RED_PENALTY_AREA,
                Shapes.strip(
                        creek,
                        0,
                        creek.lengthMetres(),
                        s -> 3.6 + left.applyAsDouble(s),
                        s -> 3.6 + right.applyAsDouble(s),
                        6));
        pond("pond/8", AreaKind.YELLOW_PENALTY_AREA, -10, 172, 33, 20, 1.9);
        pond("pond/4", AreaKind.RED_PENALTY_AREA, -297, -214, 52, 15, 0.0);
        pond("pond/18", AreaKind.RED_PENALTY_AREA, 186, -312, 38, 16, 0.45);
        pond("pond/12", AreaKind.YELLOW_PENALTY_AREA, 296, 410, 24, 14, 1.1);
        pond("pond/7", AreaKind.RED_PENALTY_AREA, -62, 396, 30, 14, 1.35);
    }

    private void pond(
            String id, AreaKind kind, double x, double y, double halfLength, double halfWidth, double bearing) {
        Place centre = new Place(x * DemoRouting.SCALE, y * DemoRouting.SCALE);
        add(id, kind, Shapes.blob(centre, halfLength, halfWidth, bearing, 0.12, random));
    }

    /** Clubhouse and practice ground, the lane to it, roads and houses beyond the stakes, a sandy waste. */
    private void grounds() {
        add(
                "road/south",
                AreaKind.ROAD,
                Region.strip(
                        Shapes.rounded(DemoRouting.line(-520, -452, -260, -462, 0, -474, 260, -474, 560, -462), 2), 4));
        add(
                "road/east",
                AreaKind.ROAD,
                Region.strip(
                        Shapes.rounded(DemoRouting.line(474, -466, 476, -160, 482, 140, 486, 420, 470, 560), 2), 3.2));
        add(
                "road/lane",
                AreaKind.ROAD,
                Region.strip(Shapes.rounded(DemoRouting.line(30, -474, 22, -436, -4, -420, -10, -404), 2), 2.4));
        add(
                "building/clubhouse",
                AreaKind.BUILDING,
                Region.of(DemoRouting.places(
                        -34, -398, -2, -390, 0, -396, 12, -393, 10, -384, 18, -382, 14, -370, 2, -373, 1, -379, -37,
                        -387)));
        add(
                "practice/green",
                AreaKind.PRACTICE,
                Shapes.blob(new Place(40 * DemoRouting.SCALE, -404 * DemoRouting.SCALE), 17, 11, 1.3, 0.1, random));
        add(
                "waste/13",
                AreaKind.WASTE_AREA,
                Shapes.blob(new Place(412 * DemoRouting.SCALE, 296 * DemoRouting.SCALE), 44, 17, 1.35, 0.14, random));
        add(
                "waste/16",
                AreaKind.WASTE_AREA,
                Shapes.blob(new Place(362 * DemoRouting.SCALE, 168 * DemoRouting.SCALE), 40, 11, 0.1, 0.14, random));
        houses(-424, -330, -424, 400, 22, -0.05);
        houses(462, -400, 466, 440, 20, 0.05);
        houses(-360, -484, 420, -500, 17, 1.6);
    }

    private void houses(double x, double y, double toX, double toY, int count, double bearing) {
        for (int i = 0; i < count; i++) {
            double t = (i + random.nextDouble(0.2, 0.8)) / count;
            Place centre = new Place(
                    (x + t * (toX - x) + random.nextDouble(-5, 5)) * DemoRouting.SCALE,
                    (y + t * (toY - y) + random.nextDouble(-5, 5)) * DemoRouting.SCALE);
            Region house = Shapes.box(
                    centre, bearing + random.nextDouble(-0.2, 0.2), random.nextDouble(5, 8), random.nextDouble(4, 6));
            boolean clear = !boundary().grown(4).intersects(house)
                    && areas.stream()
                            .filter(a -> a.kind() == AreaKind.ROAD)
                            .noneMatch(a -> a.region().intersects(house));
            if (clear && random.nextDouble() < 0.8) {
                add("building/" + areas.size(), AreaKind.BUILDING, house);
            }
        }
    }

    private void bunkers() {
        List<Region> taken = new ArrayList<>();
        areas.forEach(a -> taken.add(a.region()));
        for (DemoHole hole : holes) {
            hole.areas().stream()
                    .filter(a -> a.kind() == AreaKind.GREEN || a.kind() == AreaKind.TEE)
                    .forEach(a -> taken.add(a.region()));
        }
        holes.forEach(h -> h.digBunkers(taken));
    }

    private void add(String id, AreaKind kind, Region region) {
        areas.add(Area.of(id, kind, region));
    }
}
