package loopwright.demo;

import java.util.List;
import loopwright.geo.Line;
import loopwright.geo.Place;

/** Where the eighteen invented holes run, laid out by hand on a sheet of squared paper: two loops from the clubhouse. */
final class DemoRouting {
    /** The sheet was drawn a little small; metres of ground for one unit of it. */
    static final double SCALE = 1.075;

    /** One hole: from back tee over its bends to the middle of the green. */
    record Route(int number, int par, int strokeIndex, Line line) {}

    private DemoRouting() {}

    static List<Route> routes() {
        return List.of(
                route(1, 4, 7, -140, -345, -128, -150, -160, 15),
                route(2, 4, 11, -164, 66, -136, 240, -208, 368),
                route(3, 3, 17, -235, 352, -262, 205),
                route(4, 5, 1, -258, 150, -232, -60, -262, -318),
                route(5, 4, 5, -318, -366, -352, -170, -338, 0),
                route(6, 4, 3, -350, 62, -362, 290, -262, 402),
                route(7, 4, 9, -205, 440, -52, 432, 20, 306),
                route(8, 3, 15, 22, 252, -36, 104),
                route(9, 5, 13, -66, 58, -38, -165, -80, -395),
                route(10, 4, 6, 74, -345, 84, -150, 62, 14),
                route(11, 4, 12, 84, 72, 92, 240, 190, 330),
                route(12, 3, 18, 222, 388, 350, 446),
                route(13, 5, 4, 392, 408, 424, 170, 384, -62),
                route(14, 4, 8, 392, -116, 404, -304, 304, -408),
                route(15, 4, 2, 264, -378, 306, -180, 312, -6),
                route(16, 4, 14, 302, 58, 346, 212, 282, 344),
                route(17, 3, 16, 240, 300, 200, 158),
                route(18, 5, 10, 196, 104, 222, -110, 148, -334));
    }

    private static Route route(int number, int par, int strokeIndex, double... xy) {
        return new Route(number, par, strokeIndex, line(xy));
    }

    /** A line over pairs of sheet units. */
    static Line line(double... xy) {
        return new Line(places(xy));
    }

    static List<Place> places(double... xy) {
        List<Place> out = new java.util.ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            out.add(new Place(xy[i] * SCALE, xy[i + 1] * SCALE));
        }
        return out;
    }
}
