package loopwright.action;

import java.util.Comparator;
import java.util.List;
import loopwright.geo.Place;

/**
 * Expected strokes over the aims from a spot, on a strip along the way to an aim: a row for each length that can be
 * played, nearest first, with aims side by side. Of shots that go equally far each aim has the cheapest.
 *
 * @param bearingRadians of the middle of the strip
 * @param asideMetres of the aims from that middle, left (negative) to right
 */
public record AimField(Place ball, double bearingRadians, List<Double> asideMetres, List<Row> rows) {
    public AimField {
        asideMetres = List.copyOf(asideMetres);
        rows = List.copyOf(rows);
        int across = asideMetres.size();
        if (rows.isEmpty() || rows.stream().anyMatch(r -> r.aims().size() != across)) {
            throw new IllegalArgumentException("a field of aims needs a row, and in each an aim for every place aside");
        }
    }

    /** Aims that a ball finishes so far away from, as a rule. */
    public record Row(double metres, List<Aim> aims) {
        public Row {
            aims = List.copyOf(aims);
        }

        public Aim best() {
            return cheapest(aims);
        }
    }

    /** The cheapest shot at an aim. */
    public record Aim(String club, double strokes) {}

    public Aim best() {
        return cheapest(rows.stream().map(Row::best).toList());
    }

    static Aim cheapest(List<Aim> aims) {
        return aims.stream().min(Comparator.comparingDouble(Aim::strokes)).orElseThrow();
    }

    /** The place of an aim; between aims, of what lies between them. */
    public Place place(double row, double column) {
        double metres = between(rows.stream().map(Row::metres).toList(), row);
        double aside = between(asideMetres, column);
        return ball.along(bearing(bearingRadians, aside, metres), metres);
    }

    /** The bearing of an aim so far aside of another bearing, at a length. */
    static double bearing(double middleRadians, double asideMetres, double metres) {
        return middleRadians + Math.asin(Math.max(-1, Math.min(1, asideMetres / metres)));
    }

    private static double between(List<Double> values, double at) {
        int low = Math.max(0, Math.min(values.size() - 1, (int) Math.floor(at)));
        int high = Math.min(values.size() - 1, low + 1);
        return values.get(low) + (at - low) * (values.get(high) - values.get(low));
    }
}
