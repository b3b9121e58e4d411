package loopwright.strategy;

/**
 * What one hole hands to the hole before it: the probability of beating the target for each number of strokes in hand,
 * that is the limit less what has been counted so far. Below {@link #lowest} the target is lost (exactly 0), from
 * {@link #secured} on it is certain whatever follows (exactly 1). Never falls as strokes in hand rise.
 */
public final class HandOver {
    /** After the last hole: beaten if nothing has been overspent. */
    public static final HandOver END = new HandOver(0);

    private final int lowest;
    private final double[] chance;

    /** The chances for {@code lowest}, {@code lowest + 1} and so on strokes in hand. */
    public HandOver(int lowest, double... chance) {
        double before = 0;
        for (double c : chance) {
            if (!(c >= before && c <= 1)) {
                throw new IllegalArgumentException("chances rise with the strokes in hand, from 0 to 1, not " + c);
            }
            before = c;
        }
        this.lowest = lowest;
        this.chance = chance.clone();
    }

    /** The fewest strokes in hand with which the target can still be beaten. */
    public int lowest() {
        return lowest;
    }

    /** The fewest strokes in hand with which it is certain. */
    public int secured() {
        return lowest + chance.length;
    }

    /** P(target is beaten | strokes in hand). */
    public double at(int inHand) {
        if (inHand < lowest) {
            return 0;
        }
        return inHand >= secured() ? 1 : chance[inHand - lowest];
    }

    /** The same once a hole begun with {@code inHand} has been finished in {@code strokes}. */
    public double afterHole(ScoreTable table, int inHand, int strokes) {
        return at(inHand - table.counts(strokes));
    }
}
