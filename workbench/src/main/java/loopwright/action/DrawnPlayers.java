package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import loopwright.numerics.NormalShare;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.SkillDoubt;
import loopwright.putting.LevelGreenOdds;
import loopwright.strategy.Ability;

/** The player of a round as he may be as well: the same draws for every question about a round of one seed. */
final class DrawnPlayers {
    static final int DRAWS = 24;

    private final RoundSetup setup;

    DrawnPlayers(RoundSetup setup) {
        this.setup = setup;
    }

    /** What is drawn depends on these alone. */
    record Key(Player player, PlanDay day, boolean hasHeights, long seed) {}

    Key key() {
        return new Key(
                setup.profile().player(),
                setup.day(),
                setup.course().heights().isPresent(),
                setup.round().seed());
    }

    List<Player> draw() {
        SkillDoubt doubt = new SkillDoubt(setup.profile().player());
        SplittableRandom random = new SplittableRandom(setup.round().seed());
        List<Player> out = new ArrayList<>();
        for (int i = 0; i < DRAWS; i++) {
            out.add(doubt.draw(random));
        }
        return out;
    }

    List<Ability> abilities() {
        return Cores.all(draw(), this::ability, Watch.NONE);
    }

    Ability ability(Player player) {
        LevelGreenOdds putting =
                player.putting().equals(setup.profile().player().putting())
                        ? (LevelGreenOdds) setup.round().ordinary().putting()
                        : new LevelGreenOdds(player.putting(), setup.day().greens());
        return new Ability(
                RoundSetup.strikes(player, setup.day(), setup.course()),
                putting,
                setup.round().seed());
    }

    /**
     * Probability that a choice is the better one for this player.
     *
     * @param costs of the other beside it for the drawn players, strokes; their differences are taken as normal
     */
    static double beats(List<Double> costs) {
        double mean = costs.stream().mapToDouble(c -> c).average().orElse(0);
        double square = costs.stream().mapToDouble(c -> (c - mean) * (c - mean)).sum();
        double sd = Math.sqrt(square / Math.max(1, costs.size() - 1));
        return NormalShare.below(mean / Math.max(1e-9, sd));
    }
}
