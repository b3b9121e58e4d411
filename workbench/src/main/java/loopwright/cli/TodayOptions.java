package loopwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.LengthUnit;
import loopwright.action.TodayRequest;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options for what is known of the day beside its weather. */
final class TodayOptions {
    @Option(
            names = "--today",
            paramLabel = "BALLS",
            description = "Warm-up balls, right or left at the finish in --units: \"driver: R8 R12 L3; 7-iron: L2/-5\""
                    + " (after the slash: long or short of expected); or a file that holds them.")
    private @Nullable String balls;

    @Option(
            names = "--plays-longer",
            paramLabel = "PERCENT",
            description = "The coach's dial: the day plays so many percent longer; with a name, e.g. wet=2. Repeat it.")
    private List<String> playsLonger = new ArrayList<>();

    TodayRequest request(LengthUnit unit) {
        return new TodayRequest(Optional.ofNullable(balls).map(TodayOptions::text), unit, playsLonger);
    }

    /** What the file holds, if there is one of this name; else the words themselves. */
    private static String text(String words) {
        try {
            Path file = Path.of(words);
            return Files.isRegularFile(file) ? Files.readString(file) : unlessFile(words);
        } catch (InvalidPathException e) {
            return words;
        } catch (IOException e) {
            throw new UserFault("--today " + words + " cannot be read as text; save it as plain text in UTF-8.", e);
        }
    }

    private static String unlessFile(String words) {
        if (!words.contains(":")) {
            throw new UserFault(
                    "--today \"" + words + "\" is neither a file nor balls; write for example \"driver: R8 R12 L3\".");
        }
        return words;
    }
}
