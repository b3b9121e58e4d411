package loopwright.handicap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandicapTest {
    private static List<Double> rising(int n) {
        return IntStream.range(0, n).mapToObj(i -> 10.0 + i).toList();
    }

    /** Rules of Handicapping, Rule 5.2a; the table is from memory, rows 3 and 6 confirmed elsewhere. */
    @ParameterizedTest
    @CsvSource({
        "3,1,-2", "4,1,-1", "5,1,0", "6,2,-1", "7,2,0", "8,2,0", "9,3,0", "10,3,0", "11,3,0", "12,4,0", "13,4,0",
        "14,4,0", "15,5,0", "16,5,0", "17,6,0", "18,6,0", "19,7,0", "20,8,0"
    })
    void howManyScoresCountAndWhatIsAdded(int scores, int counted, double adjustment) {
        Averaging averaging = Averaging.of(rising(scores));
        assertThat(averaging.counted()).hasSize(counted);
        assertThat(averaging.adjustment()).isEqualTo(adjustment);
        // The lowest of 10, 11, 12 ... have the mean 10 + (counted - 1) / 2.
        assertThat(averaging.index()).isEqualTo(10 + (counted - 1) / 2.0 + adjustment);
    }

    @Test
    void theLowestCountWhereverTheyStand() {
        assertThat(Averaging.of(List.of(18.0, 9.1, 20.0, 9.0, 30.0, 9.2, 15.0)).counted())
                .containsExactly(3, 1);
    }

    @Test
    void anIndexIsAtMost54() {
        assertThat(Averaging.of(List.of(60.0, 61.0, 70.5)).index()).isEqualTo(54.0);
    }

    @Test
    void fewerThanThreeScoresGiveNoIndex() {
        assertThatThrownBy(() -> Averaging.of(List.of(12.0, 13.0))).hasMessageContaining("3 to 20");
    }

    @Test
    void playingConditionsComeOffTheScoreAndHalfOfThemOffNineHoles() {
        assertThat(ScoreDifferential.eighteen(90, new TeeRating(72.0, 113), 2)).isEqualTo(16.0);
        assertThat(ScoreDifferential.ninePart(45, new TeeRating(36.0, 113), 2)).isCloseTo(8.0, within(1e-12));
    }

    @Test
    void tenToSeventeenHolesLieBetweenNineAndEighteen() {
        TeeRating rating = new TeeRating(72.0, 113);
        // 14 of 18 holes at par 56 in 66: ten over; four holes are expected at (0.52 x 18 + 1.197) x 4 / 9 = 4.692.
        assertThat(ScoreDifferential.part(66, 14, 56, rating, 72, 0, 18.0)).isEqualTo(14.7);
        assertThatThrownBy(() -> ScoreDifferential.part(66, 9, 36, rating, 72, 0, 18.0))
                .hasMessageContaining("10 to 17");
    }

    @Test
    void nineHolesUseHalfTheIndexToATenth() {
        // 15.3 / 2 = 7.65 -> 7.7
        assertThat(CourseHandicap.nine(15.3, new TeeRating(36.0, 113), 36).exact())
                .isCloseTo(7.7, within(1e-12));
    }

    @Test
    void aPlayingHandicapIsRoundedOnceAndUpward() {
        assertThat(new CourseHandicap(10.5).rounded()).isEqualTo(11);
        assertThat(new CourseHandicap(-1.5).rounded()).isEqualTo(-1);
        // Rounding twice would give round(0.95 x 18) = 17; once gives round(16.63) = 17 and here 16.
        assertThat(new CourseHandicap(17.3).playing(0.95)).isEqualTo(16);
    }

    @ParameterizedTest
    @CsvSource({"0,0,0", "5,1,0", "18,1,1", "20,2,1", "36,2,2", "-1,0,-1", "-18,-1,-1", "-19,-1,-2"})
    void strokesFallOnTheHardestHolesFirst(int handicap, int onHardest, int onEasiest) {
        List<Integer> indexes = List.of(7, 3, 15, 1, 11, 9, 17, 5, 13, 8, 4, 16, 2, 12, 10, 18, 6, 14);
        List<Integer> received = StrokesReceived.perHole(handicap, indexes);
        assertThat(received.get(indexes.indexOf(1))).isEqualTo(onHardest);
        assertThat(received.get(indexes.indexOf(18))).isEqualTo(onEasiest);
        assertThat(received.stream().mapToInt(Integer::intValue).sum()).isEqualTo(handicap);
    }

    @Test
    void strokesOnNineHolesGoByTheirOrderWithinTheNine() {
        assertThat(StrokesReceived.perHole(4, List.of(17, 1, 3, 5, 7, 9, 11, 13, 15)))
                .containsExactly(0, 1, 1, 1, 1, 0, 0, 0, 0);
    }

    @Test
    void aHoleCountsAtMostNetDoubleBogey() {
        assertThat(StrokesReceived.netDoubleBogey(4, 1)).isEqualTo(7);
        assertThat(StrokesReceived.mostBeforeAnIndex(4)).isEqualTo(9);
        assertThat(StrokesReceived.adjustedGross(List.of(9, 3, 6), List.of(4, 3, 5), List.of(1, 0, 0)))
                .isEqualTo(7 + 3 + 6);
    }

    @Test
    void slopeFollowsFromTheTwoRatings() {
        // 5.381 x 21 = 113.0: the standard slope
        assertThat(TeeRating.ofBogeyRating(71, 92, TeeRating.SLOPE_FACTOR_MEN).slope())
                .isEqualTo(113);
        assertThat(TeeRating.ofBogeyRating(70, 110, TeeRating.SLOPE_FACTOR_MEN).slope())
                .isEqualTo(155);
    }

    @Test
    void aRecordGetsItsFirstIndexWithTheThirdScore() {
        ScoringRecord record = ScoringRecord.empty().with(1, 15.3).with(5, 15.2);
        assertThat(record.index()).isEmpty();
        assertThat(record.with(9, 16.6).index()).hasValue(13.2);
    }

    @Test
    void anExceptionalScoreLowersTheWholeRecord() {
        ScoringRecord record = steady(20, 20.0).with(21, 10.0); // index 20.0, ten below
        assertThat(record.entries().get(20).adjustment()).isEqualTo(-2);
        assertThat(record.entries().get(0).adjustment()).isZero(); // the 21st back is no longer of the 20
        assertThat(record.entries().get(1).adjustment()).isEqualTo(-2);
        // lowest 8 of 19 x 18.0 and one 8.0: (8 + 7 x 18) / 8 = 16.75 -> 16.8
        assertThat(record.index()).hasValue(16.8);
    }

    @Test
    void theLowIndexCapsARisingOneUntilItIsAYearOld() {
        ScoringRecord record = steady(21, 10.0);
        for (int i = 0; i < 20; i++) {
            record = record.with(100 + i, 30.0);
        }
        assertThat(record.index()).hasValue(15.0); // hard cap on 10.0
        ScoringRecord later = record;
        for (int i = 0; i < 2; i++) {
            later = later.with(100 + 19 + 366 + i, 30.0);
        }
        assertThat(later.index().getAsDouble()).isGreaterThan(15.0);
    }

    @Test
    void scoresComeInTheOrderOfPlay() {
        assertThatThrownBy(() -> steady(3, 10.0).with(0, 12.0)).hasMessageContaining("order of play");
    }

    private static ScoringRecord steady(int scores, double differential) {
        ScoringRecord record = ScoringRecord.empty();
        int day = 1;
        for (double d : Collections.nCopies(scores, differential)) {
            record = record.with(day++, d);
        }
        return record;
    }
}
