package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import loopwright.player.DayEffect;
import loopwright.player.Habit;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.PlayerProfile;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;

class InterviewAnswersTest {
    @Test
    void nothingAnsweredIsTheUsualHabit() {
        assertThat(new InterviewAnswers(Map.of()).habit()).isEqualTo(Habit.USUAL);
    }

    @Test
    void habitsAreReadAndComeBackFromAPlayerWhoCameAsAFile() {
        Habit habit =
                new InterviewAnswers(Map.of("teeFour", "3w", "aim", "middle", "chip", "pitch", "layUp", "100")).habit();
        assertThat(habit.teeClubs()).isEqualTo(Map.of(Habit.HoleKind.PAR_FOUR, "3-wood"));
        assertThat(habit.aim()).isEqualTo(Habit.Aim.MIDDLE_OF_GREEN);
        assertThat(habit.chip()).isEqualTo(Habit.ChipChoice.ALWAYS_PITCH);
        assertThat(habit.layUpMetres()).isEqualTo(Distance.ofYards(100).metres());
        Player player = PlayerPrior.of(91, Player.Hand.LEFT).player("synthetic");
        InterviewAnswers again = InterviewAnswers.of(new PlayerProfile(player, DayEffect.ASSUMED, habit));
        assertThat(again.habit()).isEqualTo(habit);
        assertThat(again.get("hand")).isEqualTo("left");
        assertThat(again.get("level")).isEqualTo("91");
    }

    @Test
    void whatIsNoClubOrNoDistanceIsNamed() {
        assertThatThrownBy(() -> new InterviewAnswers(Map.of("teeFive", "broom")).habit())
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("broom");
        assertThatThrownBy(() -> new InterviewAnswers(Map.of("layUp", "900")).habit())
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("900");
    }
}
