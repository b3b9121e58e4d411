package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import loopwright.action.UserFault;
import org.junit.jupiter.api.Test;

class QuestionsTest {
    private final StringWriter page = new StringWriter();

    @Test
    void aPersonIsAskedAgainUntilTheAnswerCanBeUsed() {
        Questions questions = asked("far\n900\n215,5\n", true);
        assertThat(questions.number("Driver carry in yards", 20, 380)).contains(215.5);
        assertThat(page.toString())
                .contains("\"far\" is no number")
                .contains("\"900\" is no answer to \"Driver carry in yards\"; 20 to 380 is accepted.");
    }

    @Test
    void aListOfAnswersEndsAtTheFirstThatCannotBeUsed() {
        assertThatThrownBy(() -> asked("88, 9x\n", false).wholeNumbers("Scores", 54, 180))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("\"9x\" is no whole number from 54 to 180");
    }

    @Test
    void theEndOfTheAnswersIsNoAnswerToWhatWasAskedAgain() {
        Questions questions = asked("far\n", true);
        assertThatThrownBy(() -> questions.number("Driver carry in yards", 20, 380))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("\"far\" is no number");
    }

    @Test
    void nothingSaidIsNotKnown() {
        Questions questions = asked("\n", true);
        assertThat(questions.number("Driver carry in yards", 20, 380)).isEmpty();
        // the end of the input as well
        assertThat(questions.wholeNumbers("Scores", 54, 180)).isEmpty();
    }

    private Questions asked(String answers, boolean asksAgain) {
        return new Questions(new PrintWriter(page, true), new BufferedReader(new StringReader(answers)), asksAgain);
    }
}
