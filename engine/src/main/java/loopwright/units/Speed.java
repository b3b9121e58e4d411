package loopwright.units;

/** A speed; metres per second inside, zero or more. */
public record Speed(double metresPerSecond) {
    public static final double METRES_PER_SECOND_PER_MPH = 0.44704;

    public Speed {
        if (!(metresPerSecond >= 0 && metresPerSecond < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a speed must be zero or more, not " + metresPerSecond + " m/s");
        }
    }

    public static Speed ofMetresPerSecond(double metresPerSecond) {
        return new Speed(metresPerSecond);
    }

    public static Speed ofMilesPerHour(double milesPerHour) {
        return new Speed(milesPerHour * METRES_PER_SECOND_PER_MPH);
    }

    public double milesPerHour() {
        return metresPerSecond / METRES_PER_SECOND_PER_MPH;
    }
}
