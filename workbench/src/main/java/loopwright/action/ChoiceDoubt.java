package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.StrikeModel;
import loopwright.strategy.Ability;
import loopwright.strategy.Advice;
import loopwright.strategy.TargetHole;

/**
 * How often a planned tee shot beats the next best while skill is known only so well: both are valued for the same drawn
 * players, and the differences are taken as normal.
 */
final class ChoiceDoubt {
    private final List<TargetHole> holes;
    private final List<Pair> pairs = new ArrayList<>();

    /** A tee shot and the next best by their numbers in {@code StrikeModel}. */
    private record Pair(int hole, RoundPlan.ShotPlan plan, int shot, RoundPlan.Alternative next, int nextShot) {}

    ChoiceDoubt(RoundPlan plan, List<TargetHole> holes, StrikeModel strikes) {
        this.holes = holes;
        for (int i = 0; i < holes.size(); i++) {
            int hole = i;
            RoundPlan.ShotPlan tee = plan.holes().get(i).shots().get(0);
            OptionalInt shot = number(tee.club(), strikes);
            if (!tee.alternatives().isEmpty() && shot.isPresent()) {
                RoundPlan.Alternative next = tee.alternatives().get(0);
                number(next.club(), strikes).ifPresent(n -> pairs.add(new Pair(hole, tee, shot.getAsInt(), next, n)));
            }
        }
    }

    private static OptionalInt number(String label, StrikeModel strikes) {
        for (int s = 0; s < strikes.shots(); s++) {
            if (strikes.label(s).equals(label)) {
                return OptionalInt.of(s);
            }
        }
        return OptionalInt.empty();
    }

    /** Cost of each next best beside the planned one for a player, strokes. */
    List<Double> costs(Ability player) {
        return pairs.stream().map(p -> cost(p, player)).toList();
    }

    private double cost(Pair p, Ability player) {
        TargetHole hole = holes.get(p.hole);
        Advice advice = new Advice(hole.mean(), hole.evaluation(), player);
        Advice.Rated planned = advice.rate(p.plan.from(), Surface.TEE, Situation.ORDINARY, p.shot, p.plan.aim());
        return advice.rate(p.plan.from(), Surface.TEE, Situation.ORDINARY, p.nextShot, p.next.aim())
                .costBeside(planned);
    }

    /** {@code drawn} holds the costs of one drawn player in each row. */
    List<HowSure.Beats> beats(RoundPlan plan, List<List<Double>> drawn) {
        List<HowSure.Beats> out = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            int pair = i;
            out.add(new HowSure.Beats(
                    plan.holes().get(pairs.get(i).hole).number(),
                    pairs.get(i).plan.club(),
                    pairs.get(i).next.club(),
                    DrawnPlayers.beats(drawn.stream().map(d -> d.get(pair)).toList())));
        }
        return out;
    }
}
