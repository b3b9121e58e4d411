package loopwright.action;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a plan is asked for.
 *
 * @param tees name of a set, or back, middle, forward
 * @param target total to stay at or below, 36 to 150 for eighteen holes, or Stableford points to reach
 * @param counting how the round is counted
 * @param forTarget true to solve the round for the target as well
 * @param howSure true to carry the doubt about the player's skill through to the numbers
 * @param holes "1-18", "1-9", "3,5,7"; empty: all
 * @param startHole number of the hole to begin with, the others following in their order; 0: the first
 * @param holeLocations "7:12,5": on hole 7 twelve paces from the front, five from the left edge
 * @param forbid "hole 1: driver"
 * @param require "hole 1: 3-wood" for the tee shot
 * @param days what to plan for: the first is the plan, others are set beside it; at least one
 * @param today what is known of the day beside its weather
 * @param seed of every draw
 */
public record PlanRequest(
        Path course,
        Path player,
        String tees,
        int target,
        Counting counting,
        boolean forTarget,
        boolean howSure,
        String holes,
        int startHole,
        List<String> holeLocations,
        List<String> forbid,
        List<String> require,
        List<PlanDay> days,
        TodayRequest today,
        long seed,
        Optional<Path> pictures,
        Optional<Path> audit) {
    /** Play for the fewest strokes on the usual day, counted in strokes. */
    public static PlanRequest usual(
            Path course,
            Path player,
            String tees,
            int target,
            String holes,
            List<String> holeLocations,
            List<String> forbid,
            List<String> require,
            long seed) {
        return new PlanRequest(
                course,
                player,
                tees,
                target,
                Counting.STROKES,
                false,
                false,
                holes,
                0,
                holeLocations,
                forbid,
                require,
                List.of(PlanDay.USUAL),
                TodayRequest.USUAL,
                seed,
                Optional.empty(),
                Optional.empty());
    }

    public PlanRequest {
        holeLocations = List.copyOf(holeLocations);
        forbid = List.copyOf(forbid);
        require = List.copyOf(require);
        days = List.copyOf(days);
        if (days.isEmpty()) {
            throw new IllegalArgumentException("a plan is made for a day");
        }
    }

    /** The same with other draws. */
    PlanRequest withSeed(long other) {
        return with(holeLocations, today, other);
    }

    /** The same with other hole locations. */
    PlanRequest withHoleLocations(List<String> others) {
        return with(others, today, seed);
    }

    /** The same for somebody else: the dial turns for everyone, the warm-up's balls are the player's own. */
    PlanRequest withoutBalls() {
        return with(holeLocations, today.withoutBalls(), seed);
    }

    private PlanRequest with(List<String> locations, TodayRequest known, long draws) {
        return new PlanRequest(
                course, player, tees, target, counting, forTarget, howSure, holes, startHole, locations, forbid,
                require, days, known, draws, pictures, audit);
    }
}
