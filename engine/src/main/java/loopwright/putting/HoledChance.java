package loopwright.putting;

/**
 * The chance that {@link LevelPutt} drops from one distance at one pace: over each start direction that meets the hole the
 * rolls that drop are one interval, whose probability is a difference of normal distribution functions; over the
 * directions twelve Gauss-Legendre points up to the rim or five standard deviations (error under 1e-6).
 */
public final class HoledChance {
    static final double DEVIATIONS = 5;

    private HoledChance() {}

    public static double of(LevelPutt putt, double metres, double overshootMetres) {
        if (metres <= Cup.RADIUS_METRES) {
            return 1;
        }
        double s = putt.directionSdRadians();
        double last = Math.min(DEVIATIONS * s, Math.asin(Cup.RADIUS_METRES / metres));
        double mean = metres + overshootMetres;
        double[] sum = new double[1];
        Panel.forEach(0, last, (angle, width) -> {
            double rim = LevelPutt.rimMetres(metres, angle);
            double top = rim + putt.windowMetres(metres, angle);
            sum[0] += 2
                    * width
                    * NormalLaw.density(angle / s)
                    / s
                    * NormalLaw.between(rim, top, mean, putt.paceSd() * mean);
        });
        return Math.min(1, sum[0]);
    }
}
