package loopwright.adapter.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import loopwright.action.UserFault;
import loopwright.player.DayEffect;
import loopwright.player.Habit;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.PlayerProfile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonPlayerFilesTest {
    private final JsonPlayerFiles files = new JsonPlayerFiles();

    @TempDir
    private Path folder;

    @Test
    void whatIsWrittenReadsBackTheSame() {
        Path file = folder.resolve("player.json");
        PlayerProfile profile = profile();
        files.write(profile, file);

        PlayerProfile again = files.read(file);

        // degrees and radians are converted twice: a few units in the last place
        assertThat(again)
                .usingRecursiveComparison()
                .withComparatorForType((a, b) -> Math.abs(a - b) <= 1e-12 * Math.abs(b) ? 0 : 1, Double.class)
                .isEqualTo(profile);
    }

    @Test
    void writingTwiceGivesTheSameBytes() throws IOException {
        Path first = folder.resolve("a.json");
        Path second = folder.resolve("b.json");
        files.write(profile(), first);
        files.write(profile(), second);

        assertThat(Files.readString(first)).isEqualTo(Files.readString(second));
        assertThat(folder.toFile().list()).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"carrySdMetres\" : [0-9.]+ | \"carrySdMetres\" : -2 | swings[0].pattern cannot be used",
                "\"carrySdMetres\" : [0-9.]+ | \"carrySdMetres\" : \"wide\" | swings[0].pattern.carrySdMetres is \"wide\"",
                "\"hand\" : \"right\" | \"hand\" : \"both\" | one of right, left is expected",
                "\"level\" : 90.0 | \"level\" : 9000 | 9000",
                "\"name\" : | \"nom\" : | has no \"name\"",
                "\"par-five\" : \"3-wood\" | \"par-five\" : \"spoon\" | habit.teeClubs.par-five is \"spoon\", which is no club",
                "\"aim\" : \"middle-of-green\" | \"aim\" : \"pin\" | one of flag, middle-of-green is expected",
                "\"layUpMetres\" : 80.0 | \"layUpMetres\" : 800 | not 800.0 m",
                "\"loopwrightPlayer\" : 1 | \"loopwrightPlayer\" : 7 | reads version 1",
                "\"swings\" | \"swings | is not JSON",
            })
    void brokenFileIsToldInOneSentence(String pattern, String replacement, String expected) throws IOException {
        Path file = folder.resolve("p.json");
        Files.writeString(
                file,
                JsonPlayerFiles.text(profile())
                        .replaceFirst(pattern, java.util.regex.Matcher.quoteReplacement(replacement)));

        assertThatThrownBy(() -> files.read(file))
                .isInstanceOf(UserFault.class)
                .hasMessageStartingWith(file.toString())
                .hasMessageContaining(expected);
    }

    @Test
    void emptyAndMissingFilesAreTold() throws IOException {
        Path empty = Files.createFile(folder.resolve("empty.json"));

        assertThatThrownBy(() -> files.read(empty))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("is empty");
        assertThatThrownBy(() -> files.read(folder.resolve("none.json")))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("does not exist");
    }

    @Test
    void aFileWithoutHabitsIsReadWithTheUsualOnes() throws IOException {
        Path file = folder.resolve("player.json");
        files.write(profile(), file);
        Files.writeString(file, Files.readString(file).replaceFirst("(?s),\\s*\"habit\" : \\{.*?\\}.*?\\}", ""));

        assertThat(Files.readString(file)).doesNotContain("habit");
        assertThat(files.read(file).habit()).isEqualTo(Habit.USUAL);
    }

    private static PlayerProfile profile() {
        Habit habit = new Habit(
                Map.of(Habit.HoleKind.PAR_FIVE, "3-wood"), Habit.Aim.MIDDLE_OF_GREEN, Habit.ChipChoice.ALWAYS_CHIP, 80);
        return new PlayerProfile(PlayerPrior.of(90, Player.Hand.RIGHT).player("A. Player"), DayEffect.ASSUMED, habit);
    }
}
