package loopwright.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Tree;
import loopwright.geo.Box;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** Plants woods, deep rough and single trees where the holes leave room. */
final class DemoPlanting {
    /** Room kept free on both sides of every line of play, metres. */
    private static final double CLEAR_OF_WOODS = 29;

    private static final double CLEAR_OF_DEEP_ROUGH = 25;

    private final List<DemoHole> holes;
    private final List<Area> fixed;
    private final Region boundary;
    private final SplittableRandom random;

    DemoPlanting(List<DemoHole> holes, List<Area> fixed, Region boundary, SplittableRandom random) {
        this.holes = holes;
        this.fixed = List.copyOf(fixed);
        this.boundary = boundary;
        this.random = random;
    }

    List<Area> woods() {
        double[][] spines = {
            {-205, -330, -192, -160, -205, -60},
            {-196, 110, -206, 190, -216, 270},
            {-104, -300, -84, -150, -108, -30},
            {-306, 110, -312, 220, -318, 330},
            {-300, -110, -296, -40, -300, 0},
            {-384, 140, -386, 300, -366, 420, -270, 450},
            {-120, 130, -100, 230, -110, 330},
            {-60, 340, -30, 240, -60, 180},
            {12, -300, 22, -190, 4, -60},
            {50, 110, 54, 190, 50, 250, 78, 330},
            {140, -330, 132, -250},
            {152, -60, 148, 20, 150, 110},
            {150, 190, 160, 240, 200, 270},
            {224, -400, 232, -420},
            {346, -290, 344, -180, 350, -120},
            {258, -160, 260, -60, 256, 60, 262, 150},
            {358, -180, 352, -90, 358, 0},
            {376, 60, 368, 130, 384, 260},
            {250, 450, 340, 480, 410, 470},
            {440, -380, 430, -300, 438, -150},
            {-380, -390, -376, -250}
        };
        List<Area> out = new ArrayList<>();
        for (double[] spine : spines) {
            Line line = Shapes.rounded(DemoRouting.line(spine), 2);
            for (Region part : strips(line, random.nextDouble(15, 24), CLEAR_OF_WOODS)) {
                out.add(Area.of("woods/" + (out.size() + 1), AreaKind.WOODS, part));
            }
        }
        return out;
    }

    List<Area> deepRough() {
        double[][] spines = {
            {-192, -50, -200, 20},
            {-294, -330, -300, -260},
            {-300, 20, -306, 100},
            {-390, -250, -388, -40},
            {-120, 20, -112, 110},
            {-140, 400, -60, 470, 40, 450},
            {14, -50, 30, 60},
            {20, 100, 40, 200},
            {140, -220, 160, -60},
            {256, -270, 260, -160},
            {350, 20, 356, 140},
            {440, -140, 430, 60, 456, 200, 450, 380},
            {220, 60, 240, 150},
            {200, 400, 290, 470},
            {360, -400, 420, -420},
            {-240, -400, -160, -410}
        };
        List<Area> out = new ArrayList<>();
        for (double[] spine : spines) {
            Line line = Shapes.rounded(DemoRouting.line(spine), 2);
            for (Region part : strips(line, random.nextDouble(11, 18), CLEAR_OF_DEEP_ROUGH)) {
                out.add(Area.of("deep-rough/" + (out.size() + 1), AreaKind.DEEP_ROUGH, part));
            }
        }
        return out;
    }

    /** A wavering strip that shrinks where a hole, water or the stakes come near, and is left out where it would vanish. */
    private List<Region> strips(Line line, double halfWidth, double clear) {
        var left = Shapes.waver(45, random);
        var right = Shapes.waver(38, random);
        double length = line.lengthMetres();
        List<Region> out = new ArrayList<>();
        double start = -1;
        for (double s = 0; s <= length; s += 4) {
            boolean room = room(line.placeAt(s), clear) >= 5;
            if (room && start < 0) {
                start = s;
            }
            boolean ends = !room || s + 4 > length;
            if (ends && start >= 0) {
                if (s - start > 24) {
                    out.add(Shapes.strip(
                            line,
                            start,
                            s,
                            at -> Math.min(
                                    halfWidth * (1 + 0.4 * left.applyAsDouble(at)), room(line.placeAt(at), clear)),
                            at -> Math.min(
                                    halfWidth * (1 + 0.4 * right.applyAsDouble(at)), room(line.placeAt(at), clear)),
                            12));
                }
                start = -1;
            }
        }
        return out;
    }

    /** Metres around a place that may be planted. */
    private double room(Place place, double clear) {
        double room = boundary.contains(place) ? boundary.distanceToEdge(place) - 2 : 0;
        for (DemoHole hole : holes) {
            room = Math.min(room, hole.line().distanceTo(place) - clear);
            room = Math.min(room, hole.green().distanceTo(place) - 16);
            for (Place tee : hole.tees()) {
                room = Math.min(room, tee.distanceTo(place) - 12);
            }
        }
        for (Area area : fixed) {
            room = Math.min(room, area.region().distanceTo(place) - 3);
        }
        return Math.max(0, room);
    }

    /** Single trees beside the fairways and in the open between holes, clear of everything that is played from. */
    List<Tree> trees(List<Area> areas) {
        List<Region> avoid = areas.stream()
                .filter(a -> a.kind() != AreaKind.DEEP_ROUGH)
                .map(Area::region)
                .toList();
        List<Tree> out = new ArrayList<>();
        Box box = boundary.box();
        for (int tries = 0; tries < 9000 && out.size() < 260; tries++) {
            Place place =
                    new Place(random.nextDouble(box.minX(), box.maxX()), random.nextDouble(box.minY(), box.maxY()));
            double radius = random.nextDouble(2.6, 5.2);
            double away = holes.stream()
                    .mapToDouble(h -> h.line().distanceTo(place))
                    .min()
                    .orElse(0);
            boolean standsWell = boundary.contains(place)
                    && boundary.distanceToEdge(place) > radius
                    && away > 23
                    && away < 62
                    && avoid.stream()
                            // Far boxes are passed over: the exact distance costs a hundred times as much.
                            .filter(r -> r.box().grown(radius + 2).contains(place.x(), place.y()))
                            .allMatch(r -> r.distanceTo(place) > radius + 2)
                    && out.stream().allMatch(t -> t.place().distanceTo(place) > radius + t.crownRadiusMetres() + 5);
            if (standsWell) {
                out.add(new Tree("tree/" + (out.size() + 1), place, radius, radius * random.nextDouble(2.4, 3.4)));
            }
        }
        return out;
    }
}
