package loopwright.action;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import loopwright.action.Jobs.Job;

/**
 * All background work of the bench, found by its key by those who may see its player. A key is the kind of work, a blank,
 * the player's id, a dot, and the rest.
 */
public final class JobBoard implements AutoCloseable {
    private final Workroom room;
    private final List<Jobs> pools = new CopyOnWriteArrayList<>();

    public JobBoard(Workroom room) {
        this.room = room;
    }

    /** A pool of its own on this board; see {@link Jobs}. */
    Jobs open(int workers, int keep) {
        Jobs pool = new Jobs(workers, keep);
        pools.add(pool);
        return pool;
    }

    /** The job of a key. */
    public Job<?> get(String key) {
        String[] parts = key.split("[ .]", 3);
        room.store().requireReadable(parts.length < 3 ? "" : parts[1]);
        return pools.stream()
                .map(pool -> pool.find(key))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow(() -> new UserFault("This work is not known any longer; load the page again."));
    }

    @Override
    public void close() {
        pools.forEach(Jobs::close);
    }
}
