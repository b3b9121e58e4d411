package loopwright.player;

/**
 * One full swing on the course whose aim was noted, as far as the day is learned from it.
 *
 * @param offAimRadians direction of the finish beside the aim less the pattern's bias, + right
 * @param pattern of the club as it is planned with
 */
public record CourseSwing(double offAimRadians, ShotPattern pattern) {
    public CourseSwing {
        if (!(Math.abs(offAimRadians) < Math.PI)) {
            throw new IllegalArgumentException("a swing finishes before the player, not at " + offAimRadians + " rad");
        }
    }
}
