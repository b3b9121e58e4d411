package loopwright.action;

/** A visitor asked for what his role may not do. */
public final class Forbidden extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public Forbidden() {
        super("This account may not do that; ask the owner of the bench.");
    }
}
