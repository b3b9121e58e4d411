package loopwright.cli;

import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options that say which round is meant: course, player, target, holes. */
final class RoundOptions {
    @Option(names = "--course", required = true, paramLabel = "FILE", description = "The course (any map format).")
    private @Nullable Path course;

    @Option(names = "--player", required = true, paramLabel = "FILE", description = "The player file.")
    private @Nullable Path player;

    @Option(names = "--target", required = true, paramLabel = "SCORE", description = "The total to stay at or below.")
    int target;

    @Option(names = "--holes", defaultValue = "", paramLabel = "LIST", description = "Holes to play, e.g. 1-9.")
    String holes = "";

    @Option(names = "--seed", defaultValue = "1", paramLabel = "N", description = "Seed of every draw.")
    long seed;

    Path course() {
        return Objects.requireNonNull(course);
    }

    Path player() {
        return Objects.requireNonNull(player);
    }
}
