package loopwright.action;

import loopwright.numerics.Watch;

/** A part of long work: its own steps are shown as a stretch of the whole, in hundredths. */
record PartWatch(Watch whole, int from, int to) implements Watch {
    private static final int ALL = 100;

    @Override
    public boolean cancelled() {
        return whole.cancelled();
    }

    @Override
    public void at(long done, long total) {
        whole.at(from + (to - from) * done / Math.max(1, total), ALL);
    }
}
