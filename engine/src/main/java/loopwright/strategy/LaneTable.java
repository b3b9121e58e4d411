package loopwright.strategy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The lanes of one hole, for what follows it and the table its strokes count in. With b strokes in hand on the tee,
 * b - c(n) are left if the hole ends after n strokes; below what keeps hope and above what leaves no doubt all are one.
 * Equal rests are one lane: in stroke play there is one for every number of strokes still allowed; a table with a
 * ceiling has a short chain of lanes for every b.
 */
final class LaneTable {
    /** No hole lasts longer. */
    private static final int MOST_STROKES = 200;

    private final int lost;
    private final int secured;
    private final ScoreTable table;
    private final Map<Key, Lane> known = new HashMap<>();
    private final List<Lane> lanes = new ArrayList<>();

    private record Key(int inHand, @Nullable Lane next) {}

    /** After the hole, the target is lost below {@code lowest} strokes in hand and certain from {@code secured} on. */
    LaneTable(int lowest, int secured, ScoreTable table) {
        lost = lowest - 1;
        this.secured = secured;
        this.table = table;
    }

    /** The fewest strokes in hand on the tee with which there is hope: a hole takes one stroke at least. */
    int lowestInHand() {
        return lost + 1 + table.counts(1);
    }

    /** Strokes in hand on the tee from which a hole of this many strokes leaves the target certain. */
    int securedInHand(int strokes) {
        return secured + table.counts(strokes);
    }

    /** The lane on the tee with so many strokes in hand. */
    Lane start(int inHand) {
        int last = MOST_STROKES;
        while (last > 0 && after(inHand, last) == after(inHand, last - 1)) {
            last--;
        }
        Lane lane = intern(after(inHand, last), null);
        for (int n = last - 1; n >= 0; n--) {
            lane = intern(after(inHand, n), lane);
        }
        return lane;
    }

    private int after(int inHand, int strokes) {
        return Math.max(lost, Math.min(secured, inHand - table.counts(strokes)));
    }

    private Lane intern(int inHand, @Nullable Lane next) {
        Key key = new Key(inHand, next);
        Lane lane = known.get(key);
        if (lane == null) {
            lane = new Lane(lanes.size(), inHand, next);
            lanes.add(lane);
            known.put(key, lane);
        }
        return lane;
    }

    /** Lanes asked for so far, in the order of solving, from a number on. */
    List<Lane> from(int number) {
        return List.copyOf(lanes.subList(number, lanes.size()));
    }
}
