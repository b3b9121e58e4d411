package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BagAnswerTest {
    @ParameterizedTest
    @CsvSource({
        "0.004, 0.001, false", // four standard errors
        "0.004, 0.003, true", // within two
        "-0.00049, 0.00005, true", // would be told as -0.0 in 100
        "-0.002, 0.0004, false"
    })
    void whatIsNoiseOrTooLittleToTellIsTheSame(double gain, double error, boolean same) {
        BagAnswer.Change change =
                new BagAnswer.Change("5-iron left out", new BagAnswer.Worth(80, 0.5), gain, error, 0, List.of());
        assertThat(change.same()).isEqualTo(same);
    }
}
