package loopwright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.stream.Collectors;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Broadie 2012, Table 9, and Broadie 2011, Fig. 1, kept to the letter. */
class TourBaselineReferenceTest {
    /** SHA-256 of the 35 rows of reference/scoring/broadie-2012-table-9.csv with a line feed after each. */
    private static final String HASH = "2835c7731fdb0ae4f0c7512235a03a222af405767bb6a65007f6fdd9f42a4c98";

    /** A yard or foot goes to metres and back; nothing else is rounded. */
    private static final double ULPS = 1e-12;

    private final TourBaseline tour = new TourBaseline();

    private double at(Lie lie, double yards) {
        return tour.strokesToHoleOut(lie, Distance.ofYards(yards));
    }

    private double putts(double feet) {
        return tour.strokesToHoleOut(Lie.GREEN, Distance.ofFeet(feet));
    }

    @Test
    void theTableIsThePublishedOne() throws Exception {
        String rows = TourBaseline.TABLE_9
                .lines()
                .map(r -> r.replace(' ', ',') + "\n")
                .collect(Collectors.joining());
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(rows.getBytes(StandardCharsets.UTF_8));
        assertThat(HexFormat.of().formatHex(hash)).isEqualTo(HASH);
        assertThat(rows.lines()).hasSize(35).allMatch(row -> row.split(",").length == 6);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/scoring/broadie-2012-table-9.csv", numLinesToSkip = 1)
    void everyCellIsReturned(double yards, String tee, double fairway, double rough, double sand, double recovery) {
        if (!tee.equals("-")) {
            assertThat(at(Lie.TEE, yards)).isCloseTo(Double.parseDouble(tee), within(ULPS));
        }
        assertThat(at(Lie.FAIRWAY, yards)).isCloseTo(fairway, within(ULPS));
        assertThat(at(Lie.ROUGH, yards)).isCloseTo(rough, within(ULPS));
        assertThat(at(Lie.SAND, yards)).isCloseTo(sand, within(ULPS));
        assertThat(at(Lie.RECOVERY, yards)).isCloseTo(recovery, within(ULPS));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/scoring/broadie-2011-putts.csv", numLinesToSkip = 1)
    void everyPuttIsReturned(double feet, double average) {
        assertThat(putts(feet)).isCloseTo(average, within(ULPS));
    }

    @ParameterizedTest
    @CsvSource({"FAIRWAY, 110, 2.825", "TEE, 590, 4.805", "SAND, 15, 2.48", "ROUGH, 250, 3.69", "RECOVERY, 90, 3.82"})
    void halfWayBetweenTwoRowsIsTheirMean(Lie lie, double yards, double expected) {
        assertThat(at(lie, yards)).isCloseTo(expected, within(ULPS));
    }

    @Test
    void theDipsOfTheSourceAreKept() {
        assertThat(at(Lie.TEE, 120)).isGreaterThan(at(Lie.TEE, 140));
        assertThat(at(Lie.SAND, 90)).isGreaterThan(at(Lie.SAND, 120));
        assertThat(at(Lie.RECOVERY, 80)).isGreaterThan(at(Lie.RECOVERY, 120));
    }

    @Test
    void outsideThePublishedRangeItGoesOnAndSaysSo() {
        assertThat(tour.isPublished(Lie.FAIRWAY, Distance.ofYards(9))).isFalse();
        assertThat(tour.isPublished(Lie.FAIRWAY, Distance.ofYards(300))).isTrue();
        assertThat(tour.isPublished(Lie.TEE, Distance.ofYards(90))).isFalse();
        assertThat(at(Lie.FAIRWAY, 5)).isCloseTo(putts(15) + 2.18 - 1.98, within(ULPS));
        assertThat(at(Lie.TEE, 90)).isCloseTo(2.77 + 2.92 - 2.80, within(ULPS));
        assertThat(at(Lie.TEE, 700)).isCloseTo(4.82 + (4.82 - 4.41), within(ULPS));
        assertThat(putts(120)).isCloseTo(2.36 + 0.15, within(ULPS));
        assertThat(putts(0)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"FAIRWAY, 10", "ROUGH, 10", "SAND, 10", "RECOVERY, 10", "TEE, 100", "FAIRWAY, 600", "TEE, 600"})
    void theExtensionsJoinWithoutAStep(Lie lie, double yards) {
        assertThat(at(lie, yards - 1e-9)).isCloseTo(at(lie, yards + 1e-9), within(1e-8)); // slopes below 0.1 a yard
    }
}
