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
    /** Results that are kept of whole rounds and of what takes as long. */
    private static final int KEPT_ROUNDS = 36;

    private final Workroom room;
    private final List<Jobs> pools = new CopyOnWriteArrayList<>();
    private final Jobs rounds = open(1, KEPT_ROUNDS);

    public JobBoard(Workroom room) {
        this.room = room;
    }

    /** The pool of what works over whole rounds: one at a time, since each keeps all cores busy and much of the memory. */
    Jobs rounds() {
        return rounds;
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
