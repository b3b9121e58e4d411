package loopwright.scoring;

/** So many of so many, counted only where the record tells. */
public record Share(int made, int of) {
    static final Share NONE = new Share(0, 0);

    public Share {
        if (made < 0 || made > of) {
            throw new IllegalArgumentException(made + " of " + of + " is no share");
        }
    }

    Share with(boolean success) {
        return new Share(made + (success ? 1 : 0), of + 1);
    }
}
