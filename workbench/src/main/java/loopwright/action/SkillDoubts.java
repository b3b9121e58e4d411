package loopwright.action;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.numerics.DrawnBand;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.SkillDoubt;
import loopwright.player.StrikeModel;
import loopwright.player.Swing;
import loopwright.strategy.Ability;
import loopwright.strategy.ScoreDistribution;
import loopwright.strategy.TargetHole;

/**
 * Carries what is not known of the player's skill through to the plan: the plan stays what it is and is valued for the
 * player as he may be as well. On a log-odds scale the chance of the target moves on the ordinary day as it does over good
 * and bad days.
 */
final class SkillDoubts {
    private static final int MOST_SWINGS = 4;

    private final RoundSetup setup;
    private final List<TargetHole> holes;
    private final SkillDoubt doubt;
    private final DrawnPlayers drawn;
    private final Watch watch;

    SkillDoubts(RoundSetup setup, List<TargetHole> holes, Watch watch) {
        this.setup = setup;
        this.holes = holes;
        this.watch = watch;
        doubt = new SkillDoubt(setup.profile().player());
        drawn = new DrawnPlayers(setup);
    }

    /** {@code usual} is what the round counts on the ordinary day, {@code plan} averaged over the days. */
    HowSure of(RoundPlan plan, ScoreDistribution usual) {
        int limit = plan.counting().limit(plan.target());
        ChoiceDoubt choices =
                new ChoiceDoubt(plan, holes, setup.round().ordinary().strikes());
        List<Valued> valued = Cores.all(drawn.draw(), p -> valued(p, choices), watch);
        List<ScoreDistribution> rounds = valued.stream().map(Valued::round).toList();
        DrawnBand shift = DrawnBand.of(
                rounds.stream().mapToDouble(d -> d.mean() - usual.mean()).toArray());
        double base = logOdds(usual.probabilityAtMost(limit));
        DrawnBand odds = DrawnBand.of(rounds.stream()
                .mapToDouble(d -> logOdds(d.probabilityAtMost(limit)) - base)
                .toArray());
        double middle = logOdds(plan.targetProbability());
        return new HowSure(
                DrawnPlayers.DRAWS,
                plan.total().mean() + shift.low(),
                plan.total().mean() + shift.high(),
                chance(middle + odds.low()),
                chance(middle + odds.high()),
                measureNext(plan, usual),
                assumed(plan),
                choices.beats(plan, valued.stream().map(Valued::costs).toList()));
    }

    /** The plan for one drawn player: what the round counts, and what the next best tee shots cost. */
    private record Valued(ScoreDistribution round, List<Double> costs) {}

    private Valued valued(Player player, ChoiceDoubt choices) {
        Ability ability = drawn.ability(player);
        return new Valued(round(ability), choices.costs(ability));
    }

    private ScoreDistribution round(Ability ability) {
        List<ScoreDistribution> counted = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            counted.add(ScoreDistribution.of(0, holes.get(i).evaluation().scoresWith(ability, watch.withoutProgress()))
                    .countedBy(setup.tables().get(i)));
            holes.get(i).mean().forgetTrees();
        }
        return ScoreDistribution.sumOf(counted);
    }

    private Optional<HowSure.Measure> measureNext(RoundPlan plan, ScoreDistribution usual) {
        Map<String, Integer> uses = uses(plan);
        List<Swing> swings = setup.profile().player().swings().stream()
                .filter(s -> uses.containsKey(s.label()))
                .sorted(Comparator.comparingDouble((Swing s) -> uses.getOrDefault(s.label(), 0) * doubt.logSpreadSd(s))
                        .reversed())
                .limit(MOST_SWINGS)
                .toList();
        List<ScoreDistribution> wider =
                Cores.all(swings, s -> round(drawn.ability(doubt.wider(s))), watch.withoutProgress());
        Optional<HowSure.Measure> best = Optional.empty();
        for (int i = 0; i < swings.size(); i++) {
            double strokes = Math.abs(wider.get(i).mean() - usual.mean());
            if (best.isEmpty() || strokes > best.get().strokes()) {
                best = Optional.of(new HowSure.Measure(swings.get(i).label(), strokes));
            }
        }
        return best;
    }

    private List<String> assumed(RoundPlan plan) {
        Map<String, Integer> uses = uses(plan);
        List<String> out = new ArrayList<>();
        setup.profile().player().swings().stream()
                .filter(s -> s.evidence().isMostlyAssumed())
                .map(Swing::label)
                .filter(uses::containsKey)
                .forEach(out::add);
        StrikeModel strikes = setup.round().ordinary().strikes();
        for (int s = 0; s < strikes.shots(); s++) {
            if (strikes.isTouch(s)
                    && strikes.touch(s).evidence().isMostlyAssumed()
                    && uses.containsKey(strikes.label(s))) {
                out.add(strikes.label(s));
            }
        }
        return out;
    }

    private static Map<String, Integer> uses(RoundPlan plan) {
        Map<String, Integer> out = new LinkedHashMap<>();
        plan.holes().forEach(h -> h.shots().forEach(s -> out.merge(s.club(), 1, Integer::sum)));
        return out;
    }

    private static double logOdds(double p) {
        double held = Math.max(1e-9, Math.min(1 - 1e-9, p));
        return Math.log(held / (1 - held));
    }

    private static double chance(double logOdds) {
        return 1 / (1 + Math.exp(-logOdds));
    }
}
