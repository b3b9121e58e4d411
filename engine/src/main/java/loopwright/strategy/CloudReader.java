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
    /** Of the open cloud, {@link CloudLibrary.Asked#number}; a fan of aims asks for the same again and again. */
    private long number;

    private float share;

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
        CloudLibrary.Asked asked =
                new CloudLibrary.Asked(shot, surface, situation, library.length(shot, metres), bearing, points, report);
        if (before == null || asked.number() != number) {
            before = library.cloud(asked);
            after = turning ? library.cloud(asked.toward((bearing + 1) % CloudLibrary.BEARINGS)) : null;
            number = asked.number();
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
        out.weighAs(near);
        return out;
    }

    /** Makes points {@code from} to {@code to} of the open cloud ready. */
    void read(int from, int to) {
        if (before != null && after != null && room != null) {
            room.between(before, after, share, from, to);
        }
    }
}
