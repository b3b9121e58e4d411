package loopwright.scoring;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import loopwright.units.Distance;

/**
 * Strokes to hole out of tour professionals, straight lines between the published points.
 *
 * <p>Source: M. Broadie, Assessing Golfer Performance on the PGA TOUR, Interfaces 42(2), 2012, Table 9 of the appendix
 * (yards; more than 8 million shots of 2003 to 2010) for all lies but the green; M. Broadie, Putts Gained, 2011, Fig. 1
 * (feet) for the green. The tables are kept as printed, also where they fall with distance (from the tee 120 to 140 yd,
 * sand 90 to 120, recovery 80 to 120), so this baseline must not be used to choose shots.
 *
 * <p>Outside the published range, ours and told by {@link #isPublished}: nearer than 10 yd off the green, a putt of
 * that length plus what the lie costs more than a putt at 10 yd; on the green nearer than 2 ft, a straight line to 1.0
 * at the hole; nearer than 100 yd from a tee, the fairway value plus what the tee costs more at 100 yd; beyond the last
 * distance, the slope of the last 100 yd (of the last 30 ft on the green).
 */
public final class TourBaseline implements StrokesBaseline {
    /** Table 9: yards, then tee, fairway, rough, sand, recovery; a dash where nothing is printed. */
    static final String TABLE_9 = """
            10 - 2.18 2.34 2.43 3.45
            20 - 2.40 2.59 2.53 3.51
            30 - 2.52 2.70 2.66 3.57
            40 - 2.60 2.78 2.82 3.71
            50 - 2.66 2.87 2.92 3.79
            60 - 2.70 2.91 3.15 3.83
            70 - 2.72 2.93 3.21 3.84
            80 - 2.75 2.96 3.24 3.84
            90 - 2.77 2.99 3.24 3.82
            100 2.92 2.80 3.02 3.23 3.80
            120 2.99 2.85 3.08 3.21 3.78
            140 2.97 2.91 3.15 3.22 3.80
            160 2.99 2.98 3.23 3.28 3.81
            180 3.05 3.08 3.31 3.40 3.82
            200 3.12 3.19 3.42 3.55 3.87
            220 3.17 3.32 3.53 3.70 3.92
            240 3.25 3.45 3.64 3.84 3.97
            260 3.45 3.58 3.74 3.93 4.03
            280 3.65 3.69 3.83 4.00 4.10
            300 3.71 3.78 3.90 4.04 4.20
            320 3.79 3.84 3.95 4.12 4.31
            340 3.86 3.88 4.02 4.26 4.44
            360 3.92 3.95 4.11 4.41 4.56
            380 3.96 4.03 4.21 4.55 4.66
            400 3.99 4.11 4.30 4.69 4.75
            420 4.02 4.19 4.40 4.83 4.84
            440 4.08 4.27 4.49 4.97 4.94
            460 4.17 4.34 4.58 5.11 5.03
            480 4.28 4.42 4.68 5.25 5.13
            500 4.41 4.50 4.77 5.40 5.22
            520 4.54 4.58 4.87 5.54 5.32
            540 4.65 4.66 4.96 5.68 5.41
            560 4.74 4.74 5.06 5.82 5.51
            580 4.79 4.82 5.15 5.96 5.60
            600 4.82 4.89 5.25 6.10 5.70
            """;

    /** Putts Gained, Fig. 1: feet and average putts. */
    static final String PUTTS = """
            2 1.01
            3 1.05
            4 1.14
            5 1.24
            6 1.34
            7 1.43
            8 1.50
            9 1.56
            10 1.61
            15 1.78
            20 1.87
            30 1.98
            40 2.06
            50 2.14
            60 2.21
            90 2.36
            """;

    private static final List<Lie> COLUMNS = List.of(Lie.TEE, Lie.FAIRWAY, Lie.ROUGH, Lie.SAND, Lie.RECOVERY);
    private static final Map<Lie, Curve> CURVES = curves();

    /** Rows of 20 yd: five of them back are 100 yd; on the green one row back is 30 ft. */
    private static final int ROWS_OF_LAST_SLOPE = 5;

    @Override
    public double strokesToHoleOut(Lie lie, Distance toHole) {
        double distance = inColumnUnit(lie, toHole);
        if (!(distance >= 0)) {
            throw new IllegalArgumentException("a distance to the hole is zero or more, not " + distance);
        }
        Curve curve = curve(lie);
        if (distance >= curve.first().at()) {
            return curve.valueAt(distance, lie == Lie.GREEN ? 1 : ROWS_OF_LAST_SLOPE);
        }
        return switch (lie) {
            case GREEN ->
                1 + (curve.first().value() - 1) * distance / curve.first().at();
            case TEE -> beside(lie, Lie.FAIRWAY, toHole);
            case FAIRWAY, ROUGH, SAND, RECOVERY -> beside(lie, Lie.GREEN, toHole);
        };
    }

    @Override
    public boolean isPublished(Lie lie, Distance toHole) {
        return curve(lie).covers(inColumnUnit(lie, toHole));
    }

    @Override
    public String name() {
        return "tour professionals 2003 to 2010 (Broadie 2012, Table 9; putts: Broadie 2011)";
    }

    /** The other lie's value at this distance, plus the gap between the two at this column's first distance. */
    private double beside(Lie lie, Lie other, Distance toHole) {
        Distance first = Distance.ofYards(curve(lie).first().at());
        double gap = curve(lie).first().value() - strokesToHoleOut(other, first);
        return strokesToHoleOut(other, toHole) + gap;
    }

    private static double inColumnUnit(Lie lie, Distance toHole) {
        return lie == Lie.GREEN ? toHole.feet() : toHole.yards();
    }

    private static Curve curve(Lie lie) {
        return Objects.requireNonNull(CURVES.get(lie));
    }

    private static Map<Lie, Curve> curves() {
        Map<Lie, Curve> curves = new EnumMap<>(Lie.class);
        for (int column = 0; column < COLUMNS.size(); column++) {
            curves.put(COLUMNS.get(column), column(TABLE_9, column + 1));
        }
        curves.put(Lie.GREEN, column(PUTTS, 1));
        return curves;
    }

    private static Curve column(String table, int column) {
        return new Curve(table.lines()
                .map(line -> line.split(" ", -1))
                .filter(cells -> !cells[column].equals("-"))
                .map(cells -> new Curve.Point(Double.parseDouble(cells[0]), Double.parseDouble(cells[column])))
                .toList());
    }
}
