package loopwright.adapter.store;

import java.security.SecureRandom;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Names for what is kept: short enough for an address, too many to be guessed (50 bits). */
final class Ids {
    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz023456789";
    private static final int LENGTH = 10;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Ids() {}

    static String fresh() {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            out.append(LETTERS.charAt(RANDOM.nextInt(LETTERS.length())));
        }
        return out.toString();
    }

    /** Times are kept to the millisecond, so that what is read back is equal. */
    static Instant now() {
        return Instant.now().truncatedTo(ChronoUnit.MILLIS);
    }
}
