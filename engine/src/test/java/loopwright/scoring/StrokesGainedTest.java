package loopwright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import loopwright.scoring.StrokesGained.Gained;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Strokes gained by Broadie's definition (Interfaces 42(2), 2012): worked examples and the telescoping sum. */
class StrokesGainedTest {
    private static final double DEFINITION = 1e-12; // sums of a few numbers below 10
    private static final double TELESCOPE = 1e-9;

    private final TourBaseline tour = new TourBaseline();

    private static Stroke stroke(Lie lie, double yards, int penaltyStrokes) {
        return new Stroke(lie, Distance.ofYards(yards), penaltyStrokes);
    }

    private static double total(List<Gained> gains) {
        return gains.stream().mapToDouble(Gained::total).sum();
    }

    /** Broadie 2014, a par 4 of 350 yd: driver 250 yd, half in the fairway, or 3-wood 230 yd, 65 in 100. */
    @ParameterizedTest
    @CsvSource({"250, .50, 2.910", "230, .65, 2.9305"})
    void theWorkedExampleOfDriverAndThreeWood(double drive, double fairway, double expected) {
        Distance left = Distance.ofYards(350 - drive);
        double ours = fairway * tour.strokesToHoleOut(Lie.FAIRWAY, left)
                + (1 - fairway) * tour.strokesToHoleOut(Lie.ROUGH, left);
        assertThat(ours).isCloseTo(expected, within(DEFINITION));
    }

    /** Published examples: a holed 20-ft putt gains 0.87, a holed 3-ft putt 0.04 to 0.05. */
    @ParameterizedTest
    @CsvSource({"20, .865, .875", "3, .04, .05"})
    void aHoledPutt(double feet, double low, double high) {
        Stroke putt = new Stroke(Lie.GREEN, Distance.ofFeet(feet), 0);
        assertThat(StrokesGained.holedOut(tour, List.of(putt)).get(0).total()).isBetween(low, high + DEFINITION);
    }

    @Test
    void outOfBoundsCostsTwoStrokesWhateverTheBaseline() {
        List<Gained> gains = StrokesGained.holedOut(
                tour, List.of(stroke(Lie.TEE, 437, 1), stroke(Lie.TEE, 437, 0), stroke(Lie.FAIRWAY, 180, 0)));
        assertThat(gains.get(0).total()).isCloseTo(-2, within(DEFINITION));
        assertThat(gains.get(0).play()).isCloseTo(-1, within(DEFINITION));
        assertThat(gains.get(0).penalty()).isEqualTo(-1);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aHoleSumsToTheBaselineLessTheScore(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int hole = 0; hole < 200; hole++) {
            List<Stroke> strokes = randomHole(random);
            int score = strokes.size()
                    + strokes.stream().mapToInt(Stroke::penaltyStrokes).sum();
            double start = tour.strokesToHoleOut(Lie.TEE, strokes.get(0).toHole());
            assertThat(total(StrokesGained.holedOut(tour, strokes))).isCloseTo(start - score, within(TELESCOPE));
            assertThat(total(StrokesGained.ending(tour, strokes, 1.7)))
                    .isCloseTo(start - 1.7 - score, within(TELESCOPE));
        }
    }

    private static List<Stroke> randomHole(SplittableRandom random) {
        List<Stroke> out = new ArrayList<>(List.of(stroke(Lie.TEE, random.nextDouble(90, 650), random.nextInt(3))));
        Lie[] lies = Lie.values();
        for (int n = random.nextInt(12); n > 0; n--) {
            out.add(stroke(lies[random.nextInt(lies.length)], random.nextDouble(0, 700), random.nextInt(3)));
        }
        return out;
    }
}
