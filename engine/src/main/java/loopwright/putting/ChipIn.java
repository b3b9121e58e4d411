package loopwright.putting;

/**
 * Holing out from off the green. A running ball is captured if it crosses the hole, offset b from its centre, slower
 * than v(b) = 1.63 (1 - (b/R)^2) m/s with R = 0.054 m (Holmes 1991 as fitted in Penner 2002), that is, if it would
 * have come to rest within v^2/2a behind it. The places of rest that mean "holed" therefore cover the area
 * (16/15) R (1.63^2 / 2a); with a = 0.549 m/s^2 (a green of 10 ft) that is 0.139 m^2, here taken as a disc of the
 * same area round the hole.
 */
public final class ChipIn {
    /** A ball from off the green that would rest within this distance of the hole counts as holed. */
    public static final double RADIUS_METRES = Math.sqrt(16.0 / 15 * 0.054 * (1.63 * 1.63 / (2 * 0.549)) / Math.PI);

    private ChipIn() {}
}
