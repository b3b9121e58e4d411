package loopwright.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import loopwright.player.DayEffect;
import loopwright.player.RoundDay;
import org.junit.jupiter.api.Test;

class RoundScoresTest {
    private static final double ROUNDING = 1e-12;
    private static final List<RoundDay> DAYS = DayEffect.ASSUMED.days();
    private static final double SQRT3 = Math.sqrt(3);
    /** A rule of three points for a normal law, exact up to the fifth degree; together they make nine days. */
    private static final double[] OFF = {-SQRT3, 0, SQRT3};

    private static final double[] WEIGHT = {1.0 / 6, 2.0 / 3, 1.0 / 6};

    /** A hole on which bias (in standard deviations) costs the square of it and spread costs straight: they add up. */
    private static ScoreDistribution hole(double bias, double spread) {
        double worse = 0.03 * bias * bias + 0.05 * spread;
        return ScoreDistribution.of(3, 0.2 - worse / 2, 0.5 - worse / 2, 0.3 + worse);
    }

    private static List<ScoreDistribution> byDay() {
        List<ScoreDistribution> out = new ArrayList<>();
        for (RoundDay day : DAYS) {
            out.add(hole(
                    day.biasRadians() / DayEffect.ASSUMED.directionSdRadians(),
                    Math.log(day.spread()) / DayEffect.ASSUMED.logSpreadSd()));
        }
        return out;
    }

    /** Every one of the nine days played out by itself. */
    private static ScoreDistribution nineDays(int holes) {
        List<ScoreDistribution> rounds = new ArrayList<>();
        double[] weights = new double[9];
        for (int b = 0; b < 3; b++) {
            for (int s = 0; s < 3; s++) {
                weights[rounds.size()] = WEIGHT[b] * WEIGHT[s];
                rounds.add(hole(OFF[b], OFF[s]).repeated(holes));
            }
        }
        return ScoreDistribution.mixtureOf(rounds, weights);
    }

    @Test
    void fiveDaysOfEighteenHolesTellWhatNineWould() {
        ScoreDistribution nine = nineDays(18);

        ScoreDistribution total = RoundScores.over(DAYS, Collections.nCopies(18, byDay()));

        for (int score = nine.lowest(); score <= nine.highest(); score++) {
            assertThat(total.probability(score)).isCloseTo(nine.probability(score), within(ROUNDING));
        }
    }

    /** The mixture of five rounds misses by more than a thousandth on the same holes. */
    @Test
    void theDaysOnWhichBothMeetCount() {
        List<ScoreDistribution> rounds =
                byDay().stream().map(d -> d.repeated(18)).toList();
        double[] weights = DAYS.stream().mapToDouble(RoundDay::weight).toArray();
        int limit = (int) nineDays(18).mean();

        double five = ScoreDistribution.mixtureOf(rounds, weights).probabilityAtMost(limit);

        assertThat(Math.abs(five - nineDays(18).probabilityAtMost(limit))).isGreaterThan(0.001);
    }

    @Test
    void oneHoleIsTheMixtureOfItsDays() {
        double[] weights = DAYS.stream().mapToDouble(RoundDay::weight).toArray();
        ScoreDistribution mixture = ScoreDistribution.mixtureOf(byDay(), weights);

        ScoreDistribution total = RoundScores.over(DAYS, List.of(byDay()));

        for (int score = 3; score <= 5; score++) {
            assertThat(total.probability(score)).isCloseTo(mixture.probability(score), within(ROUNDING));
        }
    }

    @Test
    void withoutGoodAndBadDaysHolesAreIndependent() {
        ScoreDistribution hole = hole(0, 0);

        ScoreDistribution total = RoundScores.over(List.of(RoundDay.ORDINARY), Collections.nCopies(9, List.of(hole)));

        assertThat(total.mean()).isCloseTo(9 * hole.mean(), within(ROUNDING));
        assertThat(total.variance()).isCloseTo(9 * hole.variance(), within(1e-9)); // squares of some 40
    }
}
