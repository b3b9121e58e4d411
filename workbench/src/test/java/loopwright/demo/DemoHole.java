package loopwright.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Hole;
import loopwright.course.HoleSurvey;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** Shapes one invented hole around its line: green, fairway, tees, bunkers. */
final class DemoHole {
    /** Share of the back length that each set plays, longest first. */
    static final double[] SET_SHARES = {1, 0.96, 0.915, 0.85, 0.755};

    /** Landing zones, metres from the back tee: a drive, and the second shot of a par 5. */
    private static final double DRIVE = 222;

    private static final double SECOND = 388;

    private final DemoRouting.Route route;
    private final SplittableRandom random;
    private final Line line;
    private final double length;
    private final Region green;
    private final List<Place> tees = new ArrayList<>();
    private final List<Area> areas = new ArrayList<>();

    DemoHole(DemoRouting.Route route, long seed) {
        this.route = route;
        random = new SplittableRandom(seed * 1000 + route.number());
        line = Shapes.rounded(route.line(), 3);
        length = line.lengthMetres();
        double bearing = line.placeAt(length - 30).bearingTo(line.end());
        green = Shapes.blobOfArea(
                line.end(),
                random.nextDouble(360, 530),
                random.nextDouble(1.02, 1.28),
                bearing + random.nextDouble(-0.7, 0.7),
                0.10,
                random);
        areas.add(Area.of(id("green"), AreaKind.GREEN, green));
        placeTees();
        areas.add(Area.of(id("fairway"), AreaKind.FAIRWAY, fairway()));
    }

    private String id(String what) {
        return what + "/" + route.number();
    }

    private void placeTees() {
        for (int set = 0; set < SET_SHARES.length; set++) {
            double at = (1 - SET_SHARES[set]) * length;
            double bearing = line.placeAt(at).bearingTo(line.placeAt(at + 40));
            double aside = set == 0 ? 0 : random.nextDouble(-3.5, 3.5);
            Place place = line.placeAt(at).offset(bearing, 0, aside);
            tees.add(place);
            double halfLength = route.par() == 3 ? 2.9 : random.nextDouble(4, 6);
            List<Place> ring = Shapes.box(
                            place.offset(bearing, -1, 0), bearing, halfLength, random.nextDouble(3.4, 4.6))
                    .polygons()
                    .get(0)
                    .get(0);
            areas.add(Area.of(
                    id("tee") + "/" + (set + 1),
                    AreaKind.TEE,
                    Region.of(Shapes.roundedRing(ring.subList(0, ring.size() - 1), 1))));
        }
    }

    private Region fairway() {
        DoubleUnaryOperator left = Shapes.waver(120, random);
        DoubleUnaryOperator right = Shapes.waver(105, random);
        double base = random.nextDouble(13.5, 16);
        double from = route.par() == 3 ? length - random.nextDouble(42, 60) : Math.max(128, 0.245 * length + 18);
        return Shapes.strip(
                line,
                from,
                length + 3,
                s -> halfWidth(base, s) + 2.2 * left.applyAsDouble(s),
                s -> halfWidth(base, s) + 2.2 * right.applyAsDouble(s),
                16);
    }

    /** Wider where drives land, narrow at the green. */
    private double halfWidth(double base, double at) {
        double landing = Math.exp(-Math.pow((at - DRIVE) / 40, 2)) + 0.6 * Math.exp(-Math.pow((at - SECOND) / 45, 2));
        double toGreen = Math.max(0, 1 - (length - at) / 55);
        return (base + 3 * landing) * (1 - 0.33 * toGreen);
    }

    /** Bunkers by hole and seed; none touches what is {@code taken}. */
    void digBunkers(List<Region> taken) {
        double greenRadius = Math.sqrt(green.areaSquareMetres() / Math.PI);
        double bearing = line.placeAt(length - 30).bearingTo(line.end());
        int around = route.par() == 3 ? 3 + random.nextInt(2) : 1 + random.nextInt(3);
        double turn = random.nextDouble(0.6, 1.0) * (random.nextBoolean() ? 1 : -1);
        for (int i = 0; i < around; i++) {
            double side = Math.PI + turn + i * (Math.PI * 2 / Math.max(3, around)) + random.nextDouble(-0.25, 0.25);
            double size = random.nextDouble(4.6, 7.4);
            Place centre = line.end().along(bearing + side, greenRadius + size * 0.75 + random.nextDouble(1.5, 3.5));
            dig(centre, size, bearing + side + Math.PI / 2, taken);
        }
        if (route.par() > 3) {
            fairwayBunkers(DRIVE + random.nextDouble(-14, 16), 1 + random.nextInt(3), taken);
        }
        if (route.par() == 5) {
            fairwayBunkers(SECOND + random.nextDouble(-20, 10), 1 + random.nextInt(2), taken);
        }
    }

    private void fairwayBunkers(double at, int count, List<Region> taken) {
        double side = insideOfTheBend(at);
        for (int i = 0; i < count; i++) {
            double where = at + (i - 0.5) * random.nextDouble(12, 26);
            double bearing = line.placeAt(where - 4).bearingTo(line.placeAt(where + 4));
            double aside = (i == 2 ? -side : side) * random.nextDouble(19, 23);
            dig(line.placeAt(where).offset(bearing, 0, aside), random.nextDouble(5, 8.5), bearing, taken);
        }
    }

    /** +1 if the hole turns right around here, -1 if left, by lot if straight. */
    private double insideOfTheBend(double at) {
        double before = line.placeAt(at - 90).bearingTo(line.placeAt(at));
        double after = line.placeAt(at).bearingTo(line.placeAt(at + 90));
        double turn = Math.IEEEremainder(after - before, 2 * Math.PI);
        return Math.abs(turn) > 0.12 ? Math.signum(turn) : random.nextBoolean() ? 1 : -1;
    }

    private void dig(Place centre, double size, double bearing, List<Region> taken) {
        Region bunker = Shapes.blob(centre, size, size * random.nextDouble(0.55, 0.72), bearing, 0.17, random);
        Region room = bunker.grown(2);
        if (taken.stream().noneMatch(room::intersects)) {
            taken.add(bunker);
            areas.add(Area.of(id("bunker") + "/" + areas.size(), AreaKind.BUNKER, bunker));
        }
    }

    Region green() {
        return green;
    }

    Line line() {
        return line;
    }

    DemoRouting.Route route() {
        return route;
    }

    List<Place> tees() {
        return tees;
    }

    List<Area> areas() {
        return areas;
    }

    Hole hole() {
        Line play = route.line();
        return new Hole(
                route.number(),
                route.par(),
                "tag",
                OptionalInt.of(route.strokeIndex()),
                play,
                green,
                false,
                play.end(),
                new HoleSurvey(true, true, true, true));
    }
}
