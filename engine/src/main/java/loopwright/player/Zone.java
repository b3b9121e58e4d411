package loopwright.player;

import java.util.Optional;

/**
 * Where counted balls came to rest, as far as the counter could tell: a strip of length and side, or a kind of mishit.
 *
 * @param measure whether the lengths are carry or total
 * @param shortestMetres no shorter than this, may be -infinity
 * @param longestMetres no longer than this, may be +infinity
 * @param leftMetres side no further left than this (+ right), may be -infinity
 * @param rightMetres side no further right than this, may be +infinity
 * @param kind named kind of mishit: the ball is one of these, wherever it went
 */
public record Zone(
        Measure measure,
        double shortestMetres,
        double longestMetres,
        double leftMetres,
        double rightMetres,
        Optional<Mishit.Kind> kind) {

    /** Which length is meant. */
    public enum Measure {
        CARRY,
        TOTAL
    }

    /** A ball within 5 yd of a flag's distance counts as level with it (assumed). */
    public static final double LEVEL_METRES = 4.572;

    private static final double INF = Double.POSITIVE_INFINITY;

    public Zone {
        if (!(shortestMetres < longestMetres && leftMetres < rightMetres)) {
            throw new IllegalArgumentException("a zone needs shortest < longest and left < right");
        }
    }

    /** Within a strip this wide about the line, however long. */
    public static Zone inside(double widthMetres) {
        return new Zone(Measure.CARRY, -INF, INF, -widthMetres / 2, widthMetres / 2, Optional.empty());
    }

    /** Left of the strip. */
    public static Zone leftOf(double widthMetres) {
        return new Zone(Measure.CARRY, -INF, INF, -INF, -widthMetres / 2, Optional.empty());
    }

    /** Right of the strip. */
    public static Zone rightOf(double widthMetres) {
        return new Zone(Measure.CARRY, -INF, INF, widthMetres / 2, INF, Optional.empty());
    }

    /** Between two lengths, wherever to the side. */
    public static Zone between(Measure measure, double shortestMetres, double longestMetres) {
        return new Zone(measure, shortestMetres, longestMetres, -INF, INF, Optional.empty());
    }

    /** Short of a flag at this distance by more than {@value #LEVEL_METRES} m, run included. */
    public static Zone shortOf(double flagMetres) {
        return between(Measure.TOTAL, -INF, flagMetres - LEVEL_METRES);
    }

    /** Level with a flag. */
    public static Zone level(double flagMetres) {
        return between(Measure.TOTAL, flagMetres - LEVEL_METRES, flagMetres + LEVEL_METRES);
    }

    /** Past a flag. */
    public static Zone longOf(double flagMetres) {
        return between(Measure.TOTAL, flagMetres + LEVEL_METRES, INF);
    }

    public static Zone mishit(Mishit.Kind kind) {
        return new Zone(Measure.CARRY, -INF, INF, -INF, INF, Optional.of(kind));
    }

    public boolean holds(double lengthMetres, double sideMetres) {
        return lengthMetres >= shortestMetres
                && lengthMetres <= longestMetres
                && sideMetres >= leftMetres
                && sideMetres <= rightMetres;
    }
}
