package loopwright.scoring;

import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;

/**
 * Strokes to hole out of a {@link BenchmarkTable}. From the tee of a hole the solved value itself (another tee of it: less
 * or more by what the fairway between the two distances is worth); from elsewhere the mean over the course at that lie and
 * distance; a lie the course does not have costs beside the fairway what it costs tour professionals.
 */
public final class BenchmarkBaseline implements StrokesBaseline {
    private static final StrokesBaseline TOUR = new TourBaseline();

    private final BenchmarkTable table;
    private final BenchmarkTable.@Nullable Hole hole;

    public BenchmarkBaseline(BenchmarkTable table) {
        this(table, null);
    }

    private BenchmarkBaseline(BenchmarkTable table, BenchmarkTable.@Nullable Hole hole) {
        this.table = table;
        this.hole = hole;
    }

    @Override
    public StrokesBaseline forHole(int number) {
        return new BenchmarkBaseline(table, table.holes().get(number));
    }

    @Override
    public double strokesToHoleOut(Lie lie, Distance toHole) {
        if (lie == Lie.GREEN) {
            return near(table.putts(), toHole.feet());
        }
        if (lie == Lie.TEE) {
            return fromTee(toHole);
        }
        Curve curve = table.offGreen().get(lie);
        if (curve != null) {
            return near(curve, toHole.yards());
        }
        double beside = TOUR.strokesToHoleOut(lie, toHole) - TOUR.strokesToHoleOut(Lie.FAIRWAY, toHole);
        return strokesToHoleOut(Lie.FAIRWAY, toHole) + beside;
    }

    private double fromTee(Distance toHole) {
        BenchmarkTable.Hole at = hole;
        if (at == null) {
            return strokesToHoleOut(Lie.FAIRWAY, toHole);
        }
        Distance length = Distance.ofMetres(at.lengthMetres());
        return at.strokes() + strokesToHoleOut(Lie.FAIRWAY, toHole) - strokesToHoleOut(Lie.FAIRWAY, length);
    }

    /** Before the first point its value, at least 1; beyond the last along the line of the last two points. */
    private static double near(Curve curve, double x) {
        double value = x <= curve.first().at() ? curve.first().value() : curve.valueAt(x, 1);
        return Math.max(1, value);
    }

    @Override
    public boolean isPublished(Lie lie, Distance toHole) {
        if (lie == Lie.GREEN || (lie == Lie.TEE && hole != null)) {
            return true;
        }
        Curve curve = table.offGreen().get(lie == Lie.TEE ? Lie.FAIRWAY : lie);
        return curve != null && curve.covers(toHole.yards());
    }

    @Override
    public String name() {
        return table.name();
    }
}
