package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.putting.ChipIn;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TouchFitTest {
    private static final Player LEVEL = PlayerPrior.of(90, Player.Hand.RIGHT).player("test");

    /** Balls of a player with this spread and these mishits, as the strike model and not the fit's own law draws them. */
    private static List<TouchBall> balls(TouchShot.Kind kind, double spread, double mishits, int n, long seed) {
        Player player = new Player(
                "truth",
                LEVEL.hand(),
                LEVEL.level(),
                LEVEL.swings(),
                LEVEL.touchShots().stream()
                        .map(t -> t.withSpread(spread).withMishitsTimes(mishits))
                        .toList(),
                LEVEL.putting(),
                -1);
        StrikeModel strikes = new StrikeModel(player);
        int shot = LEVEL.swings().size() + kind.ordinal();
        Surface surface = kind == TouchShot.Kind.BUNKER_SHOT ? Surface.BUNKER : Surface.FAIRWAY;
        SplittableRandom random = new SplittableRandom(seed);
        Landing landing = new Landing();
        List<TouchBall> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double metres = 6 + 12 * random.nextDouble();
            strikes.strike(
                    shot,
                    metres,
                    strikes.lie(shot, surface, Situation.ORDINARY),
                    random.nextDouble(),
                    random.nextGaussian(),
                    random.nextGaussian(),
                    random.nextGaussian(),
                    landing);
            double total = Math.hypot(landing.forwardMetres, landing.rightMetres) + landing.runMetres;
            double leave = Math.hypot(
                    total * Math.cos(landing.directionRadians) - metres, total * Math.sin(landing.directionRadians));
            boolean holed = leave <= ChipIn.RADIUS_METRES;
            out.add(new TouchBall(
                    kind,
                    metres,
                    surface,
                    holed,
                    holed ? OptionalDouble.empty() : OptionalDouble.of(leave),
                    Optional.empty()));
        }
        return out;
    }

    private static TouchReport report(TouchShot.Kind kind, List<TouchBall> log) {
        return TouchFit.of(LEVEL.touchShots(), log).get(kind.ordinal());
    }

    @Test
    void withoutABallThePriorStaysAndIsMarked() {
        TouchReport report = report(TouchShot.Kind.CHIP, List.of());
        assertThat(report.shot().evidence().balls()).isZero();
        assertThat(report.shot().evidence().assumedShare()).isCloseTo(1, within(0.01));
        // 90 % of a log normal of SD hypot(0.2, 0.2)
        assertThat(Math.log(report.spread().high())).isCloseTo(1.645 * Math.hypot(0.2, 0.2), within(0.02));
        assertThat(report.spread().middle()).isCloseTo(1, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({
        "CHIP, 1.4, 6",
        "CHIP, 1.4, 30",
        "CHIP, 1.4, 100",
        "CHIP, 1.4, 1000",
        "PITCH, 0.7, 100",
        "BUNKER_SHOT, 1.3, 100"
    })
    void recoversSpreadAndMishits(TouchShot.Kind kind, double spread, int n) {
        TouchReport report = report(kind, balls(kind, spread, 1.5, n, 5));
        double truth = 1.5
                * LEVEL.touchShots().get(kind.ordinal()).mishits().stream()
                        .mapToDouble(Mishit::rate)
                        .sum();
        // three standard errors: the 90 % interval spans 3.29 of them
        assertThat(errors(report.spread(), spread)).isLessThan(3);
        assertThat(errors(report.mishitRate(), truth)).isLessThan(3);
    }

    @Test
    void intervalsHoldTheTruthOfNineInTenPlayers() {
        SplittableRandom random = new SplittableRandom(9);
        int players = 300;
        int held = 0;
        int heldRate = 0;
        for (int i = 0; i < players; i++) {
            double spread = Math.exp(Math.hypot(0.2, 0.2) * random.nextGaussian());
            double mishits = Math.exp(0.5 * random.nextGaussian());
            TouchReport report =
                    report(TouchShot.Kind.CHIP, balls(TouchShot.Kind.CHIP, spread, mishits, 20, random.nextLong()));
            held += report.spread().holds(spread) ? 1 : 0;
            double rate = LEVEL.touchShots().get(0).mishits().stream()
                            .mapToDouble(Mishit::rate)
                            .sum()
                    * mishits;
            heldRate += report.mishitRate().holds(rate) ? 1 : 0;
        }
        // three binomial standard errors of 300 players: 0.052
        assertThat((double) held / players).isBetween(0.848, 0.952);
        assertThat((double) heldRate / players).isBetween(0.848, 0.952);
    }

    @Test
    void chipsTellOfPitchesInPart() {
        List<TouchBall> wild = balls(TouchShot.Kind.CHIP, 1.6, 1, 200, 3);
        TouchReport pitch = report(TouchShot.Kind.PITCH, wild);
        // half of the variance is shared: half of the chips' surplus on the log scale
        assertThat(Math.log(pitch.spread().middle())).isCloseTo(0.5 * Math.log(1.6), within(0.1));
        assertThat(pitch.shot().evidence().assumedShare()).isBetween(0.45, 0.85);
    }

    @Test
    void notedMishitsRaiseTheRate() {
        List<TouchBall> log = new ArrayList<>(balls(TouchShot.Kind.BUNKER_SHOT, 1, 1, 10, 4));
        double before = report(TouchShot.Kind.BUNKER_SHOT, log).mishitRate().middle();
        for (int i = 0; i < 5; i++) {
            log.add(new TouchBall(
                    TouchShot.Kind.BUNKER_SHOT,
                    10,
                    Surface.BUNKER,
                    false,
                    OptionalDouble.empty(),
                    Optional.of(Mishit.Kind.LEFT_IN_SAND)));
        }
        assertThat(report(TouchShot.Kind.BUNKER_SHOT, log).mishitRate().middle())
                .isGreaterThan(1.3 * before);
    }

    @Test
    void oneWildBallHardlyWidensTheRest() {
        List<TouchBall> log = new ArrayList<>(balls(TouchShot.Kind.CHIP, 1, 1, 20, 6));
        double before = report(TouchShot.Kind.CHIP, log).spread().middle();
        log.add(new TouchBall(
                TouchShot.Kind.CHIP, 10, Surface.FAIRWAY, false, OptionalDouble.of(30), Optional.empty()));
        assertThat(report(TouchShot.Kind.CHIP, log).spread().middle() / before).isBetween(0.9, 1.1);
    }

    private static double errors(Interval interval, double truth) {
        return Math.abs(interval.middle() - truth) / ((interval.high() - interval.low()) / 3.29);
    }
}
