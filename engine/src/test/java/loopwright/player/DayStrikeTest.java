package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.SplittableRandom;
import loopwright.flight.Air;
import loopwright.flight.DayConditions;
import loopwright.flight.ResponseSurface;
import loopwright.flight.Wind;
import loopwright.ground.Firmness;
import loopwright.ground.Rise;
import loopwright.numerics.Watch;
import org.junit.jupiter.api.Test;

/** What a day makes of strikes: by the tables the solver reads, and by the flights of the referee. */
class DayStrikeTest {
    private static final Player PLAYER = PlayerPrior.of(85, Player.Hand.RIGHT).player("test");
    private static final DayConditions GUSTY = new DayConditions(
            Air.atAltitude(285, 400, 0.7),
            Wind.gusting(7, 1, 10),
            Firmness.FIRM,
            0.9 * DayConditions.ORDINARY_GREEN_RESISTANCE);

    @Test
    void aStandardDayLeavesEveryStrikeAsItWas() {
        StrikeModel plain = new StrikeModel(PLAYER);
        StrikeModel standard = on(DayConditions.STANDARD);
        forStrikes(plain, (shot, bearing, strike, random) -> {
            strike.loft = random.nextGaussian();
            Landing same = copy(strike);
            AimedSwing aimed = Objects.requireNonNull(standard.toward(shot, bearing));
            aimed.change(same, 0, 0);
            assertSame(same, strike, 1e-9, 1e-9);
            Landing flown = copy(strike);
            standard.fly(shot, bearing, 0, 0, Rise.LEVEL, flown);
            assertSame(flown, strike, 1e-9, 1e-9);
        });
    }

    private static void assertSame(Landing one, Landing other, double metres, double radians) {
        assertThat(one.forwardMetres).isCloseTo(other.forwardMetres, within(metres));
        assertThat(one.rightMetres).isCloseTo(other.rightMetres, within(metres));
        assertThat(one.runMetres).isCloseTo(other.runMetres, within(metres));
        assertThat(one.greenRunMetres).isCloseTo(other.greenRunMetres, within(metres));
        assertThat(one.apexMetres).isCloseTo(other.apexMetres, within(metres));
        assertThat(one.headingRadians).isCloseTo(other.headingRadians, within(radians));
    }

    @Test
    void tablesAndFlightsOfTheirOwnAgreeInAGustyWind() {
        double[] runs = new double[2];
        double[] carries = new double[2];
        StrikeModel day = on(GUSTY);
        forStrikes(day, (shot, bearing, strike, random) -> {
            strike.loft = random.nextGaussian();
            double along = random.nextGaussian();
            double across = random.nextGaussian();
            Landing read = copy(strike);
            AimedSwing aimed = Objects.requireNonNull(day.toward(shot, bearing));
            aimed.change(read, along, across);
            Landing flown = copy(strike);
            day.fly(shot, bearing, along, across, Rise.LEVEL, flown);
            double off = Math.hypot(read.forwardMetres - flown.forwardMetres, read.rightMetres - flown.rightMetres);
            assertThat(off).isLessThan(ResponseSurface.LARGEST_ERROR_METRES);
            carries[0] += read.forwardMetres;
            carries[1] += flown.forwardMetres;
            runs[0] += read.runMetres;
            runs[1] += flown.runMetres;
        });
        // single carries differ by 0.2 m as they come, 300 of them by 0.01; a hundredth of a club's step is nothing to
        // a plan
        assertThat((carries[0] - carries[1]) / STRIKES).isCloseTo(0, within(0.05));
        // single runs differ by what a gust does to the descent, beyond its square; the mean hardly
        assertThat(runs[0] / runs[1]).isCloseTo(1, within(0.02));
    }

    @Test
    void aBallLandsAtTheHeightOfTheGroundInBothWays() {
        StrikeModel day = on(DayConditions.STANDARD);
        for (double slope : new double[] {-0.1, -0.03, 0.03, 0.06}) {
            Rise hill = (forward, right) -> slope * forward;
            Landing shifted = new Landing();
            day.solid(3, 0, LieEffect.NONE, 0, 0, 0, shifted);
            Objects.requireNonNull(day.toward(3, 0)).change(shifted, 0, 0);
            Landing flown = copy(shifted);
            double level = shifted.forwardMetres;
            shifted.shift(hill);
            day.fly(3, 0, 0, 0, hill, flown);
            assertThat(Math.signum(level - flown.forwardMetres)).isEqualTo(Math.signum(slope));
            // the parabola's 0.4 m for every ten metres of height, as in ResponseSurfaceTest
            double rise = Math.abs(slope * level);
            assertThat(shifted.forwardMetres).isCloseTo(flown.forwardMetres, within(0.02 + 0.06 * rise));
        }
    }

    @Test
    void aSampleReadsWhatItsStrikesBecome() {
        StrikeModel day = on(GUSTY);
        forStrikes(day, (shot, bearing, strike, random) -> {
            strike.loft = random.nextGaussian();
            double along = random.nextGaussian();
            double across = random.nextGaussian();
            StrikeSample sample = new StrikeSample(2);
            sample.put(1, strike, Objects.requireNonNull(day.toward(shot, 0)), along, across);
            Landing read = new Landing();
            AimedSwing aimed = Objects.requireNonNull(day.toward(shot, bearing));
            sample.read(1, aimed, read);
            Landing changed = copy(strike);
            aimed.change(changed, along, across);
            // floats of some 200 m
            assertSame(read, changed, 1e-4, 1e-5);
            assertThat(read.descentRadians).isCloseTo(changed.descentRadians, within(1e-5));
            assertThat(read.landingSpeed).isCloseTo(changed.landingSpeed, within(1e-4));
        });
    }

    @Test
    void aBallMeetsRollingGroundWhereItsPathDoes() {
        // waves of half a metre in 40 m, a hillside that falls nearly as fast as a low ball besides
        for (double fall : new double[] {0, 0.3, 0.5}) {
            Rise ground = (forward, right) ->
                    0.5 * Math.sin(forward / 6.4) + 0.3 * Math.cos(right / 6.4) - fall * 0.1 * forward;
            Landing ball = new Landing();
            ball.strike(150, 0.1, false, 10, 20, Math.atan(0.2));
            double forward = ball.forwardMetres;
            double right = ball.rightMetres;
            ball.shift(ground);
            double back = (forward - ball.forwardMetres) * Math.cos(0.1) + (right - ball.rightMetres) * Math.sin(0.1);
            double path = 0.2 * back;
            // four steps of Newton with a slope over a metre
            assertThat(path).isCloseTo(ground.at(ball.forwardMetres, ball.rightMetres), within(0.05));
        }
    }

    private static final int STRIKES = 300;

    private interface Check {
        void strike(int shot, double bearing, Landing strike, SplittableRandom random);
    }

    private static void forStrikes(StrikeModel model, Check check) {
        SplittableRandom random = new SplittableRandom(4);
        Landing strike = new Landing();
        for (int i = 0; i < STRIKES; i++) {
            int shot = random.nextInt(PLAYER.swings().size());
            model.strike(
                    shot,
                    0,
                    LieEffect.NONE,
                    random.nextDouble(),
                    random.nextGaussian(),
                    random.nextGaussian(),
                    random.nextGaussian(),
                    strike);
            check.strike(shot, 2 * Math.PI * random.nextDouble(), strike, random);
        }
    }

    private static Landing copy(Landing l) {
        return l.copy();
    }

    private static StrikeModel on(DayConditions day) {
        return new StrikeModel(PLAYER, new DayFlight(PLAYER.swings(), day, Watch.NONE));
    }
}
