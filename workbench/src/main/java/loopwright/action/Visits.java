package loopwright.action;

import java.util.Optional;

/** On whose behalf the work of this thread is done: a person who has logged in, or the program and its owner at home. */
public final class Visits {
    private static final ThreadLocal<Account> NOW = new ThreadLocal<>();

    /** Nobody: the person at this computer, or work in the background whose request was let in before. */
    public Optional<Account> account() {
        return Optional.ofNullable(NOW.get());
    }

    public void begin(Account account) {
        NOW.set(account);
    }

    public void end() {
        NOW.remove();
    }
}
