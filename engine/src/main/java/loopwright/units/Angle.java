package loopwright.units;

/** An angle; radians inside. Bearings run clockwise from north, shot directions are positive to the right. */
public record Angle(double radians) {
    public Angle {
        if (!Double.isFinite(radians)) {
            throw new IllegalArgumentException("an angle must be finite, not " + radians + " rad");
        }
    }

    public static Angle ofRadians(double radians) {
        return new Angle(radians);
    }

    public static Angle ofDegrees(double degrees) {
        return new Angle(Math.toRadians(degrees));
    }

    public double degrees() {
        return Math.toDegrees(radians);
    }
}
