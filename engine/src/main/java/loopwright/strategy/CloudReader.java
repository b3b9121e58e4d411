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

    /** What the clouds were asked for; a fan of aims asks for the same again and again. */
    private record Asked(
            int shot, Surface surface, Situation situation, int length, int bearing, int points, boolean report) {}

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
        boolean turning = library.turnsWithTheWind(shot);
        double x = turning ? turns * CloudLibrary.BEARINGS : 0;
        int bearing = (int) x % CloudLibrary.BEARINGS;
        share = (float) (x - (int) x);
        Asked ask = new Asked(shot, surface, situation, library.length(shot, metres), bearing, points, report);
        if (before == null || !ask.equals(asked)) {
            int next = (bearing + 1) % CloudLibrary.BEARINGS;
            before = library.cloud(shot, surface, situation, metres, bearing, points, report);
            after = turning ? library.cloud(shot, surface, situation, metres, next, points, report) : null;
            asked = ask;
        }
        Cloud near = before;
        if (after == null) {
            return near;
        }
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
