package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * What a list says of a round that is kept; the round itself is the text of {@link PlayerRecords#getRoundText}.
 *
 * @param id empty until it is kept
 * @param course as the round names it, empty if it does not
 * @param score the total, empty if a hole has none
 * @param tier name of its {@code RecordTier}
 * @param lesson true for holes played as a lesson, which are no score
 */
public record KeptRound(
        String id,
        LocalDate day,
        String course,
        String tees,
        int holes,
        OptionalInt score,
        String tier,
        boolean lesson,
        Instant at) {}
