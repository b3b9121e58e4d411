package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlayerPriorTest {

    /**
     * Direction SD of the whole driver pattern: Broadie and Ko 2009. Length: between the bands of R and A and USGA 2018, as
     * {@link PriorTable} says.
     */
    @ParameterizedTest
    @CsvSource({"80, 234, 5.5", "100, 198, 7.9"})
    void driverMatchesThePublishedGolfers(double level, double totalYards, double directionDegrees) {
        ShotPattern driver = PlayerPrior.of(level, Player.Hand.RIGHT)
                .player("p")
                .swings()
                .get(0)
                .pattern();

        // printed to 0.1 yd and 0.1 degree
        assertThat(driver.totalMetres() / 0.9144).isCloseTo(totalYards, within(0.05));
        assertThat(Math.toDegrees(wholeDirectionSd(driver))).isCloseTo(directionDegrees, within(0.05));
        assertThat(driver.directionSdRadians()).isLessThan(wholeDirectionSd(driver));
    }

    @Test
    void bagHasFourteenClubsWithThePutterAndPartialWedges() {
        Player player = PlayerPrior.of(90, Player.Hand.RIGHT).player("p");

        assertThat(player.clubs()).hasSize(13).doesNotContain(ClubTable.PUTTER);
        assertThat(player.swings()).filteredOn(s -> !s.isFull()).hasSize(8);
        assertThat(player.touchShots())
                .extracting(TouchShot::kind)
                .containsExactly(TouchShot.Kind.CHIP, TouchShot.Kind.PITCH, TouchShot.Kind.BUNKER_SHOT);
        assertThat(player.swings()).allSatisfy(s -> assertThat(s.evidence()).isEqualTo(Evidence.ASSUMED));
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 70, 90, 110, 120, 130})
    void spreadAndMishitsGrowWithTheLevel(double level) {
        PlayerPrior better =
                PlayerPrior.of(Math.max(60, level - 5), Player.Hand.RIGHT).withDriverCarry(yards(200));
        PlayerPrior worse = PlayerPrior.of(level, Player.Hand.RIGHT).withDriverCarry(yards(200));
        for (Club club : worse.bag()) {
            ShotPattern b = better.pattern(club, Swing.FULL);
            ShotPattern w = worse.pattern(club, Swing.FULL);
            assertThat(w.carryMetres()).isEqualTo(b.carryMetres());
            assertThat(w.directionSdRadians()).as(club.name()).isGreaterThanOrEqualTo(b.directionSdRadians());
            assertThat(w.carrySdMetres()).isGreaterThanOrEqualTo(b.carrySdMetres());
            assertThat(w.mishitRate()).isGreaterThanOrEqualTo(b.mishitRate());
        }
    }

    @Test
    void longIronsOfASlowSwingCarryNoFurtherThanItsMidIrons() {
        PlayerPrior slow = PlayerPrior.of(105, Player.Hand.RIGHT).withDriverCarry(yards(130));
        PlayerPrior fast = PlayerPrior.of(75, Player.Hand.RIGHT).withDriverCarry(yards(250));

        assertThat(gap(slow, "4-iron", "6-iron")).isLessThan(2);
        assertThat(gap(fast, "4-iron", "6-iron")).isGreaterThan(15);
    }

    @Test
    void sevenIronAloneSetsTheWholeBag() {
        PlayerPrior prior = PlayerPrior.of(95, Player.Hand.RIGHT).withSevenIronCarry(yards(120));

        assertThat(carryYards(prior, "7-iron")).isCloseTo(120, within(0.01));
        assertThat(carryYards(prior, "driver")).isBetween(185.0, 200.0);
    }

    @Test
    void bothStatedLengthsAreKept() {
        PlayerPrior prior = PlayerPrior.of(95, Player.Hand.RIGHT)
                .withDriverCarry(yards(210))
                .withSevenIronCarry(yards(120));

        assertThat(carryYards(prior, "driver")).isCloseTo(210, within(0.01));
        assertThat(carryYards(prior, "7-iron")).isCloseTo(120, within(0.01));
        assertThat(carryYards(prior, "9-iron")).isLessThan(carryYards(prior, "7-iron") - 10);
    }

    @Test
    void leftHandedPlayerIsTheMirrorImage() {
        ShotPattern right = PlayerPrior.of(90, Player.Hand.RIGHT).pattern(ClubTable.DRIVER, Swing.FULL);
        ShotPattern left = PlayerPrior.of(90, Player.Hand.LEFT).pattern(ClubTable.DRIVER, Swing.FULL);

        assertThat(left.mishits())
                .extracting(m -> -m.directionRadians() + 0.0)
                .containsExactlyElementsOf(right.mishits().stream()
                        .map(m -> m.directionRadians() + 0.0)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({"7i, 7-iron", "PW, pitching wedge", "56, 56-wedge", "5 Wood, 5-wood", "hybrid 4, 4-hybrid", "1w, driver"
    })
    void clubNamesOfTheTradeAreRead(String typed, String name) {
        assertThat(ClubTable.find(typed)).map(Club::name).contains(name);
    }

    @Test
    void unknownClubIsNotGuessed() {
        assertThat(ClubTable.find("banana")).isEmpty();
    }

    @Test
    void absurdLevelIsRefused() {
        assertThatThrownBy(() -> PlayerPrior.of(Double.NaN, Player.Hand.RIGHT)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> PlayerPrior.of(90, Player.Hand.RIGHT).withBag(List.of(ClubTable.PUTTER)))
                .hasMessageContaining("putter");
    }

    /** Variance of a mixture: E[var] + E[mean^2] - mean^2. */
    private static double wholeDirectionSd(ShotPattern p) {
        double solid = 1 - p.mishitRate();
        double second = solid * p.directionSdRadians() * p.directionSdRadians();
        double mean = 0;
        for (Mishit m : p.mishits()) {
            second += m.rate()
                    * (m.directionRadians() * m.directionRadians() + m.directionSdRadians() * m.directionSdRadians());
            mean += m.rate() * m.directionRadians();
        }
        return Math.sqrt(second - mean * mean);
    }

    private static double gap(PlayerPrior prior, String longer, String shorter) {
        return carryYards(prior, longer) - carryYards(prior, shorter);
    }

    private static double carryYards(PlayerPrior prior, String club) {
        return prior.pattern(ClubTable.find(club).orElseThrow(), Swing.FULL).carryMetres() / 0.9144;
    }

    private static Distance yards(double yards) {
        return Distance.ofYards(yards);
    }
}
