package loopwright.scoring;

/**
 * What strokes of one row gained.
 *
 * @param strokes how many strokes (or penalty strokes) it covers
 * @param gained against the baseline; below zero: lost
 * @param unpublished how many of the strokes needed our extension of the published tables
 */
public record Gain(Band band, int strokes, double gained, int unpublished) {
    Gain plus(Gain other) {
        return new Gain(band, strokes + other.strokes, gained + other.gained, unpublished + other.unpublished);
    }
}
