package loopwright.action;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/** What was worked out for the keys used last. Two who ask for the same at once wait for one piece of work. */
public final class Remembered<K, V> {
    private final Map<K, CompletableFuture<V>> kept;

    public Remembered(int most) {
        kept = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, CompletableFuture<V>> eldest) {
                return size() > most;
            }
        };
    }

    /** The value of a key; work that fails is not remembered. */
    public V get(K key, Supplier<V> work) {
        CompletableFuture<V> mine = new CompletableFuture<>();
        CompletableFuture<V> known;
        synchronized (kept) {
            known = kept.get(key);
            if (known == null) {
                kept.put(key, mine);
            }
        }
        if (known != null) {
            return joined(known);
        }
        try {
            V value = work.get();
            mine.complete(value);
            return value;
        } catch (RuntimeException | Error e) {
            synchronized (kept) {
                kept.remove(key, mine);
            }
            mine.completeExceptionally(e);
            throw e;
        }
    }

    private static <V> V joined(CompletableFuture<V> work) {
        try {
            return work.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException ours) {
                throw ours;
            }
            throw e;
        }
    }
}
