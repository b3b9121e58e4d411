package loopwright.boot;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import loopwright.cli.StoreOptions;
import org.jspecify.annotations.Nullable;

/** A bench with the demo on a free port, and, where wanted, a browser that looks at it. */
final class OpenBench implements AutoCloseable {
    private final Bench bench;
    private final int port;
    private @Nullable Browser browser;

    private OpenBench(Path folder) {
        System.setProperty("loopwright.home", "..");
        bench = Bench.on(new StoreOptions.Where(folder, Optional.empty()), true);
        port = bench.start(0);
    }

    static OpenBench on(Path folder) {
        return new OpenBench(folder);
    }

    /** Skips the tests where there is no browser. */
    static OpenBench withBrowser(Path folder) {
        OpenBench open = on(folder);
        try {
            open.browser = Browser.open(open.port);
            return open;
        } catch (RuntimeException e) {
            open.close();
            throw e;
        }
    }

    String origin() {
        return "http://127.0.0.1:" + port;
    }

    Browser browser() {
        return Objects.requireNonNull(browser);
    }

    @Override
    public void close() {
        if (browser != null) {
            browser.close();
        }
        bench.close();
    }
}
