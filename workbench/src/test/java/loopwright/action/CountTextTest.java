package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loopwright.player.BallCount;
import loopwright.player.Mishit;
import loopwright.player.Setting;
import loopwright.player.Zone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountTextTest {

    @Test
    void stripIsSharedByItsParts() {
        List<BallCount> counts = parse("10 drives: 6 inside 30 yd, 3 right, 1 topped");

        assertThat(counts).extracting(BallCount::balls).containsExactly(6, 3, 1);
        assertThat(counts.get(0).club().name()).isEqualTo("driver");
        assertThat(counts.get(0).zone().rightMetres()).isCloseTo(13.716, within(1e-9));
        assertThat(counts.get(1).zone().leftMetres()).isCloseTo(13.716, within(1e-9));
        assertThat(counts.get(2).zone().kind()).contains(Mishit.Kind.TOPPED);
    }

    @Test
    void flagDistanceIsSharedByItsParts() {
        List<BallCount> counts = parse("7-iron: 3 short, 5 level, 2 long of 140 yd");

        // level is within 5 yd of the flag
        assertThat(counts.get(0).zone().longestMetres()).isCloseTo(135 * 0.9144, within(1e-9));
        assertThat(counts.get(1).zone().shortestMetres()).isCloseTo(135 * 0.9144, within(1e-9));
        assertThat(counts.get(2).zone().shortestMetres()).isCloseTo(145 * 0.9144, within(1e-9));
        assertThat(counts.get(2).zone().measure()).isEqualTo(Zone.Measure.TOTAL);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "6 inside 30 yd | a club, a colon",
                "banana: 6 inside 30 yd | \"banana\" is no club",
                "driver: 6 inside | needs a length",
                "driver: six inside 30 | is not a number of balls",
                "driver: 6 beside 30 | \"beside\" is unknown",
                "10 drives: 6 inside 30 yd | add up to 6, not to 10",
                "driver: 6 inside 9000 yd | 1 to 430 yd",
                "putter: 6 inside 30 yd | is no club to count",
            })
    void nonsenseIsToldInOneSentence(String text, String expected) {
        assertThatThrownBy(() -> parse(text)).isInstanceOf(UserFault.class).hasMessageContaining(expected);
    }

    private static List<BallCount> parse(String text) {
        return CountText.parse(text, Setting.RANGE, 0);
    }
}
