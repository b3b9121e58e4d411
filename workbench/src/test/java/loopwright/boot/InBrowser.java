package loopwright.boot;

import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** Tests of a bench with the demo, looked at in a real browser: each class has a bench of its own. */
abstract class InBrowser {
    @TempDir
    private static Path folder;

    private static @Nullable OpenBench bench;

    @BeforeAll
    static void open() {
        bench = OpenBench.withBrowser(folder);
    }

    @AfterAll
    static void close() {
        if (bench != null) {
            bench.close();
        }
    }

    /** What the bench keeps lies here; removed when the class is done. */
    static Path folder() {
        return folder;
    }

    static OpenBench bench() {
        return Objects.requireNonNull(bench);
    }

    static Browser browser() {
        return bench().browser();
    }
}
