package loopwright.handicap;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A player's differentials in the order of play, and the index after each: averaging, exceptional scores, low index
 * (the lowest of the 365 days before the most recent score, once there are 20 scores; Rule 5.7) and caps.
 */
public final class ScoringRecord {
    private static final int LOW_INDEX_DAYS = 365;

    /**
     * One score of the record.
     *
     * @param day a running number of days, so that the difference of two is the days between them
     * @param adjustment sum of the exceptional score reductions on it
     * @param low low index that applied when the index after this score was computed
     * @param indexAfter the player's index once this score was in; empty with fewer than three
     */
    public record Entry(
            long day, double differential, double adjustment, OptionalDouble low, OptionalDouble indexAfter) {
        double adjusted() {
            return differential + adjustment;
        }

        Entry reducedBy(double reduction) {
            return new Entry(day, differential, adjustment + reduction, low, indexAfter);
        }
    }

    private final List<Entry> entries;

    private ScoringRecord(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    public static ScoringRecord empty() {
        return new ScoringRecord(List.of());
    }

    public List<Entry> entries() {
        return entries;
    }

    public OptionalDouble index() {
        return entries.isEmpty() ? OptionalDouble.empty() : last().indexAfter();
    }

    /** The record with one more score, played off the index as it stood. */
    public ScoringRecord with(long day, double differential) {
        if (!entries.isEmpty() && day < last().day()) {
            throw new IllegalArgumentException("scores are added in the order of play");
        }
        List<Entry> next = new ArrayList<>(entries);
        next.add(new Entry(day, differential, 0, OptionalDouble.empty(), OptionalDouble.empty()));
        index().ifPresent(index -> reduce(next, ExceptionalScore.adjustment(differential, index)));
        OptionalDouble low = lowIndex(next.size(), day);
        Entry last = next.get(next.size() - 1);
        next.set(next.size() - 1, new Entry(day, differential, last.adjustment(), low, indexOf(mostRecent(next), low)));
        return new ScoringRecord(next);
    }

    private Entry last() {
        return entries.get(entries.size() - 1);
    }

    private static void reduce(List<Entry> entries, double reduction) {
        for (int i = firstOfRecent(entries); i < entries.size(); i++) {
            entries.set(i, entries.get(i).reducedBy(reduction));
        }
    }

    private OptionalDouble lowIndex(int scores, long day) {
        if (scores <= Averaging.MOST) {
            return OptionalDouble.empty();
        }
        return entries.stream()
                .skip(Averaging.MOST - 1)
                .filter(e -> day - e.day() <= LOW_INDEX_DAYS && e.indexAfter().isPresent())
                .mapToDouble(e -> e.indexAfter().getAsDouble())
                .min();
    }

    private static OptionalDouble indexOf(List<Double> recent, OptionalDouble low) {
        if (recent.size() < Averaging.FEWEST) {
            return OptionalDouble.empty();
        }
        double calculated = Averaging.of(recent).index();
        return OptionalDouble.of(
                low.isPresent() ? Caps.of(calculated, low.getAsDouble()).index() : calculated);
    }

    private static List<Double> mostRecent(List<Entry> entries) {
        return entries.stream()
                .skip(firstOfRecent(entries))
                .map(Entry::adjusted)
                .toList();
    }

    private static int firstOfRecent(List<Entry> entries) {
        return Math.max(0, entries.size() - Averaging.MOST);
    }
}
