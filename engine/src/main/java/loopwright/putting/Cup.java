package loopwright.putting;

/**
 * The hole as a trap for a rolling ball: which offsets and speeds drop.
 *
 * <p>A ball whose path passes at offset b from the centre of the hole (radius R = 0.054 m) drops if its speed at the rim is
 * at most v(b) = 1.63 (1 - (b / R)^2) m/s: Holmes, "Putting: how a golf ball and hole interact", Am. J. Phys. 59 (1991)
 * 129-136, in the form fitted by Penner, "The physics of putting", Can. J. Phys. 80 (2002) 83-96. The rim's help is in the
 * number: pure free fall would hold only 1.31 m/s at the centre. A flagstick and a worn lip are not modelled; a ball that
 * does not drop is taken to roll on unchanged.
 */
public final class Cup {
    /** Half of 4.25 inches (Rules of Golf, Definitions: hole). */
    public static final double RADIUS_METRES = 0.054;

    /** Fastest speed that drops through the centre. */
    public static final double CENTRE_SPEED_METRES_PER_SECOND = 1.63;

    private Cup() {}

    /** The fastest rim speed that drops at an offset of the path from the centre; 0 at the rim and outside. */
    public static double maxSpeedMetresPerSecond(double offsetMetres) {
        double share = offsetMetres / RADIUS_METRES;
        return Math.max(0, CENTRE_SPEED_METRES_PER_SECOND * (1 - share * share));
    }

    /** Half the way across the hole at an offset: the path enters this far before its nearest point; 0 outside. */
    public static double halfChordMetres(double offsetMetres) {
        return Math.sqrt(Math.max(0, RADIUS_METRES * RADIUS_METRES - offsetMetres * offsetMetres));
    }

    /** The greatest offset that drops at a rim speed: b = R sqrt(1 - v / 1.63); 0 where none does. */
    public static double widestOffsetMetres(double speedMetresPerSecond) {
        return RADIUS_METRES * Math.sqrt(Math.max(0, 1 - speedMetresPerSecond / CENTRE_SPEED_METRES_PER_SECOND));
    }

    /**
     * Whether a ball drops that passes the centre at an offset with a square of the speed there: it must cross the rim,
     * and the rim speed, by 2 a times half the chord greater in the square, must not be too fast.
     */
    static boolean drops(double speedSquared, double deceleration, double offsetMetres) {
        if (offsetMetres >= RADIUS_METRES) {
            return false;
        }
        double rim = speedSquared + 2 * deceleration * halfChordMetres(offsetMetres);
        double most = maxSpeedMetresPerSecond(offsetMetres);
        return rim >= 0 && rim <= most * most;
    }
}
