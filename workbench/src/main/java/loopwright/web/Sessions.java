package loopwright.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import loopwright.action.Tokens;

/** Who is logged in, by the hash of the token in his cookie; gone when the bench ends. */
final class Sessions {
    /** Without a request for so long a session ends: a working day. */
    static final Duration IDLE = Duration.ofHours(12);

    private static final int MOST = 5_000;

    private record Session(String account, Instant last) {}

    private final Clock clock;
    private final Map<String, Session> sessions = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Session> eldest) {
            return size() > MOST;
        }
    };

    Sessions(Clock clock) {
        this.clock = clock;
    }

    /** Begins a session under a token that nobody has seen before. */
    synchronized String begin(String account) {
        String token = Tokens.fresh();
        sessions.put(Tokens.hash(token), new Session(account, clock.instant()));
        return token;
    }

    /** The account of a token, if its session goes on. */
    synchronized Optional<String> findAccount(String token) {
        String key = Tokens.hash(token);
        Session session = sessions.get(key);
        if (session == null || session.last().plus(IDLE).isBefore(clock.instant())) {
            sessions.remove(key);
            return Optional.empty();
        }
        sessions.put(key, new Session(session.account(), clock.instant()));
        return Optional.of(session.account());
    }

    synchronized void end(String token) {
        sessions.remove(Tokens.hash(token));
    }

    /** Ends every session of an account. */
    synchronized void endAll(String account) {
        sessions.values().removeIf(s -> s.account().equals(account));
    }
}
