package loopwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import loopwright.action.RoundReviews;
import loopwright.scoring.CourseCard;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The course a round was played on, where the round itself does not say par and length. */
final class CardOptions {
    @Option(
            names = "--course",
            paramLabel = "FILE",
            description = "Course file: par and length of holes where the rounds do not say.")
    @Nullable
    Path course;

    @Option(names = "--tees", paramLabel = "NAME", defaultValue = "middle", description = "With --course.")
    String tees = "middle";

    Optional<CourseCard> find(RoundReviews reviews) {
        return course == null ? Optional.empty() : Optional.of(reviews.card(course, tees));
    }
}
