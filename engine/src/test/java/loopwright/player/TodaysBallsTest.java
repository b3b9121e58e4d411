package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class TodaysBallsTest {
    /** A swing without mishits, whose formulas can be written down. */
    private static final Swing PLAIN = new Swing(
            ClubTable.DRIVER,
            Swing.FULL,
            new ShotPattern(200, 10, Math.toRadians(1), Math.toRadians(5), 0, 20, 25, 0.7, List.of()),
            Evidence.ASSUMED);

    private static final DayEffect DAY = new DayEffect(Math.toRadians(1.5), 0.1);

    private static TodaysBalls.Ball at(double degrees) {
        return new TodaysBalls.Ball(PLAIN, 220 * Math.tan(Math.toRadians(degrees)), OptionalDouble.empty());
    }

    private static TodaysBalls.Reading read(double... degrees) {
        return TodaysBalls.read(
                DoubleStream.of(degrees).mapToObj(TodaysBallsTest::at).toList(), DAY);
    }

    @Test
    void threeBallsMoveTheAimByWhatTheFormulaSays() {
        // 1 degree is the player's own; 3 x 6 right of it. Weight of the balls: 3 / 25 against 1 / 2.25.
        TodaysBalls.Reading r = read(7, 7, 7);
        double taken = (3 / 25.0) / (3 / 25.0 + 1 / 2.25);
        assertThat(r.taken()).isCloseTo(taken, within(1e-12));
        assertThat(Math.toDegrees(r.day().biasRadians())).isCloseTo(6 * taken, within(1e-9));
        assertThat(Math.toDegrees(r.seenRadians())).isCloseTo(6, within(1e-9));
        // S = sum of squares less what the bias explains: 3 x 36 / 25 - 6^2 taken^2 (3/25 + 1/2.25)
        double s = 3 * 36 / 25.0 - 36 * taken * taken * (3 / 25.0 + 1 / 2.25);
        assertThat(r.day().spread()).isCloseTo(Math.sqrt((48 + s) / 51), within(1e-9));
    }

    @Test
    void ballsOfClubsThatScatterUnlikeAreTakenByAShareOfWhatIsSeen() {
        Swing tight = new Swing(
                ClubTable.find("7-iron").orElseThrow(),
                Swing.FULL,
                new ShotPattern(140, 6, 0, Math.toRadians(2), 0, 20, 25, 0.7, List.of()),
                Evidence.ASSUMED);
        // One ball far right with the wide club, one a little left with the tight one: what counts lies left.
        TodaysBalls.Reading r = TodaysBalls.read(
                List.of(at(7), new TodaysBalls.Ball(tight, -140 * Math.tan(Math.toRadians(2)), OptionalDouble.empty())),
                DAY);
        assertThat(r.seenRadians()).isNegative();
        assertThat(r.day().biasRadians()).isNegative();
        // weights of the balls, 1/25 and 1/4, against 1/2.25 for the day
        assertThat(r.taken()).isCloseTo(0.29 / (0.29 + 1 / 2.25), within(1e-12));
    }

    @Test
    void manyBallsAreBelieved() {
        List<Double> hundreds = Collections.nCopies(1000, 4.0);
        TodaysBalls.Reading r =
                read(hundreds.stream().mapToDouble(Double::doubleValue).toArray());
        assertThat(Math.toDegrees(r.day().biasRadians())).isCloseTo(3, within(0.04)); // 1/2.25 against 1000/25
        assertThat(r.left().directionSdRadians()).isLessThan(0.1 * DAY.directionSdRadians());
    }

    @Test
    void oneByOneIsTheSameAsAllAtOnce() {
        // A conjugate update: the bias after balls a and b is that after a, then b, at the same spread.
        double a = read(5).day().biasRadians();
        double known = 1 / Math.pow(Math.toRadians(1.5), 2) + 1 / Math.pow(Math.toRadians(5), 2);
        double w = 1 / Math.pow(Math.toRadians(5), 2);
        double then = (known * a + w * Math.toRadians(-2 - 1)) / (known + w);
        assertThat(read(5, -2).day().biasRadians()).isCloseTo(then, within(1e-12));
    }

    @Test
    void crookedBallsWidenStraightOnesTighten() {
        assertThat(read(15, -13, 14, -12).day().spread()).isGreaterThan(1.05);
        assertThat(read(1, 1, 1, 1).day().spread()).isLessThan(1);
    }

    @Test
    void theReadingIsHonestOnDaysDrawnFromThePrior() {
        SplittableRandom random = new SplittableRandom(7);
        int inside = 0;
        int days = 4000;
        for (int i = 0; i < days; i++) {
            RoundDay day = DAY.draw(random);
            List<TodaysBalls.Ball> balls = new ArrayList<>();
            for (int k = 0; k < 5; k++) {
                double degrees = 1 + Math.toDegrees(day.biasRadians()) + 5 * day.spread() * random.nextGaussian();
                balls.add(at(degrees));
            }
            TodaysBalls.Reading r = TodaysBalls.read(balls, DAY);
            if (Math.abs(r.day().biasRadians() - day.biasRadians()) < 1.645 * r.biasSdRadians()) {
                inside++;
            }
        }
        // 90 % within 4 standard errors (0.0047 each); the prior's bias does not shrink with the spread: some 0.5 %
        // more
        assertThat(inside / (double) days).isBetween(0.90 - 0.024, 0.90 + 0.024);
    }

    @Test
    void longBallsLengthenTheDay() {
        TodaysBalls.Ball ten = new TodaysBalls.Ball(PLAIN, 220 * Math.tan(Math.toRadians(1)), OptionalDouble.of(22));
        TodaysBalls.Reading r = TodaysBalls.read(List.of(ten, ten, ten), DAY);
        // 10 % long thrice; carry SD 5 % against 2 %: 3/25 against 1/4
        assertThat(r.lengthFactor()).isCloseTo(1 + 0.1 * (3 / 25.0) / (3 / 25.0 + 1 / 4.0), within(1e-9));
    }
}
