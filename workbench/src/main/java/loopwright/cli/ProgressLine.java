package loopwright.cli;

import java.io.PrintWriter;
import loopwright.numerics.Watch;

/** Shows progress on one line of the terminal that writes over itself; says nothing where nobody is watching. */
final class ProgressLine implements Watch {
    private final PrintWriter err;
    private final String unit;
    private final boolean shown;
    private long lastTotal;

    ProgressLine(PrintWriter err, String unit) {
        this.err = err;
        this.unit = unit;
        this.shown = System.getenv("TERM") != null && System.getenv("CI") == null;
    }

    @Override
    public boolean cancelled() {
        return Thread.currentThread().isInterrupted();
    }

    /** Steps of a hundred belong to one hole's solve and are not shown; whole holes are. */
    @Override
    public synchronized void at(long done, long total) {
        if (!shown || total == 100) {
            return;
        }
        lastTotal = total;
        err.printf("\r%s %d of %d ", unit, done, total);
        if (done == lastTotal) {
            err.print("\r                    \r");
        }
        err.flush();
    }
}
