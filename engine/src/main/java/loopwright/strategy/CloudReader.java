package loopwright.strategy;

import loopwright.ground.Situation;
import loopwright.ground.Surface;
import org.jspecify.annotations.Nullable;

/**
 * Reads clouds for any bearing of the aim: on a windy day those of the two nearest bearings that were flown, and what
 * lies between them on a straight line (the second order of a turn of 11 degrees is 0.5 % of what the wind does). A
 * workspace: one per thread.
 */
final class CloudReader {
    private final CloudLibrary library;
    private @Nullable Cloud before;
    private @Nullable Cloud after;
    private @Nullable Cloud room;
    private @Nullable Asked asked;
    private float share;

    /** What the two clouds were asked for; a fan of aims asks for the same again and again. */
    private record Asked(
            int shot, Surface surface, Situation situation, int bearingOrLength, int points, boolean report) {}

    CloudReader(CloudLibrary library) {
        this.library = library;
    }

    /**
     * Finds the cloud of a shot; its points can be used once they are {@link #read}.
     *
     * @param turns bearing of the aim in turns clockwise from north, 0 or more
     */
    Cloud open(
            int shot, Surface surface, Situation situation, double metres, double turns, int points, boolean report) {
        if (!library.turnsWithTheWind(shot)) {
            after = null;
            Asked ask = new Asked(shot, surface, situation, library.length(shot, metres), points, report);
            if (before == null || !ask.equals(asked)) {
                before = library.cloud(shot, surface, situation, metres, 0, points, report);
                asked = ask;
            }
            return before;
        }
        double x = turns * CloudLibrary.BEARINGS;
        int cell = (int) x;
        share = (float) (x - cell);
        Asked ask = new Asked(shot, surface, situation, cell % CloudLibrary.BEARINGS, points, report);
        if (before == null || after == null || !ask.equals(asked)) {
            int next = (ask.bearingOrLength + 1) % CloudLibrary.BEARINGS;
            before = library.cloud(shot, surface, situation, metres, ask.bearingOrLength, points, report);
            after = library.cloud(shot, surface, situation, metres, next, points, report);
            asked = ask;
        }
        Cloud near = before;
        Cloud out = room;
        if (out == null || !out.isRoomFor(near)) {
            out = near.room();
            room = out;
        }
        return out;
    }

    /** Makes points {@code from} to {@code to} of the open cloud ready. */
    void read(int from, int to) {
        if (before != null && after != null && room != null) {
            room.between(before, after, share, from, to);
        }
    }
}
