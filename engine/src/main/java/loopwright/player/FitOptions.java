package loopwright.player;

import java.util.List;

/**
 * How old balls count and how long the fit works.
 *
 * @param halfLifeDays a ball this old counts half, above 0
 * @param breakAgesDays ages of dated breaks (new clubs, a swing change): older balls count {@link #BREAK_WEIGHT} of that
 * @param sweeps of the sampler that are kept, 0: chosen by the number of balls
 */
public record FitOptions(double halfLifeDays, List<Double> breakAgesDays, int sweeps) {
    /** Assumed: half a year, no break. */
    public static final FitOptions DEFAULT = new FitOptions(180, List.of(), 0);

    /** Assumed: what is left of a ball's weight behind a break. */
    static final double BREAK_WEIGHT = 0.2;

    public FitOptions {
        breakAgesDays = List.copyOf(breakAgesDays);
        if (!(halfLifeDays > 0) || sweeps < 0) {
            throw new IllegalArgumentException("a half-life is above zero days and sweeps are zero or more");
        }
    }

    public FitOptions withBreaks(List<Double> agesDays) {
        return new FitOptions(halfLifeDays, agesDays, sweeps);
    }

    double weight(double ageDays) {
        double weight = Math.pow(0.5, ageDays / halfLifeDays);
        for (double age : breakAgesDays) {
            if (ageDays > age) {
                weight *= BREAK_WEIGHT;
            }
        }
        return weight;
    }
}
