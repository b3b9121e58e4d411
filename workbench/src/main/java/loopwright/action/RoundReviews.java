package loopwright.action;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loopwright.course.Course;
import loopwright.course.TeeSet;
import loopwright.scoring.CourseCard;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.RoundReview;
import loopwright.scoring.StrokesBaseline;

/** Keeps rounds in files and reviews them against a baseline. */
public final class RoundReviews {
    private final RoundFile files;
    private final CourseFiles courses;
    private final StrokesBaseline baseline;

    public RoundReviews(RoundFile files, CourseFiles courses, StrokesBaseline baseline) {
        this.files = files;
        this.courses = courses;
        this.baseline = baseline;
    }

    /** The card of a course: par and length from the named tees ("back", "middle" and "forward" always work). */
    public CourseCard card(Path courseFile, String tees) {
        Course course = courses.read(courseFile).course();
        TeeSet set = course.findTeeSet(tees)
                .orElseThrow(() -> new UserFault(course.name() + " has no " + tees + " tees; it has "
                        + String.join(
                                ", ",
                                course.teeSets().stream().map(TeeSet::name).toList())
                        + ", and back, middle and forward always work."));
        return CourseCard.of(course, set);
    }

    /** Reads a file; what is wrong in it is for the caller to show before anything is reviewed. */
    public RoundImport read(Path file) {
        return files.read(file);
    }

    /** Refuses a file that is there already, before anybody has typed a round for it. */
    public void requireNew(Path file) {
        if (Files.exists(file)) {
            throw new UserFault(file + " exists already; name a new file.");
        }
    }

    /** Writes a round to a new file. */
    public void save(RoundRecord round, Path file) {
        requireNew(file);
        files.write(List.of(round), file);
    }

    /**
     * Reviews every round that was read.
     *
     * @param card fills in par and length where the rounds do not say
     * @param keepGoodRows the user's word that the good rows may be used although others are bad
     */
    public List<RoundReview> review(Path file, RoundImport rounds, Optional<CourseCard> card, boolean keepGoodRows) {
        return usable(file.toString(), rounds, card, keepGoodRows).stream()
                .map(round -> RoundReview.of(round, baseline))
                .toList();
    }

    /** The rounds that may be used, completed by the card; a {@link UserFault} if a row is bad and nobody allowed that. */
    static List<RoundRecord> usable(String label, RoundImport rounds, Optional<CourseCard> card, boolean keepGoodRows) {
        int bad = rounds.problems().size();
        if (bad > 0 && !keepGoodRows) {
            throw new UserFault(label + " has " + (bad == 1 ? "a row" : bad + " rows")
                    + " that cannot be used, the first in "
                    + rounds.problems().get(0).sentence()
                    + " Nothing was kept; mend the file, or add --keep-good-rows.");
        }
        if (rounds.rounds().isEmpty()) {
            throw new UserFault(label + " has no hole that can be used; at least one hole with its score is needed.");
        }
        return rounds.rounds().stream()
                .map(round -> card.map(c -> c.complete(round)).orElse(round))
                .toList();
    }
}
