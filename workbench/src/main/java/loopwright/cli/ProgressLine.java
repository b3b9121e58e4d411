package loopwright.cli;

import java.io.PrintWriter;
import loopwright.numerics.Watch;

/** Shows progress on one line of the terminal that writes over itself; says nothing where nobody is watching. */
final class ProgressLine implements Watch {
    private final PrintWriter err;
    private final String unit;
    private final boolean shown;

    ProgressLine(PrintWriter err, String unit) {
        this.err = err;
        this.unit = unit;
        this.shown = System.getenv("TERM") != null && System.getenv("CI") == null;
    }

    @Override
    public boolean cancelled() {
        return Thread.currentThread().isInterrupted();
    }

    @Override
    public synchronized void at(long done, long total) {
        if (!shown) {
            return;
        }
        String line = unit + " " + done + " of " + total + " ";
        err.print("\r" + line);
        if (done == total) {
            err.print("\r" + " ".repeat(line.length()) + "\r");
        }
        err.flush();
    }
}
