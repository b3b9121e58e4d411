package loopwright.adapter.store;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.util.concurrent.Semaphore;
import loopwright.action.Passwords;

/**
 * Argon2id with 19 MiB, two passes and one lane (OWASP's password storage advice, from memory); at most two at a time,
 * so that a flood of log-ins cannot take all memory.
 */
public final class Argon2Passwords implements Passwords {
    private static final int KIBIBYTES = 19_456;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int BYTES = 32;
    private static final int SALT_BYTES = 16;
    private static final Semaphore ROOM = new Semaphore(2);

    @Override
    public String hash(String password) {
        Argon2Function function = Argon2Function.getInstance(KIBIBYTES, PASSES, LANES, BYTES, Argon2.ID);
        ROOM.acquireUninterruptibly();
        try {
            return Password.hash(password)
                    .addRandomSalt(SALT_BYTES)
                    .with(function)
                    .getResult();
        } finally {
            ROOM.release();
        }
    }

    @Override
    public boolean matches(String password, String hash) {
        ROOM.acquireUninterruptibly();
        try {
            return Password.check(password, hash).with(Argon2Function.getInstanceFromHash(hash));
        } finally {
            ROOM.release();
        }
    }
}
