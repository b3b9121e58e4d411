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
}
