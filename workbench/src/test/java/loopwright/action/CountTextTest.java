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
                "8 half 56-wedges: 3 short, 4 level, 1 long of a flag at 50 yd | 56-wedge half on the range, 8 balls:"
                        + " 3 short of a flag at 50 yd, 4 level with a flag at 50 yd (within 5 yd), 1 long of a flag at 50 yd",
                "10 7-irons to a flag at 140 yd: 5 short, 3 pin high and 2 past it. | 7-iron on the range, 10 balls: 5 short"
                        + " of a flag at 140 yd, 3 level with a flag at 140 yd (within 5 yd), 2 long of a flag at 140 yd",
                "7 iron: 2 heavy, 1 thinned | 7-iron on the range, 3 balls: 2 fat, 1 thin",
                "10 balls with the driver: 6 within a 30-yard strip; 4 left | driver on the range, 10 balls: 6 inside a strip"
                        + " 30 yd wide, 4 left of a strip 30 yd wide",
                "PW: 4 level of 100 m | pitching wedge on the range, 4 balls: 4 level with a flag at 109 yd (within 5 yd)",
            })
    void whatACoachTypesIsSaidBack(String text, String understood) {
        assertThat(CountWords.sentences(parse(text))).containsExactly("Counted: " + understood + ".");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8 wedges: 3 short, 4 level, 1 long of 80 yd | does not say which wedge",
                "10 drives: 6 inside 30 yd, 4 short of 200 yd | not both",
                "driver: 3 right by 20 yd | says by how much",
                "driver: 6 inside 30 yd of 40 yd | names two lengths",
                "driver: 0 inside 30 yd | 1 to 500 balls",
                "10 half drives: 10 inside 30 yd | for wedges only",
                "driver: 6 inside 30 yd, 1 left inside | must name one of",
                "6 inside 30 yd | a club, a colon",
                "banana: 6 inside 30 yd | \"banana\" is no club",
                "driver: 6 inside | needs the width of a strip",
                "driver: six inside 30 | is not a number of balls",
                "driver: 6 beside 30 | \"beside\" is unknown",
                "10 drives: 6 inside 30 yd | add up to 6, not to 10",
                "driver: 6 inside 9000 yd | 1 to 430 yd",
                "putter: 6 inside 30 yd | is no club to count",
                "10 drives: 6 inside -30 yd, 4 right | has a sign",
            })
    void nonsenseIsToldInOneSentence(String text, String expected) {
        assertThatThrownBy(() -> parse(text)).isInstanceOf(UserFault.class).hasMessageContaining(expected);
    }

    private static List<BallCount> parse(String text) {
        return CountText.parse(text, Setting.RANGE, 0);
    }
}
