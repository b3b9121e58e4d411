package loopwright.scoring;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import loopwright.units.Distance;

/**
 * One hole as it was written down.
 *
 * @param length from the tee that was played, along the hole
 * @param writtenScore the score on the card, where one was written
 * @param shots the strokes in order; empty below the tier of shots
 * @param conceded where the ball lay when the putt was given, where that was written down
 */
public record HoleRecord(
        int number,
        OptionalInt par,
        Optional<Distance> length,
        OptionalInt writtenScore,
        HoleEnd end,
        Set<HoleMark> marks,
        HoleCounts counts,
        List<ShotRecord> shots,
        Optional<Stroke> conceded) {
    public HoleRecord {
        if (number < 1 || number > 99) {
            throw new IllegalArgumentException("a hole's number lies between 1 and 99, not " + number);
        }
        if (writtenScore.orElse(1) < 1) {
            throw new IllegalArgumentException("a score is at least 1");
        }
        marks = Set.copyOf(marks);
        shots = List.copyOf(shots);
    }

    /** The same hole, marked. */
    public HoleRecord with(HoleMark mark) {
        Set<HoleMark> more = EnumSet.of(mark);
        more.addAll(marks);
        return new HoleRecord(number, par, length, writtenScore, end, more, counts, shots, conceded);
    }

    public RecordTier tier() {
        if (shots.isEmpty()) {
            return counts.isEmpty() ? RecordTier.SCORE : RecordTier.COUNTS;
        }
        return shots.stream().allMatch(s -> s.place().isPresent()) ? RecordTier.PLACES : RecordTier.SHOTS;
    }

    /** The score: the written one, else strokes and penalties, with one for a conceded putt; none if picked up. */
    public OptionalInt score() {
        if (writtenScore.isPresent() || end == HoleEnd.PICKED_UP) {
            return writtenScore;
        }
        return countedFromShots();
    }

    /** The score that the strokes add up to. */
    OptionalInt countedFromShots() {
        if (shots.isEmpty() || end == HoleEnd.PICKED_UP) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(shots.size() + shotPenalties() + (end == HoleEnd.CONCEDED ? 1 : 0));
    }

    private int shotPenalties() {
        return shots.stream().mapToInt(ShotRecord::penaltyStrokes).sum();
    }

    /** Penalty strokes, where they were written down. */
    public OptionalInt penaltyStrokes() {
        return shots.isEmpty() ? counts.penaltyStrokes() : OptionalInt.of(shotPenalties());
    }

    /** Putts, where they can be told; a conceded one is none. */
    public OptionalInt putts() {
        if (shots.isEmpty()) {
            return counts.putts();
        }
        return OptionalInt.of(
                (int) shots.stream().filter(s -> s.lie() == Lie.GREEN).count());
    }

    /** The length of the first putt, where one was written down. */
    public Optional<Distance> firstPutt() {
        if (shots.isEmpty()) {
            return counts.firstPutt();
        }
        return shots.stream().filter(s -> s.lie() == Lie.GREEN).findFirst().map(ShotRecord::toHole);
    }
}
