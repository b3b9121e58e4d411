package loopwright.scoring;

import static loopwright.scoring.Records.counts;
import static loopwright.scoring.Records.ofCounts;
import static loopwright.scoring.Records.ofShots;
import static loopwright.scoring.Records.putt;
import static loopwright.scoring.Records.round;
import static loopwright.scoring.Records.shot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import loopwright.scoring.Oddity.Kind;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundReviewTest {
    private static final double SUM = 1e-12;
    private final TourBaseline tour = new TourBaseline();

    private RoundReview review(HoleRecord... holes) {
        return RoundReview.of(round(List.of(holes)), tour);
    }

    private static double gained(RoundReview review, PartOfGame part) {
        return review.rows().stream()
                .filter(g -> g.band().part() == part)
                .mapToDouble(Gain::gained)
                .sum();
    }

    private static List<Kind> oddities(RoundReview review) {
        return review.oddities().stream().map(Oddity::kind).toList();
    }

    @Test
    void outOfBoundsFromTheTeeIsOneStrokeOfPlayAndOnePenalty() {
        RoundReview review = review(ofShots(
                1, 4, shot(Lie.TEE, 400, 1), shot(Lie.TEE, 400, 0), shot(Lie.FAIRWAY, 160, 0), putt(20), putt(2)));
        assertThat(gained(review, PartOfGame.PENALTIES)).isEqualTo(-1);
        // first ball: -1; second: 3.99 - 2.98 - 1 = 0.01
        assertThat(gained(review, PartOfGame.TEE_SHOTS)).isCloseTo(-0.99, within(SUM));
        assertThat(review.total()).isCloseTo(3.99 - 6, within(SUM));
    }

    @Test
    void aConcededPuttIsApartAndNotAmongThePutts() {
        Stroke given = new Stroke(Lie.GREEN, Distance.ofFeet(2), 0);
        HoleRecord hole = ofShots(1, 3, HoleEnd.CONCEDED, Optional.of(given), List.of(shot(Lie.TEE, 160, 0), putt(20)));
        RoundReview review = review(hole);
        assertThat(hole.score()).hasValue(3);
        assertThat(hole.putts()).hasValue(1);
        assertThat(gained(review, PartOfGame.CONCEDED)).isCloseTo(0.01, within(SUM));
        assertThat(gained(review, PartOfGame.PUTTING)).isCloseTo(1.87 - 1.01 - 1, within(SUM));
        assertThat(review.total()).isCloseTo(2.99 - 3, within(SUM));
        assertThat(review.tally().greens()).isEqualTo(new Share(1, 1));
    }

    @Test
    void aHolePickedUpIsMeasuredUpToTheLastKnownPlace() {
        HoleRecord hole = ofShots(
                1,
                4,
                HoleEnd.PICKED_UP,
                Optional.empty(),
                List.of(shot(Lie.TEE, 400, 0), shot(Lie.ROUGH, 200, 0), shot(Lie.SAND, 60, 0)));
        RoundReview review = review(hole);
        assertThat(hole.score()).isEmpty();
        assertThat(review.strokes()).isEqualTo(2);
        assertThat(review.end()).isEqualTo(3.15);
        assertThat(review.round().score()).isEmpty();
        assertThat(review.tally().pickedUp()).isEqualTo(1);
    }

    @Test
    void countsTellPuttingAndTheWayToTheGreen() {
        RoundReview review = review(ofCounts(1, 4, 400, 6, counts(1, 1, 10, 2)));
        assertThat(gained(review, PartOfGame.PUTTING)).isCloseTo(1.61 - 2, within(SUM));
        assertThat(gained(review, PartOfGame.TO_THE_GREEN)).isCloseTo(3.99 - 1.61 - 3, within(SUM));
        assertThat(gained(review, PartOfGame.PENALTIES)).isEqualTo(-1);
        assertThat(review.tally().upAndDowns()).isEqualTo(new Share(0, 1));
    }

    @Test
    void aChipThatWasHoledLeavesNoPuttToMeasure() {
        RoundReview review = review(ofCounts(1, 4, 400, 4, counts(0, 1, 0, 0)));
        assertThat(gained(review, PartOfGame.TO_THE_GREEN)).isCloseTo(3.99 - 4, within(SUM));
        assertThat(review.tally().upAndDowns()).isEqualTo(new Share(1, 1));
    }

    @Test
    void withoutALengthCountsTellPuttingOnly() {
        RoundReview review = review(ofCounts(1, 4, 0, 5, counts(0, 0, 10, 2)));
        assertThat(review.rows()).hasSize(1);
        assertThat(review.strokes()).isEqualTo(2);
    }

    @Test
    void scoresTellWholeHolesOrNothing() {
        RoundReview review = review(ofCounts(1, 4, 400, 5, HoleCounts.NONE), ofCounts(2, 4, 0, 5, HoleCounts.NONE));
        assertThat(gained(review, PartOfGame.WHOLE_HOLE)).isCloseTo(3.99 - 5, within(SUM));
        assertThat(review.leftOut()).containsExactly(2);
    }

    @ParameterizedTest
    @CsvSource({
        "TEE, 400, 4, TEE_SHOTS",
        "TEE, 150, 3, APPROACH",
        "TEE, 30, 3, AROUND_THE_GREEN",
        "FAIRWAY, 41, 4, APPROACH",
        "SAND, 40, 4, AROUND_THE_GREEN",
        "RECOVERY, 180, 4, APPROACH",
        "GREEN, 45, 4, PUTTING"
    })
    void everyStrokeHasItsPart(Lie lie, double yards, int par, PartOfGame part) {
        Stroke stroke = new Stroke(lie, Distance.ofYards(yards), 0);
        assertThat(Band.of(stroke, OptionalInt.of(par)).part()).isEqualTo(part);
    }

    @ParameterizedTest
    @CsvSource({"74.9, 0", "75, 75", "124.99, 75", "125, 125", "175, 175", "225, 225", "700, 225"})
    void anApproachBelongsToTheBandThatBeginsAtItsDistance(double yards, double from) {
        Band band = Band.of(new Stroke(Lie.FAIRWAY, Distance.ofYards(yards), 0), OptionalInt.of(5));
        assertThat(band.from().yards()).isCloseTo(from, within(1e-9));
    }

    @Test
    void countsFairwaysGreensAndThreePutts() {
        RoundReview review = review(
                ofShots(1, 4, shot(Lie.TEE, 400, 0), shot(Lie.FAIRWAY, 150, 0), putt(30), putt(6), putt(1)),
                ofShots(2, 3, shot(Lie.TEE, 150, 0), shot(Lie.ROUGH, 15, 0), putt(3)));
        assertThat(review.tally().fairways()).isEqualTo(new Share(1, 1));
        assertThat(review.tally().greens()).isEqualTo(new Share(1, 2));
        assertThat(review.tally().threePutts()).isEqualTo(new Share(1, 2));
        assertThat(review.tally().upAndDowns()).isEqualTo(new Share(1, 1));
        assertThat(review.tally().putts()).hasValue(4);
    }

    @Test
    void aCleanHoleRaisesNoQuestion() {
        HoleRecord hole = ofShots(1, 4, shot(Lie.TEE, 400, 0), shot(Lie.FAIRWAY, 150, 0), putt(30), putt(2));
        assertThat(review(hole).oddities()).isEmpty();
    }

    @Test
    void asksWhatIsRarelyRight() {
        HoleRecord farther =
                ofShots(1, 4, shot(Lie.TEE, 400, 0), shot(Lie.ROUGH, 40, 0), shot(Lie.SAND, 60, 0), putt(2));
        assertThat(oddities(review(farther))).containsExactly(Kind.FARTHER_WITHOUT_PENALTY);
        assertThat(oddities(review(farther.with(HoleMark.CHECKED)))).isEmpty();
        assertThat(oddities(review(ofShots(1, 4, shot(Lie.TEE, 400, 0), shot(Lie.GREEN, 45, 0)))))
                .containsExactly(Kind.VERY_LONG_PUTT);
        assertThat(oddities(review(ofShots(1, 4, shot(Lie.TEE, 400, 0), shot(Lie.FAIRWAY, 160, 0)))))
                .containsExactly(Kind.HOLED_FROM_FAR);
        assertThat(oddities(review(ofShots(1, 4, shot(Lie.FAIRWAY, 400, 0), putt(3)))))
                .containsExactly(Kind.NOT_FROM_TEE);
        assertThat(oddities(review(ofShots(1, 4, shot(Lie.TEE, 400, 0), shot(Lie.TEE, 400, 0), putt(3)))))
                .containsExactly(Kind.TEE_AGAIN_WITHOUT_PENALTY);
        assertThat(oddities(review(ofShots(1, 3, shot(Lie.TEE, 400, 0), putt(3)))))
                .containsExactly(Kind.LENGTH_AND_PAR);
        assertThat(oddities(review(ofCounts(1, 4, 400, 12, HoleCounts.NONE)))).containsExactly(Kind.HIGH_SCORE);
        assertThat(oddities(review(ofCounts(1, 4, 400, 7, counts(0, 0, 20, 5)))))
                .containsExactly(Kind.MANY_PUTTS);
        assertThat(oddities(review(ofCounts(1, 4, 400, 3, counts(1, 1, 20, 2)))))
                .containsExactly(Kind.COUNTS_LEAVE_NO_STROKE);
    }

    @Test
    void aWrittenScoreThatDoesNotAddUpIsAsked() {
        HoleRecord hole = ofShots(1, 4, shot(Lie.TEE, 400, 0), shot(Lie.FAIRWAY, 150, 0), putt(30), putt(2));
        HoleRecord written = new HoleRecord(
                1,
                hole.par(),
                hole.length(),
                OptionalInt.of(5),
                hole.end(),
                Set.of(),
                hole.counts(),
                hole.shots(),
                hole.conceded());
        assertThat(oddities(review(written))).containsExactly(Kind.SCORE_DOES_NOT_ADD_UP);
    }
}
