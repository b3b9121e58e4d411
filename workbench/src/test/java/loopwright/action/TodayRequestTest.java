package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Warm-up balls in the unit of whoever reads them. */
class TodayRequestTest {
    private static TodayRequest typed(String balls, LengthUnit unit) {
        return new TodayRequest(Optional.of(balls), unit, List.of());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "driver: R8 R12 L3; 7-iron: L2/-5 | driver: R7.3 R11 L2.7; 7-iron: L1.8/-4.6",
                "56-wedge half: 0 l10/+10 | 56-wedge half: 0 l9.1/+9.1",
                "driver $1: R100 | driver $1: R91.4",
                "7-iron | 7-iron"
            })
    void yardsAreReadInMetres(String yards, String metres) {
        assertThat(typed(yards, LengthUnit.YARDS).ballsIn(LengthUnit.METRES)).contains(metres);
    }

    @Test
    void metresAreReadInYards() {
        assertThat(typed("driver: R7.3 R11 L2.7", LengthUnit.METRES).ballsIn(LengthUnit.YARDS))
                .contains("driver: R8 R12 L3");
    }

    @Test
    void whatWasTypedInTheReadersUnitStaysAsItWasTyped() {
        String typed = "driver:  R8.0, R12\nL3";
        assertThat(typed(typed, LengthUnit.METRES).ballsIn(LengthUnit.METRES)).contains(typed);
        assertThat(typed(typed, LengthUnit.YARDS).ballsIn(LengthUnit.YARDS)).contains(typed);
    }
}
