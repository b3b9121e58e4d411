package loopwright.cli;

import java.util.Optional;
import java.util.OptionalInt;
import loopwright.action.CourseChoice;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options that choose one course of a file. */
final class CourseChoiceOptions {
    @Option(names = "--name", paramLabel = "TEXT", description = "Part of the course's name.")
    private @Nullable String name;

    @Option(names = "--number", paramLabel = "N", description = "The course's number in \"course list\".")
    private @Nullable Integer number;

    CourseChoice toChoice() {
        return new CourseChoice(
                Optional.ofNullable(name), number == null ? OptionalInt.empty() : OptionalInt.of(number));
    }
}
