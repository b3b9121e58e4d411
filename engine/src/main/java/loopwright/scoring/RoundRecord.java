package loopwright.scoring;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One round as it was written down, the holes in the order of play.
 *
 * @param name tells rounds of one file apart
 * @param date as year-month-day, where written
 * @param format as written ("stroke play", "match play", "scramble" ...)
 * @param team true where other players' strokes are part of the score, so that it says little about this player
 * @param lesson true for holes played as a lesson; they are no score
 */
public record RoundRecord(
        String name,
        Optional<String> date,
        Optional<String> course,
        Optional<String> tees,
        Optional<String> format,
        boolean team,
        boolean lesson,
        List<HoleRecord> holes) {
    public RoundRecord {
        holes = List.copyOf(holes);
        if (holes.isEmpty()) {
            throw new IllegalArgumentException("a round has at least one hole");
        }
        if (holes.stream().map(HoleRecord::number).distinct().count() != holes.size()) {
            throw new IllegalArgumentException("a hole is played once in a round");
        }
    }

    /** The first hole that was played. */
    public int startHole() {
        return holes.get(0).number();
    }

    /** What every hole of the round has at least. */
    public RecordTier tier() {
        return holes.stream()
                .map(HoleRecord::tier)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** The total, if every hole has a score. */
    public OptionalInt score() {
        return sum(holes.stream().map(HoleRecord::score).toList());
    }

    /** The par of the holes played, if it is known of every one. */
    public OptionalInt par() {
        return sum(holes.stream().map(HoleRecord::par).toList());
    }

    private static OptionalInt sum(List<OptionalInt> values) {
        return values.stream().allMatch(OptionalInt::isPresent)
                ? OptionalInt.of(values.stream().mapToInt(OptionalInt::getAsInt).sum())
                : OptionalInt.empty();
    }
}
