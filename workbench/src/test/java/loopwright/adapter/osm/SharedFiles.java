package loopwright.adapter.osm;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;

/**
 * Real map files that lie outside the project, in a folder named "shared" beside one of the checkout's parents or
 * named by LOOPWRIGHT_SHARED. Tests that need them are skipped with a word where they are absent.
 */
public final class SharedFiles {
    private SharedFiles() {}

    public static Path course(String name) {
        Optional<Path> file = find("courses/" + name);
        Assumptions.assumeTrue(file.isPresent(), "the shared map file " + name + " is not here; test skipped");
        return file.orElseThrow();
    }

    private static Optional<Path> find(String relative) {
        String named = System.getenv("LOOPWRIGHT_SHARED");
        if (named != null) {
            return Optional.of(Path.of(named, relative)).filter(Files::exists);
        }
        for (Path folder = Path.of("").toAbsolutePath(); folder != null; folder = folder.getParent()) {
            Path file = folder.resolve("shared").resolve(relative);
            if (Files.exists(file)) {
                return Optional.of(file);
            }
        }
        return Optional.empty();
    }
}
