package loopwright.putting;

/**
 * The slope of a putting green at any place of the course's local frame (x east, y north, metres). Slopes are rise over run,
 * positive where the ground rises towards east or north. Outside what was measured the nearest measured slope holds.
 */
public interface GreenSurface {
    double slopeEast(double x, double y);

    double slopeNorth(double x, double y);
}
