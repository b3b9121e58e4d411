package loopwright.putting;

/**
 * A green that is one plane.
 *
 * @param east rise over run towards east, within 0.3 of level
 * @param north rise over run towards north, within 0.3 of level
 */
public record PlaneGreen(double east, double north) implements GreenSurface {
    public static final PlaneGreen LEVEL = new PlaneGreen(0, 0);

    public PlaneGreen {
        if (!(Math.hypot(east, north) <= 0.3)) {
            throw new IllegalArgumentException("a green's slope is at most 0.3, not " + Math.hypot(east, north));
        }
    }

    @Override
    public double slopeEast(double x, double y) {
        return east;
    }

    @Override
    public double slopeNorth(double x, double y) {
        return north;
    }
}
