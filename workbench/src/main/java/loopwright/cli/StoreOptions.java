package loopwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
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
        return where(System::getenv);
    }

    private Where where(Function<String, @Nullable String> environment) {
        String folder = environment.apply("LOOPWRIGHT_DATA");
        Path home = Path.of(System.getProperty("user.home"), ".loopwright");
        Path chosen = data != null ? data : folder != null && !folder.isBlank() ? Path.of(folder) : home;
        String server = database != null ? database : environment.apply("LOOPWRIGHT_DATABASE");
        return new Where(chosen, Optional.ofNullable(server).filter(s -> !s.isBlank()));
    }
}
