package loopwright.action;

/**
 * Something the user typed or supplied cannot be used. The message is one sentence for a person: what is wrong, where
 * (file, line, column or field), and what to try. Leads to exit code 2; never used for faults of our own.
 */
public final class UserFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UserFault(String sentence) {
        super(sentence);
    }

    public UserFault(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    /** A number as a person types it: 700, 12.5. */
    public static String typed(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
