package loopwright.boot;

import java.util.logging.Level;
import java.util.logging.Logger;

/** Libraries that log do so only when something is wrong: the terminal belongs to the user. */
final class Logs {
    /** Held here because the logging of the JDK forgets loggers that nobody holds. */
    private static final Logger ROOT = Logger.getLogger("");

    private Logs() {}

    static void onlyWarnings() {
        ROOT.setLevel(Level.WARNING);
    }
}
