package loopwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where the bench keeps its things: command line before environment before the person's home. */
public final class StoreOptions {
    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Data folder. Default: LOOPWRIGHT_DATA, else .loopwright in your home.")
    private @Nullable Path data;

    @Option(
            names = "--database",
            paramLabel = "URL",
            description = "JDBC URL of a PostgreSQL database instead of the file. Default: LOOPWRIGHT_DATABASE.")
    private @Nullable String database;

    /** A place to keep things: the folder, and a server if there is one. */
    public record Where(Path folder, Optional<String> server) {}

    Where where() {
        return whereOr(environment("LOOPWRIGHT_DATA")
                .map(Path::of)
                .orElse(Path.of(System.getProperty("user.home"), ".loopwright")));
    }

    /** The same with another folder where the command line names none. */
    Where whereOr(Path otherwise) {
        return new Where(
                data != null ? data : otherwise,
                database != null ? Optional.of(database) : environment("LOOPWRIGHT_DATABASE"));
    }

    private static Optional<String> environment(String name) {
        return Optional.ofNullable(System.getenv(name)).filter(s -> !s.isBlank());
    }
}
