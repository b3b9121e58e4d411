package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class RealScoresTest {
    private static final RealScores.Here HERE = new RealScores.Here("Links", "white", 18, Optional.empty());

    @Test
    void whatNobodyScoresIsSetAside() {
        RealScores real = RealScores.of(
                new ScoreFile.Totals(List.of(total(2, 82), total(3, 41), total(4, 200)), List.of()), HERE);

        assertThat(real.scores()).containsExactly(82.0);
        assertThat(real.setAside())
                .containsExactly(
                        "line 3: 41 is no score of 18 holes; 54 to 180 is, and a round of other holes says so in a column holes.",
                        "line 4: 200 is no score of 18 holes; 54 to 180 is, and a round of other holes says so in a column holes.");
    }

    private static ScoreFile.Total total(long line, int score) {
        return new ScoreFile.Total(
                line,
                Optional.empty(),
                score,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty());
    }
}
