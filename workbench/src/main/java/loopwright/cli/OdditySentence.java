package loopwright.cli;

import java.util.Locale;
import loopwright.action.ReadLengths;
import loopwright.scoring.Oddity;
import loopwright.units.Distance;

/** What looks odd in a record, as a sentence for the player. */
final class OdditySentence {
    private static final double NEAR_METRES = Distance.ofYards(10).metres();

    private OdditySentence() {}

    static String of(Oddity oddity, ReadLengths lengths) {
        String where = "Hole " + oddity.hole() + (oddity.shot() > 0 ? ", stroke " + oddity.shot() : "") + ": ";
        return where + what(oddity, lengths);
    }

    private static String what(Oddity o, ReadLengths lengths) {
        return switch (o.kind()) {
            case FARTHER_WITHOUT_PENALTY ->
                "the ball is farther from the hole (" + length(o.found(), lengths) + ") than before ("
                        + length(o.beside(), lengths) + "), without a penalty stroke.";
            case VERY_LONG_PUTT -> "a putt from " + length(o.found(), lengths) + ".";
            case SCORE_DOES_NOT_ADD_UP ->
                "the score says " + whole(o.found()) + ", strokes and penalties add up to " + whole(o.beside())
                        + "; the strokes are used.";
            case HOLED_FROM_FAR ->
                "the last stroke was holed from " + length(o.found(), lengths) + "; is a stroke missing?";
            case NOT_FROM_TEE -> "the first stroke was not from a tee.";
            case TEE_AGAIN_WITHOUT_PENALTY -> "a stroke from the tee again, without a penalty stroke before it.";
            case COUNTS_LEAVE_NO_STROKE ->
                "the score of " + whole(o.found()) + " leaves no stroke beside " + whole(o.beside())
                        + " putts, chips and penalties.";
            case MANY_PUTTS -> whole(o.found()) + " putts.";
            case LENGTH_AND_PAR -> length(o.found(), lengths) + " for a par " + whole(o.beside()) + ".";
            case HIGH_SCORE -> "a score of " + whole(o.found()) + " on a par " + whole(o.beside()) + ".";
        };
    }

    private static String length(double metres, ReadLengths lengths) {
        return metres < NEAR_METRES ? lengths.near(metres) : lengths.far(metres);
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
