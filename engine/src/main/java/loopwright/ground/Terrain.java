package loopwright.ground;

/** The ground around a landing place, in metres east and north of any fixed origin. */
public interface Terrain {
    Surface surfaceAt(double x, double y);

    /** Rise per metre to the east. */
    double slopeEastAt(double x, double y);

    /** Rise per metre to the north. */
    double slopeNorthAt(double x, double y);

    /** An endless plane of one surface. */
    static Terrain plane(Surface surface, double slopeEast, double slopeNorth) {
        return new Terrain() {
            @Override
            public Surface surfaceAt(double x, double y) {
                return surface;
            }

            @Override
            public double slopeEastAt(double x, double y) {
                return slopeEast;
            }

            @Override
            public double slopeNorthAt(double x, double y) {
                return slopeNorth;
            }
        };
    }
}
