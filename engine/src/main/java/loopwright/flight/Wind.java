package loopwright.flight;

/**
 * The wind of a round, as a weather report gives it: at 10 m above open ground.
 *
 * @param speedMetresPerSecond mean speed at 10 m, 0 to 40
 * @param fromBearingRadians bearing the wind blows from, clockwise from north
 * @param gustSdMetresPerSecond standard deviation, from shot to shot, of the wind a ball meets along its flight, 0 to
 *     15
 */
public record Wind(double speedMetresPerSecond, double fromBearingRadians, double gustSdMetresPerSecond) {
    public static final Wind NONE = new Wind(0, 0, 0);

    /**
     * A reported gust is the highest three-second mean of ten minutes; it lies about three standard deviations above
     * the mean (peak factor 3: common practice, no source).
     */
    private static final double GUST_PEAK_FACTOR = 3;

    /** Deviation of a gust across the mean wind as a share of that along it: assumed. */
    static final double ACROSS_SHARE = 0.75;

    public Wind {
        if (!(speedMetresPerSecond >= 0 && speedMetresPerSecond <= 40)) {
            throw new IllegalArgumentException("wind speed lies between 0 and 40 m/s, not " + speedMetresPerSecond);
        }
        if (!Double.isFinite(fromBearingRadians)) {
            throw new IllegalArgumentException("a wind bearing must be finite, not " + fromBearingRadians);
        }
        if (!(gustSdMetresPerSecond >= 0 && gustSdMetresPerSecond <= 15)) {
            throw new IllegalArgumentException("gust spread lies between 0 and 15 m/s, not " + gustSdMetresPerSecond);
        }
    }

    public static Wind steady(double speedMetresPerSecond, double fromBearingRadians) {
        return new Wind(speedMetresPerSecond, fromBearingRadians, 0);
    }

    /** A wind with a reported gust speed; a gust no stronger than the mean means none. */
    public static Wind gusting(double speedMetresPerSecond, double fromBearingRadians, double gustMetresPerSecond) {
        double sd = Math.max(0, gustMetresPerSecond - speedMetresPerSecond) / GUST_PEAK_FACTOR;
        return new Wind(speedMetresPerSecond, fromBearingRadians, sd);
    }

    public boolean isStill() {
        return speedMetresPerSecond == 0;
    }

    /** The wind as a shot on this bearing meets it. */
    public Breeze along(double shotBearingRadians) {
        double angle = fromBearingRadians - shotBearingRadians;
        return new Breeze(-speedMetresPerSecond * Math.cos(angle), -speedMetresPerSecond * Math.sin(angle));
    }

    /** The gust that a report would give, {@code gusting}'s own; the mean wind where it is steady. */
    public double gustMetresPerSecond() {
        return speedMetresPerSecond + GUST_PEAK_FACTOR * gustSdMetresPerSecond;
    }

    public boolean isGusty() {
        return gustSdMetresPerSecond > 0 && !isStill();
    }

    /**
     * The wind of one shot, gust and all.
     *
     * @param gustAlong standard normal draw: stronger by so many deviations
     * @param gustAcross standard normal draw: from further right by so many deviations, across the wind
     */
    public Breeze along(double shotBearingRadians, double gustAlong, double gustAcross) {
        Breeze mean = along(shotBearingRadians);
        if (!isGusty()) {
            return mean;
        }
        double angle = fromBearingRadians - shotBearingRadians;
        double more = gustSdMetresPerSecond * gustAlong;
        double across = ACROSS_SHARE * gustSdMetresPerSecond * gustAcross;
        return mean.plus(
                -more * Math.cos(angle) + across * Math.sin(angle), -more * Math.sin(angle) - across * Math.cos(angle));
    }
}
