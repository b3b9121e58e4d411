package loopwright.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Three bags as a coach would read them, from an interview alone: a woman of 62 who carries her driver 130 yd and scores
 * 102, a child of twelve who carries it 95 yd and scores 112, a left-handed scratch player (average score 73) with 262 and
 * 172 yd. Bounds are what a coach would call odd beyond (common practice, no source).
 */
class SampleBagTest {
    private enum Sample {
        WOMAN,
        CHILD,
        SCRATCH;

        PlayerPrior prior() {
            return switch (this) {
                case WOMAN -> PlayerPrior.of(102, Player.Hand.RIGHT).withDriverCarry(Distance.ofYards(130));
                case CHILD -> PlayerPrior.of(112, Player.Hand.RIGHT).withDriverCarry(Distance.ofYards(95));
                case SCRATCH ->
                    PlayerPrior.of(73, Player.Hand.LEFT)
                            .withDriverCarry(Distance.ofYards(262))
                            .withSevenIronCarry(Distance.ofYards(172))
                            .withUsualMiss(false);
            };
        }

        List<Swing> full() {
            return prior().player("p").swings().stream().filter(Swing::isFull).toList();
        }

        Map<String, Double> carryYards() {
            Map<String, Double> out = new TreeMap<>();
            full().forEach(s -> out.put(s.club().name(), s.pattern().carryMetres() / 0.9144));
            return out;
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyClubOfTheUsualBagGoesFartherThanTheNext(Sample sample) {
        List<Swing> clubs = sample.full();
        for (int i = 1; i < clubs.size(); i++) {
            ShotPattern longer = clubs.get(i - 1).pattern();
            ShotPattern shorter = clubs.get(i).pattern();
            // 3 yd: clubs that lie nearer are one too many in a bag that nobody has named
            assertThat(longer.carryMetres() - shorter.carryMetres())
                    .as(clubs.get(i - 1).label())
                    .isGreaterThan(2.74);
            assertThat(ClubTable.loftDegrees(clubs.get(i - 1).club()))
                    .isLessThan(ClubTable.loftDegrees(clubs.get(i).club()));
            // a fairway wood may run as far as the driver, whose run is held at 20 yd
            assertThat(longer.runMetres()).isGreaterThan(shorter.runMetres() - 0.1);
            assertThat(longer.descentRadians()).isLessThanOrEqualTo(shorter.descentRadians());
        }
    }

    @ParameterizedTest
    @EnumSource
    void patternsAreAsWideAsGolfersAre(Sample sample) {
        double level = sample.prior().level();
        for (Swing s : sample.full()) {
            ShotPattern p = s.pattern();
            double width = PatternWidth.metres(p, 0.8) / p.carryMetres();
            // 8 of 10 balls: a seventh to a quarter of the distance for scratch, up to half of it for a beginner
            assertThat(width).as(s.label()).isBetween(0.08, level < 80 ? 0.25 : 0.5);
            assertThat(p.mishitRate()).as(s.label()).isBetween(0.02, level < 80 ? 0.12 : 0.5);
        }
    }

    @Test
    void longClubsOfASlowSwingLieCloserTogetherThanThoseOfAFastOne() {
        Map<String, Double> woman = Sample.WOMAN.carryYards();
        Map<String, Double> scratch = Sample.SCRATCH.carryYards();

        // her 5- and 7-iron, were she to carry a 5-iron, lie closer than her 7- and 9-iron; his do not
        assertThat(gap(Sample.WOMAN, "5-iron", "7-iron")).isLessThan(0.6 * gap(Sample.WOMAN, "7-iron", "9-iron"));
        assertThat(gap(Sample.SCRATCH, "5-iron", "7-iron"))
                .isGreaterThan(0.7 * gap(Sample.SCRATCH, "7-iron", "9-iron"));
        assertThat(woman).containsKeys("7-wood", "5-hybrid").doesNotContainKeys("5-iron", "60-wedge");
        assertThat(scratch).containsKeys("5-iron", "60-wedge").doesNotContainKeys("7-wood", "5-hybrid");
    }

    private static double gap(Sample sample, String longer, String shorter) {
        return carry(sample, longer) - carry(sample, shorter);
    }

    private static double carry(Sample sample, String club) {
        return sample.prior()
                .pattern(ClubTable.find(club).orElseThrow(), Swing.FULL)
                .carryMetres();
    }

    @Test
    void aChildCarriesHalfABag() {
        assertThat(Sample.CHILD.carryYards()).hasSize(7).containsKeys("driver", "7-iron", "56-wedge");
        // five yards and more between any two, which a child can tell apart
        assertThat(Sample.CHILD.carryYards().get("56-wedge")).isBetween(30.0, 45.0);
    }

    @Test
    void theChipOfAChildReachesNoFartherThanItsShortestFullSwing() {
        Player child = Sample.CHILD.prior().player("p");
        double shortest = child.swings().stream()
                .filter(Swing::isFull)
                .mapToDouble(s -> s.pattern().carryMetres())
                .min()
                .orElseThrow();
        assertThat(child.touchShots()).allSatisfy(t -> assertThat(t.maxMetres()).isLessThanOrEqualTo(shortest));
    }

    @Test
    void aLeftHandersHookedBallsGoRight() {
        List<Mishit> left = Sample.SCRATCH.full().get(0).pattern().mishits();
        List<Mishit> right = PlayerPrior.of(73, Player.Hand.RIGHT)
                .withDriverCarry(Distance.ofYards(262))
                .pattern(ClubTable.DRIVER, Swing.FULL)
                .mishits();
        for (int i = 0; i < left.size(); i++) {
            assertThat(left.get(i).directionRadians()).isEqualTo(-right.get(i).directionRadians());
        }
        // a usual miss is meant as it was said, left of the aim whatever the hand
        assertThat(Sample.SCRATCH.full().get(0).pattern().directionRadians()).isNegative();
    }

    @Test
    void whatWasSaidIsKept() {
        assertThat(Sample.WOMAN.carryYards().get("driver")).isCloseTo(130, within(0.01));
        assertThat(Sample.SCRATCH.carryYards().get("driver")).isCloseTo(262, within(0.01));
        assertThat(Sample.SCRATCH.carryYards().get("7-iron")).isCloseTo(172, within(0.01));
    }
}
