package loopwright.action;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

/** Counts failed attempts by name and by place: after a few of them further ones are refused for a while. */
public final class Attempts {
    /** So many failures within the span are a slip of memory; more are somebody guessing (common practice, no source). */
    public static final int MOST = 5;

    public static final Duration SPAN = Duration.ofMinutes(15);
    private static final int MOST_KEYS = 10_000;

    private final Clock clock;
    private final Map<String, Deque<Instant>> failures = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Deque<Instant>> eldest) {
            return size() > MOST_KEYS;
        }
    };

    public Attempts(Clock clock) {
        this.clock = clock;
    }

    /** True if another attempt may be made under this key. */
    public synchronized boolean mayTry(String key) {
        Deque<Instant> past = failures.get(key);
        if (past == null) {
            return true;
        }
        Instant start = clock.instant().minus(SPAN);
        while (!past.isEmpty() && past.peekFirst().isBefore(start)) {
            past.removeFirst();
        }
        return past.size() < MOST;
    }

    public synchronized void failed(String key) {
        failures.computeIfAbsent(key, k -> new ArrayDeque<>()).addLast(clock.instant());
    }

    public synchronized void succeeded(String key) {
        failures.remove(key);
    }
}
