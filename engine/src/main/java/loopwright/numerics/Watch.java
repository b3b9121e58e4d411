package loopwright.numerics;

/** Progress and cancelling of long work: passed in by the caller, polled by the worker. */
public interface Watch {

    /** A watch that never cancels and ignores progress. */
    Watch NONE = new Watch() {
        @Override
        public boolean cancelled() {
            return false;
        }

        @Override
        public void at(long done, long total) {
            // nobody is looking
        }
    };

    /** True once the caller no longer wants the result; the worker then throws {@link Cancelled}. */
    boolean cancelled();

    /** Reports that {@code done} of {@code total} equal steps are finished. */
    void at(long done, long total);

    /** This watch for a part of the work whose own steps nobody is to see: it still cancels. */
    default Watch withoutProgress() {
        Watch whole = this;
        return new Watch() {
            @Override
            public boolean cancelled() {
                return whole.cancelled();
            }

            @Override
            public void at(long done, long total) {
                // the whole counts in its own steps
            }
        };
    }

    /** Throws {@link Cancelled} if the caller has given up. */
    default void check() {
        if (cancelled()) {
            throw new Cancelled();
        }
    }

    /** Thrown by work that was cancelled; carries no result. */
    final class Cancelled extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public Cancelled() {
            super("cancelled");
        }
    }
}
