package loopwright.action;

import java.nio.file.Path;
import java.util.List;
import loopwright.scoring.RoundReview;
import loopwright.scoring.StrokesBaseline;

/** Reviews the rounds of a file against a baseline. */
public final class RoundReviews {
    private final RoundFile files;
    private final StrokesBaseline baseline;

    public RoundReviews(RoundFile files, StrokesBaseline baseline) {
        this.files = files;
        this.baseline = baseline;
    }

    /** Reads a file; what is wrong in it is for the caller to show before anything is reviewed. */
    public RoundImport read(Path file) {
        return files.read(file);
    }

    /**
     * Reviews every round that was read.
     *
     * @param keepGoodRows the user's word that the good rows may be used although others are bad
     */
    public List<RoundReview> review(Path file, RoundImport rounds, boolean keepGoodRows) {
        int bad = rounds.problems().size();
        if (bad > 0 && !keepGoodRows) {
            throw new UserFault(
                    file + " has " + (bad == 1 ? "a row" : bad + " rows") + " that cannot be used, the first in "
                            + rounds.problems().get(0).sentence()
                            + " Nothing was kept; mend the file, or add --keep-good-rows.");
        }
        if (rounds.rounds().isEmpty()) {
            throw new UserFault(file + " has no hole that can be used; at least one hole with its score is needed.");
        }
        return rounds.rounds().stream()
                .map(round -> RoundReview.of(round, baseline))
                .toList();
    }
}
