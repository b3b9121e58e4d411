package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import loopwright.action.UserFault;
import loopwright.scoring.ApproachResult;
import loopwright.scoring.CourseCard.HoleCard;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Lie;
import loopwright.scoring.ShotRecord;
import loopwright.scoring.TeeBall;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HoleShorthandTest {
    private static final HoleShorthand PLAIN = new HoleShorthand(7, Optional.empty());

    private static HoleShorthand par(int par, double yards) {
        return new HoleShorthand(7, Optional.of(new HoleCard(7, par, Distance.ofYards(yards))));
    }

    @Test
    void aLineOfCounts() {
        HoleRecord hole = par(4, 371).counts("5 l s 0 1 4.5 2");
        assertThat(hole.number()).isEqualTo(7);
        assertThat(hole.score()).hasValue(5);
        assertThat(hole.counts().teeBall()).hasValue(TeeBall.LEFT);
        assertThat(hole.counts().approach()).hasValue(ApproachResult.SHORT);
        assertThat(hole.counts().firstPutt().orElseThrow().yards()).isCloseTo(4.5, within(1e-9));
        assertThat(hole.putts()).hasValue(2);
        assertThat(hole.par()).hasValue(4);
    }

    @Test
    void aParThreeHasNoTeeBallToCount() {
        HoleRecord hole = par(3, 150).counts("3 g 0 0 9 2");
        assertThat(hole.counts().teeBall()).isEmpty();
        assertThat(hole.counts().approach()).hasValue(ApproachResult.ON_GREEN);
        assertThat(hole.putts()).hasValue(2);
    }

    @Test
    void whatIsNotTypedIsNotKnown() {
        assertThat(PLAIN.counts("6").counts().isEmpty()).isTrue();
        assertThat(PLAIN.counts("6 - g").counts().approach()).hasValue(ApproachResult.ON_GREEN);
    }

    @Test
    void aConcededPuttAndAHolePickedUp() {
        assertThat(PLAIN.counts("4 i g 0 0 6 1c").end()).isEqualTo(HoleEnd.CONCEDED);
        assertThat(PLAIN.counts("x x").end()).isEqualTo(HoleEnd.PICKED_UP);
        assertThat(PLAIN.strokes("t380 f150 g20 g2c").end()).isEqualTo(HoleEnd.CONCEDED);
        assertThat(PLAIN.strokes("t380 f150 g20 g2c").score()).hasValue(4);
        assertThat(PLAIN.strokes("t380 x150p").end()).isEqualTo(HoleEnd.PICKED_UP);
    }

    @Test
    void aLineOfStrokes() {
        HoleRecord hole = par(4, 371).strokes("t/d! t/3-wood r152/7 s21 g11 g2");
        assertThat(hole.score()).hasValue(7);
        assertThat(hole.shots())
                .extracting(ShotRecord::lie)
                .containsExactly(Lie.TEE, Lie.TEE, Lie.ROUGH, Lie.SAND, Lie.GREEN, Lie.GREEN);
        assertThat(hole.shots().get(0).toHole().yards()).isCloseTo(371, within(1e-9));
        assertThat(hole.shots().get(0).penaltyStrokes()).isEqualTo(1);
        assertThat(hole.shots().get(1).club()).hasValue("3-wood");
        assertThat(hole.shots().get(4).toHole().feet()).isCloseTo(11, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5 q", "55 l", "5 l s 0 1 4 2 9", "5 l s 0 1 400", "- l", "5 l s NaN", "NaN", "-3"})
    void badCountsAreOneSentence(String line) {
        assertThatThrownBy(() -> PLAIN.counts(line))
                .isInstanceOf(UserFault.class)
                .hasMessageEndingWith(".");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "t", "q100", "t380 c", "t380c f100", "g2c", "t9999", "t380/", "f-3"})
    void badStrokesAreOneSentence(String line) {
        assertThatThrownBy(() -> PLAIN.strokes(line))
                .isInstanceOf(UserFault.class)
                .hasMessageEndingWith(".");
    }
}
