package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadLengthsTest {
    private static final ReadLengths METRIC = new ReadLengths(LengthUnit.METRES, true);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a hole 25 yd away with a circle 9 ft round it | a hole 23 m away with a circle 2.7 m round it",
                "104, 92 and 81 yd | 95, 84 and 74 m",
                "Tees at 30, 40 and 50 ft from a hole | Tees at 9.1, 12.2 and 15.2 m from a hole",
                "chips from 8 to 16 yd, two from sand | chips from 7 to 15 m, two from sand",
                "twelve balls, 9 paces | twelve balls, 8 paces",
                "a ball and a half apart, 18 in before the ball | a ball and a half apart, 46 cm before the ball",
                "8 in 10 of 12 balls | 8 in 10 of 12 balls"
            })
    void wordsAreToldInMetres(String words, String told) {
        assertThat(METRIC.told(words)).isEqualTo(told);
    }

    @Test
    void yardsAndFeetStayAsTheyAre() {
        String words = "five chips from 8 to 16 yd, a circle of 3 ft, 7.5 yd";
        assertThat(ReadLengths.USUAL.told("five chips from 8 to 16 yd, a circle of 3 ft"))
                .isEqualTo("five chips from 8 to 16 yd, a circle of 3 ft");
        assertThat(new ReadLengths(LengthUnit.YARDS, true).told(words))
                .contains("8 to 16 yd")
                .contains("0.9 m");
    }

    @Test
    void aPlaceBesideALineIsToldWithItsUnitOrNotAtAll() {
        assertThat(ReadLengths.USUAL.side(-5.5)).isEqualTo("6 yd left");
        assertThat(METRIC.bracketed(5.6)).isEqualTo(" (6 m right)");
        assertThat(METRIC.side(0.4)).isEmpty();
        assertThat(METRIC.bracketed(-0.4)).isEmpty();
        assertThat(ReadLengths.in(LengthUnit.METRES)).isEqualTo(METRIC);
        assertThat(ReadLengths.in(LengthUnit.YARDS).fine(4)).isEqualTo("4.4 yd");
    }

    @Test
    void aHandsBreadthIsToldSmall() {
        assertThat(METRIC.hand(0.4572)).isEqualTo("46 cm");
        assertThat(ReadLengths.USUAL.hand(0.4572)).isEqualTo("18 in");
    }
}
