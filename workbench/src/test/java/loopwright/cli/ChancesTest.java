package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChancesTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0.0 %, <0.1%",
        "0.0004, 0.0 %, <0.1%",
        "0.085, 8.5 %, 8.5%",
        "0.0996, 10 %, 10.0%",
        "0.342, 34 %, 34.2%",
        "0.9951, 99.5 %, 99.5%",
        "0.9997, over 99.9 %, >99.9%",
        "1, 100 %, >99.9%"
    })
    void aChanceIsNotRoundedToACertainty(double chance, String percent, String column) {
        assertThat(Chances.percent(chance)).isEqualTo(percent);
        assertThat(Chances.column(chance)).isEqualTo(column);
    }
}
