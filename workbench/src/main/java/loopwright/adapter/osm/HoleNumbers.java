package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import loopwright.action.ImportRecord;
import loopwright.geo.Place;

/**
 * Gives every hole a number. Numbers in the map stand; of two holes with the same number the longer stays. Holes
 * without a number fill the gaps, or, if none has one, follow each other by the shortest walk from green to tee: a
 * proposal for the coach to confirm.
 */
final class HoleNumbers {
    private HoleNumbers() {}

    static List<HoleDraft> number(List<HoleDraft> drafts, List<ImportRecord> records) {
        Map<Integer, HoleDraft> numbered = new TreeMap<>();
        List<HoleDraft> open = new ArrayList<>();
        for (HoleDraft draft : drafts) {
            if (draft.number().isEmpty()) {
                open.add(draft);
                continue;
            }
            HoleDraft other = numbered.get(draft.getNumber());
            if (other == null) {
                numbered.put(draft.getNumber(), draft);
            } else {
                boolean longer = draft.line().lengthMetres() > other.line().lengthMetres();
                records.add(HoleOddities.sameNumber(longer ? other : draft, longer ? draft : other));
                numbered.put(draft.getNumber(), longer ? draft : other);
            }
        }
        if (numbered.isEmpty()) {
            return shortestWalk(open, records);
        }
        fillGaps(numbered, open, records);
        return List.copyOf(numbered.values());
    }

    private static void fillGaps(Map<Integer, HoleDraft> numbered, List<HoleDraft> open, List<ImportRecord> records) {
        TreeSet<Integer> gaps = new TreeSet<>();
        int last = Math.max(numbered.size() + open.size(), ((TreeMap<Integer, HoleDraft>) numbered).lastKey());
        for (int n = 1; n <= last; n++) {
            if (!numbered.containsKey(n)) {
                gaps.add(n);
            }
        }
        List<HoleDraft> left = new ArrayList<>(open);
        while (!left.isEmpty() && !gaps.isEmpty()) {
            int gap = gaps.pollFirst();
            HoleDraft best = left.stream()
                    .min(Comparator.comparingDouble(
                            d -> walk(numbered.get(gap - 1), d) + walk(d, numbered.get(gap + 1))))
                    .orElseThrow();
            left.remove(best);
            numbered.put(gap, best.withNumber(gap));
            records.add(HoleOddities.proposedNumber(best, gap));
        }
    }

    private static double walk(
            @org.jspecify.annotations.Nullable HoleDraft from, @org.jspecify.annotations.Nullable HoleDraft to) {
        return from == null || to == null
                ? 0
                : from.line().end().distanceTo(to.line().start());
    }

    /** Tries every hole as the first, goes on to the nearest tee each time, and keeps the shortest walk. */
    private static List<HoleDraft> shortestWalk(List<HoleDraft> open, List<ImportRecord> records) {
        List<HoleDraft> best = List.of();
        double bestLength = Double.POSITIVE_INFINITY;
        for (HoleDraft first : open) {
            List<HoleDraft> order = nearestTees(first, open);
            double length = 0;
            for (int i = 1; i < order.size(); i++) {
                length += walk(order.get(i - 1), order.get(i));
            }
            if (length < bestLength) {
                best = order;
                bestLength = length;
            }
        }
        List<HoleDraft> out = new ArrayList<>();
        for (HoleDraft draft : best) {
            HoleDraft numbered = new HoleDraft(draft.element(), OptionalInt.of(out.size() + 1), draft.line());
            records.add(HoleOddities.proposedNumber(draft, numbered.getNumber()));
            out.add(numbered);
        }
        return out;
    }

    private static List<HoleDraft> nearestTees(HoleDraft first, List<HoleDraft> all) {
        List<HoleDraft> left = new ArrayList<>(all);
        List<HoleDraft> order = new ArrayList<>();
        HoleDraft next = first;
        while (true) {
            order.add(next);
            left.remove(next);
            if (left.isEmpty()) {
                return order;
            }
            Place green = next.line().end();
            next = left.stream()
                    .min(Comparator.comparingDouble(
                            d -> green.distanceTo(d.line().start())))
                    .orElseThrow();
        }
    }
}
