package loopwright.player;

/**
 * What is known of one swing, each value with its 90 % interval.
 *
 * @param carry mean solid carry, metres
 * @param total mean solid total, metres
 * @param bias mean solid direction, radians, + right
 * @param eightInTen width in metres that holds the middle 8 of 10 balls where they land, mishits included
 * @param nineteenInTwenty the same for 19 of 20
 * @param mishitRate share of mishits
 */
public record SwingReport(
        Swing swing,
        Interval carry,
        Interval total,
        Interval bias,
        Interval eightInTen,
        Interval nineteenInTwenty,
        Interval mishitRate) {

    /** The 8-in-10 width as a share of the carry. */
    public double eightInTenShare() {
        return eightInTen.middle() / carry.middle();
    }
}
