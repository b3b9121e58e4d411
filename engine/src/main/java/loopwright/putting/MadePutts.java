package loopwright.putting;

/** How many of the putts from one distance were holed. */
public record MadePutts(double metres, int tries, int made) {
    public MadePutts {
        if (!(metres > 0) || tries < 1 || made < 0 || made > tries) {
            throw new IllegalArgumentException("needs a distance above 0 and 0 <= made <= tries, tries >= 1");
        }
    }

    public double rate() {
        return (double) made / tries;
    }
}
