package loopwright.ground;

/**
 * The motion of one ball on the ground: place (east, north), velocity, the ground's normal under it, and c, the
 * velocity that spin alone gives the ball's underside (backspin: along the travel). Mutable and reused; one per thread.
 */
public final class RunWorkspace {
    double x;
    double y;
    double vx;
    double vy;
    double vz;
    double nx;
    double ny;
    double nz;
    double cx;
    double cy;
    double cz;
    int bounces;

    /** Metres east of where the ball came down. */
    public double east() {
        return x;
    }

    /** Metres north of where the ball came down. */
    public double north() {
        return y;
    }

    /** Number of times the ball touched the ground before it rolled. */
    public int bounces() {
        return bounces;
    }

    void ground(double slopeEast, double slopeNorth) {
        double size = Math.sqrt(1 + slopeEast * slopeEast + slopeNorth * slopeNorth);
        nx = -slopeEast / size;
        ny = -slopeNorth / size;
        nz = 1 / size;
    }
}
