package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import loopwright.numerics.Watch;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** 90 % intervals must hold the truth of nine players in ten: players drawn from the prior, balls from the players. */
class PatternFitCoverageTest {
    private static final Club SEVEN = ClubTable.find("7-iron").orElseThrow();
    private static final List<Club> BAG = List.of(SEVEN);

    @ParameterizedTest
    @ValueSource(ints = {30})
    void intervalsHoldTheTruthOfAShareOfThePlayers(int balls) {
        // 60 players: four standard deviations of a binomial of 0.9 are 0.155
        coverage(balls, 60).forEach((what, share) -> assertThat(share).as(what).isBetween(0.745, 1.0));
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(ints = {6, 30, 100})
    void intervalsHoldTheTruthOfNineInTenPlayers(int balls) {
        Map<String, Double> shares = coverage(balls, 1000);
        System.out.println(balls + " balls: " + shares);
        shares.forEach((what, share) -> assertThat(share).as(what).isBetween(0.87, 0.93));
    }

    private static Map<String, Double> coverage(int balls, int players) {
        Map<String, Double> held = new TreeMap<>();
        for (int i = 0; i < players; i++) {
            SplittableRandom random = new SplittableRandom(1000 + i);
            SyntheticPlayer player = new SyntheticPlayer(SEVEN, 75 + 40 * random.nextDouble(), random);
            ShotLog log = ShotLog.ofShots(player.balls(SEVEN, balls, random));
            FittedPlayer fitted = PatternFit.fit(
                    "p", player.prior.withBag(BAG), log, new FitOptions(180, List.of(), 1200), i, Watch.NONE);
            count(held, fitted.reports().get(0), player.truth, 1.0 / players);
        }
        return held;
    }

    private static void count(Map<String, Double> held, SwingReport r, ShotPattern truth, double share) {
        add(held, "carry", r.carry(), truth.carryMetres(), share);
        add(held, "bias", r.bias(), truth.directionRadians(), share);
        add(held, "8 in 10", r.eightInTen(), PatternWidth.metres(truth, 0.8), share);
        add(held, "19 in 20", r.nineteenInTwenty(), PatternWidth.metres(truth, 0.95), share);
        add(held, "mishits", r.mishitRate(), truth.mishitRate(), share);
    }

    private static void add(Map<String, Double> held, String what, Interval interval, double truth, double share) {
        held.merge(what, interval.holds(truth) ? share : 0, Double::sum);
    }
}
