package loopwright.adapter.osm;

import java.util.Arrays;
import loopwright.geo.LatLon;

/** Positions by node id in three flat arrays (open addressing), 16 bytes a node and no objects. */
final class NodeStore {
    private static final long FREE = Long.MIN_VALUE;

    private long[] ids = new long[1024];
    private int[] latitudes = new int[1024];
    private int[] longitudes = new int[1024];
    private int size;

    NodeStore() {
        Arrays.fill(ids, FREE);
    }

    int size() {
        return size;
    }

    void put(long id, int latitudeE7, int longitudeE7) {
        if (size * 10L > ids.length * 6L) {
            grow();
        }
        int slot = slot(id);
        if (ids[slot] == FREE) {
            ids[slot] = id;
            size++;
        }
        latitudes[slot] = latitudeE7;
        longitudes[slot] = longitudeE7;
    }

    boolean contains(long id) {
        return ids[slot(id)] == id;
    }

    LatLon get(long id) {
        int slot = slot(id);
        if (ids[slot] != id) {
            throw new IllegalArgumentException("node " + id + " is not stored");
        }
        return new LatLon(latitudes[slot] / 1e7, longitudes[slot] / 1e7);
    }

    private int slot(long id) {
        long mixed = id * 0x9E3779B97F4A7C15L;
        int slot = (int) (mixed >>> 32) & (ids.length - 1);
        while (ids[slot] != FREE && ids[slot] != id) {
            slot = (slot + 1) & (ids.length - 1);
        }
        return slot;
    }

    private void grow() {
        long[] oldIds = ids;
        int[] oldLatitudes = latitudes;
        int[] oldLongitudes = longitudes;
        ids = new long[oldIds.length * 2];
        latitudes = new int[ids.length];
        longitudes = new int[ids.length];
        Arrays.fill(ids, FREE);
        size = 0;
        for (int i = 0; i < oldIds.length; i++) {
            if (oldIds[i] != FREE) {
                put(oldIds[i], oldLatitudes[i], oldLongitudes[i]);
            }
        }
    }
}
