package loopwright.putting;

/**
 * Places round a hole: rings at growing distances, equal bearings on each. Close to the hole they are close together, as
 * putts need it. Node 0 is the hole itself.
 */
public final class PolarNodes {
    /** The first ring outside the hole. */
    static final double NEAREST_METRES = 0.15;

    private static final double[] RINGS = {
        Cup.RADIUS_METRES,
        NEAREST_METRES,
        0.25,
        0.35,
        0.45,
        0.6,
        0.75,
        0.9,
        1.1,
        1.3,
        1.55,
        1.85,
        2.2,
        2.6,
        3.2,
        4,
        5,
        6.5,
        8.5,
        11,
        14.5,
        19,
        25,
        33,
        43
    };
    static final int BEARINGS = 20;
    static final int COUNT = 1 + RINGS.length * BEARINGS;

    private final double holeX;
    private final double holeY;

    PolarNodes(double holeX, double holeY) {
        this.holeX = holeX;
        this.holeY = holeY;
    }

    public int count() {
        return COUNT;
    }

    public double x(int node) {
        return holeX + metres(node) * Math.sin(bearing(node));
    }

    public double y(int node) {
        return holeY + metres(node) * Math.cos(bearing(node));
    }

    /** Distance of a place from the hole. */
    double metresTo(double x, double y) {
        return Math.sqrt((x - holeX) * (x - holeX) + (y - holeY) * (y - holeY));
    }

    /** Distance of a node from the hole. */
    public double metres(int node) {
        return node == 0 ? 0 : RINGS[(node - 1) / BEARINGS];
    }

    private static double bearing(int node) {
        return node == 0 ? 0 : 2 * Math.PI * ((node - 1) % BEARINGS) / BEARINGS;
    }

    /** What is done with a node and its share of a place. */
    @FunctionalInterface
    interface Visitor {
        void visit(int node, double share);
    }

    /**
     * Shares a place among the (at most four) nodes about it, linear in distance and bearing; the outermost ring holds
     * all beyond.
     */
    void share(double x, double y, Visitor visitor) {
        double east = x - holeX;
        double north = y - holeY;
        double metres = Math.sqrt(east * east + north * north);
        double turn = Math.atan2(east, north) / (2 * Math.PI) * BEARINGS;
        if (turn < 0) {
            turn += BEARINGS;
        }
        int left = Math.min((int) turn, BEARINGS - 1);
        double right = turn - left;
        int outer = ring(metres);
        double inner = outer == 0 ? 0 : RINGS[outer - 1];
        double out = Math.min(1, (metres - inner) / (RINGS[outer] - inner));
        ring(outer - 1, 1 - out, left, right, visitor);
        ring(outer, out, left, right, visitor);
    }

    private static void ring(int ring, double weight, int left, double right, Visitor visitor) {
        if (ring < 0) {
            visitor.visit(0, weight);
            return;
        }
        int first = 1 + ring * BEARINGS;
        visitor.visit(first + left, weight * (1 - right));
        visitor.visit(first + (left + 1) % BEARINGS, weight * right);
    }

    /** The first ring at least as far as a distance. */
    private static int ring(double metres) {
        int ring = 0;
        while (ring < RINGS.length - 1 && RINGS[ring] < metres) {
            ring++;
        }
        return ring;
    }
}
