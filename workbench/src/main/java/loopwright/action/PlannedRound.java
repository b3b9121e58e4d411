package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import loopwright.player.DayEffect;
import loopwright.player.RoundDay;
import loopwright.player.StrikeModel;
import loopwright.putting.PuttingOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.DayAbility;
import loopwright.strategy.RoundScores;
import loopwright.strategy.ScoreDistribution;

/**
 * What all holes of a round share.
 *
 * @param days the ordinary day first, then the good and bad ones that stand for all
 * @param biasedDays those of them that are nothing but biased, left before right
 * @param simulatedDays a day for each round of the referee
 * @param keepsSolutions true if solved holes are needed after they were planned
 */
record PlannedRound(
        long seed,
        List<DayAbility> days,
        List<BiasedDay> biasedDays,
        List<StrikeModel> simulatedDays,
        boolean keepsSolutions) {
    private static final int REFEREE_ROUNDS = 2000;

    PlannedRound {
        days = List.copyOf(days);
        biasedDays = List.copyOf(biasedDays);
        simulatedDays = List.copyOf(simulatedDays);
    }

    static PlannedRound of(
            StrikeModel usual, DayEffect effect, PuttingOdds putting, long seed, boolean keepsSolutions) {
        List<DayAbility> days = new ArrayList<>();
        List<BiasedDay> biased = new ArrayList<>();
        for (RoundDay day : effect.days()) {
            Ability ability = new Ability(usual.on(day), putting, seed);
            days.add(new DayAbility(ability, day));
            if (day.biasRadians() != 0) {
                biased.add(new BiasedDay(ability, day.biasRadians()));
            }
        }
        return new PlannedRound(seed, days, biased, drawn(usual, effect, seed, REFEREE_ROUNDS), keepsSolutions);
    }

    /** The player on days drawn at random. */
    private static List<StrikeModel> drawn(StrikeModel usual, DayEffect effect, long seed, int rounds) {
        SplittableRandom random = new SplittableRandom(seed);
        List<StrikeModel> out = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            out.add(usual.on(effect.draw(random)));
        }
        return out;
    }

    /** More days of the same player. */
    List<StrikeModel> moreDays(DayEffect effect, int rounds) {
        return drawn(ordinary().strikes(), effect, seed, rounds);
    }

    /** A day on which all swings go aside by this much. */
    record BiasedDay(Ability ability, double biasRadians) {}

    Ability ordinary() {
        return days.get(0).ability();
    }

    double[] weights() {
        return days.stream().mapToDouble(DayAbility::weight).toArray();
    }

    /** What the round comes to over good and bad days; of each hole its score by day. */
    ScoreDistribution total(List<List<ScoreDistribution>> holes) {
        return RoundScores.over(days.stream().map(DayAbility::day).toList(), holes);
    }
}
