package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loopwright.action.ImportRecord;
import loopwright.geo.LocalFrame;

/**
 * Splits the holes of one border into the courses that are played: by golf:course:name where holes carry different
 * ones, else, where most numbers occur twice, by the shortest walks from green to next tee.
 */
final class LoopFinder {
    /** This many numbers that occur twice are two courses; fewer are slips of the pen. */
    private static final int FEWEST_TWINS = 5;

    private LoopFinder() {}

    static List<CourseLoop> find(CourseCandidate candidate, MapData data) {
        List<ImportRecord> records = new ArrayList<>(data.records());
        Site site = new Site(candidate, data.elements(), new LocalFrame(candidate.centre()), records);
        List<HoleDraft> holes = new ArrayList<>(HoleLines.read(site, records));
        holes.addAll(HolesFromAreas.make(site, holes, records));
        List<CourseLoop> out = new ArrayList<>();
        for (var loop : split(candidate, holes).entrySet()) {
            List<HoleDraft> others = new ArrayList<>(holes);
            others.removeAll(loop.getValue());
            out.add(new CourseLoop(
                    candidate,
                    loop.getKey(),
                    site,
                    loop.getValue(),
                    others,
                    without(others, loop.getValue(), records)));
        }
        return out;
    }

    /** What was odd, but for what was odd about the holes of other loops alone. */
    private static List<ImportRecord> without(List<HoleDraft> others, List<HoleDraft> own, List<ImportRecord> records) {
        Set<String> elsewhere = others.stream().map(HoleDraft::id).collect(Collectors.toSet());
        own.forEach(h -> elsewhere.remove(h.id()));
        return records.stream().filter(r -> !elsewhere.contains(r.element())).toList();
    }

    private static Map<String, List<HoleDraft>> split(CourseCandidate candidate, List<HoleDraft> holes) {
        Map<String, List<HoleDraft>> named = new LinkedHashMap<>();
        for (HoleDraft hole : holes) {
            named.computeIfAbsent(hole.element().get("golf:course:name"), n -> new ArrayList<>())
                    .add(hole);
        }
        if (named.size() > 1
                && named.values().stream().filter(l -> l.size() >= 3).count() > 1) {
            Map<String, List<HoleDraft>> out = new LinkedHashMap<>();
            named.forEach((name, list) -> out.put(candidate.name() + (name.isEmpty() ? "" : ", " + name), list));
            return out;
        }
        Map<Integer, List<HoleDraft>> byNumber = new TreeMap<>();
        holes.stream()
                .filter(h -> h.number().isPresent())
                .forEach(h -> byNumber.computeIfAbsent(h.getNumber(), n -> new ArrayList<>())
                        .add(h));
        long twins = byNumber.values().stream().filter(l -> l.size() == 2).count();
        boolean more = byNumber.values().stream().anyMatch(l -> l.size() > 2);
        if (twins < FEWEST_TWINS || more) {
            return Map.of(candidate.name(), holes);
        }
        return twoLoops(candidate, byNumber, holes);
    }

    /**
     * The first loop takes the numbers that occur once; of each pair it takes the hole that makes the walks of both
     * loops together the shortest (dynamic programming over the numbers, two states each).
     */
    private static Map<String, List<HoleDraft>> twoLoops(
            CourseCandidate candidate, Map<Integer, List<HoleDraft>> byNumber, List<HoleDraft> all) {
        List<Integer> numbers = new ArrayList<>(byNumber.keySet());
        List<List<HoleDraft>> groups = new ArrayList<>(byNumber.values());
        double[][] best = new double[groups.size()][2];
        int[][] from = new int[groups.size()][2];
        for (int i = 1; i < groups.size(); i++) {
            for (int state = 0; state < 2; state++) {
                best[i][state] = Double.POSITIVE_INFINITY;
                for (int before = 0; before < 2; before++) {
                    double total = best[i - 1][before] + walks(groups.get(i - 1), before, groups.get(i), state);
                    if (total < best[i][state]) {
                        best[i][state] = total;
                        from[i][state] = before;
                    }
                }
            }
        }
        int state = best[groups.size() - 1][0] <= best[groups.size() - 1][1] ? 0 : 1;
        Map<Integer, Integer> chosen = new HashMap<>();
        for (int i = groups.size() - 1; i >= 0; i--) {
            chosen.put(numbers.get(i), state);
            state = from[i][state];
        }
        List<HoleDraft> first = new ArrayList<>();
        List<HoleDraft> second = new ArrayList<>();
        for (HoleDraft hole : all) {
            boolean twin = hole.number().isPresent() && groupSize(byNumber, hole) == 2;
            boolean other = twin && indexOf(byNumber, hole) != chosen.getOrDefault(hole.getNumber(), 0);
            (other ? second : first).add(hole);
        }
        Map<String, List<HoleDraft>> out = new LinkedHashMap<>();
        out.put(candidate.name() + ", " + first.size() + " holes", first);
        out.put(
                candidate.name() + (first.size() == second.size() ? ", second " : ", ") + second.size() + " holes",
                second);
        return out;
    }

    private static int groupSize(Map<Integer, List<HoleDraft>> byNumber, HoleDraft hole) {
        return byNumber.getOrDefault(hole.getNumber(), List.of()).size();
    }

    private static int indexOf(Map<Integer, List<HoleDraft>> byNumber, HoleDraft hole) {
        return byNumber.getOrDefault(hole.getNumber(), List.of()).indexOf(hole);
    }

    private static double walks(List<HoleDraft> a, int stateA, List<HoleDraft> b, int stateB) {
        double first = walk(pick(a, stateA), pick(b, stateB));
        return a.size() == 2 && b.size() == 2 ? first + walk(a.get(1 - stateA), b.get(1 - stateB)) : first;
    }

    private static HoleDraft pick(List<HoleDraft> group, int state) {
        return group.get(group.size() == 2 ? state : 0);
    }

    private static double walk(HoleDraft from, HoleDraft to) {
        return from.line().end().distanceTo(to.line().start());
    }
}
