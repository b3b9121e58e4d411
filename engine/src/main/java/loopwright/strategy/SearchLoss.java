package loopwright.strategy;

import java.util.List;

/**
 * What a search lost against trying every option everywhere, strokes, estimated from a sample of states; may come out below
 * zero by chance.
 *
 * @param standardError of the sample, strokes
 */
public record SearchLoss(double strokes, double standardError) {
    static final SearchLoss NONE = new SearchLoss(0, 0);

    /** Of independent samples; of none, nothing lost. */
    public static SearchLoss sumOf(List<SearchLoss> samples) {
        double sum = 0;
        double squares = 0;
        for (SearchLoss each : samples) {
            sum += each.strokes;
            squares += each.standardError * each.standardError;
        }
        return new SearchLoss(sum, Math.sqrt(squares));
    }
}
