package loopwright.cli;

import java.util.function.BiFunction;
import java.util.function.Function;
import loopwright.action.BenchStore;
import loopwright.action.CarryStore;

/** Opens the store for one piece of work and closes it after. */
public final class StoreWork {
    private final Function<StoreOptions.Where, BenchStore> open;

    public StoreWork(Function<StoreOptions.Where, BenchStore> open) {
        this.open = open;
    }

    <T> T in(StoreOptions where, Function<BenchStore, T> work) {
        try (BenchStore store = open.apply(where.where())) {
            return work.apply(store);
        }
    }

    /** The same with the id of the player of this name or id. */
    <T> T of(StoreOptions where, String player, BiFunction<BenchStore, String, T> work) {
        return in(where, store -> work.apply(store, CarryStore.idOf(store.players(), player, "player")));
    }
}
