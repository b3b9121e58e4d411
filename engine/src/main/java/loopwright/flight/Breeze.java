package loopwright.flight;

/**
 * The wind at 10 m as seen along a shot: positive forward helps, positive right pushes to the right.
 */
public record Breeze(double forwardMetresPerSecond, double rightMetresPerSecond) {
    public static final Breeze NONE = new Breeze(0, 0);

    public Breeze {
        if (!Double.isFinite(forwardMetresPerSecond) || !Double.isFinite(rightMetresPerSecond)) {
            throw new IllegalArgumentException("a breeze must be finite");
        }
    }

    public Breeze plus(double moreForward, double moreRight) {
        return new Breeze(forwardMetresPerSecond + moreForward, rightMetresPerSecond + moreRight);
    }
}
