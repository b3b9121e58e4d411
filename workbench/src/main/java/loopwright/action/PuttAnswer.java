package loopwright.action;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one putt asks for and brings; the component names are the keys of {@code docs/schema/putt.schema.json}.
 *
 * @param aimInches where the start line passes the hole, from its centre, + right; none where the slope was not measured
 * @param aimOutsideInches the same from the nearer edge of the hole: 0 inside the hole
 * @param startDegrees start direction from the line ball to hole, + right
 * @param breakInches how far the ball turns off its start line by the hole, 0 or more
 * @param paceFeetPast how far past the hole the ball would stop if the hole were covered; negative: short
 * @param slopeMeasured false: the odds are those of an average green, and no break is claimed
 */
public record PuttAnswer(
        double distanceFeet,
        double greenSpeedFeet,
        boolean slopeMeasured,
        @Nullable Double uphillPercent,
        @Nullable Double fallsRightPercent,
        @Nullable Double aimInches,
        @Nullable Double aimOutsideInches,
        @Nullable Double startDegrees,
        @Nullable Double breakInches,
        double paceFeetPast,
        Odds odds,
        double expectedPutts,
        Leave leave,
        List<Pace> paces,
        Skill skill,
        String note) {
    /** Said on every answer. */
    public static final String NOTE =
            "For preparation and review: Rule 4.3a does not allow a device's line or read of your ball during a round.";

    public PuttAnswer {
        paces = List.copyOf(paces);
    }

    /** Chances of one, two, and three or more putts; together 1. */
    public record Odds(double one, double two, double threeOrMore) {}

    /**
     * Where the misses stop.
     *
     * @param meanFeet mean distance left
     * @param pastFeet mean place past the hole along the putt, where known
     * @param rightFeet mean place right of it, where known
     */
    public record Leave(
            double meanFeet,
            @Nullable Double pastFeet,
            @Nullable Double rightFeet) {}

    /** One of the paces that were weighed, its line through the centre of the hole. */
    public record Pace(double paceFeetPast, @Nullable Double aimInches, double one, double expectedPutts) {}

    /** The player's three spreads. */
    public record Skill(String from, double startLineDegrees, double pacePercent, double readingPercent, int putts) {}
}
