package loopwright.practice;

/**
 * Where a ball scores.
 *
 * @param kind shape
 * @param metres its size: a radius, a width, or how far from the spot
 * @param depthMetres of a half green, front to back; else 0
 */
public record Zone(Kind kind, double metres, double depthMetres) {
    /** A drive that goes less of its usual length than this has not been hit. */
    static final double LEAST_DRIVE = 0.6;
    /** A bunker shot that goes less of its way than this is still in the sand. */
    static final double OUT_OF_SAND = 0.4;

    /** Shapes. */
    public enum Kind {
        /** At rest within a radius of the target. */
        INSIDE,
        /** At rest within a corridor of this width along the line, past a marker at six tenths of the usual length. */
        CORRIDOR,
        /** Landed within so far of the spot, long or short and aside. */
        LANDS,
        /** At rest on a rectangle of this width and depth round the aim, such as the safe half of a green. */
        HALF,
        /** Out of the sand. */
        OUT
    }

    public Zone {
        if (!(metres > 0 && metres <= 200) || !(depthMetres >= 0 && depthMetres <= 200)) {
            throw new IllegalArgumentException("a zone is above 0 and up to 200 m");
        }
    }

    public static Zone inside(double radiusMetres) {
        return new Zone(Kind.INSIDE, radiusMetres, 0);
    }

    public static Zone corridor(double widthMetres) {
        return new Zone(Kind.CORRIDOR, widthMetres, 0);
    }

    public static Zone lands(double metres) {
        return new Zone(Kind.LANDS, metres, 0);
    }

    public static Zone half(double widthMetres, double depthMetres) {
        return new Zone(Kind.HALF, widthMetres, depthMetres);
    }

    public static Zone out() {
        return new Zone(Kind.OUT, 1, 0);
    }

    boolean isOfLanding() {
        return kind == Kind.LANDS;
    }

    /** Greatest angle off the line, either side, at which a ball that goes {@code gone} scores; below 0: none does. */
    double widest(double gone, double target) {
        return switch (kind) {
            case INSIDE, LANDS -> ofCircle(gone, target);
            case CORRIDOR -> gone < LEAST_DRIVE * target ? -1 : Math.asin(Math.min(1, metres / 2 / gone));
            case HALF ->
                gone < target - depthMetres / 2
                        ? -1
                        : Math.min(
                                Math.asin(Math.min(1, metres / 2 / gone)),
                                Math.acos(Math.min(1, Math.max(-1, (target - depthMetres / 2) / gone))));
            case OUT -> gone < OUT_OF_SAND * target ? -1 : Math.PI;
        };
    }

    /** Least angle off the line, where going straight on would be too far; 0 mostly. */
    double narrowest(double gone, double target) {
        return kind == Kind.HALF && gone > target + depthMetres / 2 ? Math.acos((target + depthMetres / 2) / gone) : 0;
    }

    private double ofCircle(double gone, double target) {
        if (!(gone > 0)) {
            return -1;
        }
        double cos = (gone * gone + target * target - metres * metres) / (2 * gone * target);
        return cos >= 1 ? -1 : Math.acos(Math.max(-1, cos));
    }
}
