package loopwright.units;

/** A length; metres inside. Any finite value, also negative (a side to the left, a drop). */
public record Distance(double metres) implements Comparable<Distance> {
    public static final double METRES_PER_YARD = 0.9144;
    public static final double METRES_PER_FOOT = 0.3048;
    public static final double METRES_PER_INCH = 0.0254;

    public Distance {
        if (!Double.isFinite(metres)) {
            throw new IllegalArgumentException("a distance must be finite, not " + metres + " m");
        }
    }

    public static Distance ofMetres(double metres) {
        return new Distance(metres);
    }

    public static Distance ofYards(double yards) {
        return new Distance(yards * METRES_PER_YARD);
    }

    public static Distance ofFeet(double feet) {
        return new Distance(feet * METRES_PER_FOOT);
    }

    public static Distance ofInches(double inches) {
        return new Distance(inches * METRES_PER_INCH);
    }

    public double yards() {
        return metres / METRES_PER_YARD;
    }

    public double feet() {
        return metres / METRES_PER_FOOT;
    }

    public double inches() {
        return metres / METRES_PER_INCH;
    }

    @Override
    public int compareTo(Distance other) {
        return Double.compare(metres, other.metres);
    }
}
