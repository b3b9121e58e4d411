package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import loopwright.action.ImportRecord;
import loopwright.course.TeePlace;
import loopwright.course.TeeSet;

/**
 * Makes sets of tees: by colour or name where at least half of the holes carry it, else by rank from the back. A hole
 * that lacks a set borrows the tee nearest in length to what the set plays elsewhere, and says so.
 */
final class TeeSets {
    private TeeSets() {}

    static List<TeeSet> of(Map<Integer, List<TeeSpot>> spots, List<ImportRecord> records) {
        Map<String, Map<Integer, TeeSpot>> byColour = byColour(spots);
        if (byColour.isEmpty()) {
            return finished(byRank(spots), spots, records);
        }
        return finished(byColour, spots, records);
    }

    private static Map<String, Map<Integer, TeeSpot>> byColour(Map<Integer, List<TeeSpot>> spots) {
        Set<String> colours = new TreeSet<>();
        spots.values().forEach(list -> list.forEach(s -> colours.addAll(s.colours())));
        Map<String, Map<Integer, TeeSpot>> out = new TreeMap<>();
        for (String colour : colours) {
            Map<Integer, TeeSpot> places = new TreeMap<>();
            spots.forEach((hole, list) -> list.stream()
                    .filter(s -> s.colours().contains(colour))
                    .findFirst()
                    .ifPresent(s -> places.put(hole, s)));
            if (places.size() * 2 >= spots.size()) {
                out.put(colour, places);
            }
        }
        return out;
    }

    private static Map<String, Map<Integer, TeeSpot>> byRank(Map<Integer, List<TeeSpot>> spots) {
        Map<String, Map<Integer, TeeSpot>> out = new LinkedHashMap<>();
        for (int rank = 0; ; rank++) {
            int r = rank;
            Map<Integer, TeeSpot> places = new TreeMap<>();
            spots.forEach((hole, list) -> {
                if (list.size() > r) {
                    places.put(hole, list.get(r));
                }
            });
            if (places.size() * 2 < spots.size() || places.isEmpty()) {
                return out;
            }
            out.put(rank == 0 ? "back" : "tee " + (rank + 1), places);
        }
    }

    private static List<TeeSet> finished(
            Map<String, Map<Integer, TeeSpot>> sets, Map<Integer, List<TeeSpot>> spots, List<ImportRecord> records) {
        List<String> longestFirst = new ArrayList<>(sets.keySet());
        longestFirst.sort(
                Comparator.comparingDouble((String name) -> -share(sets.getOrDefault(name, Map.of()), spots)));
        List<TeeSet> out = new ArrayList<>();
        for (String name : longestFirst) {
            Map<Integer, TeeSpot> own = sets.getOrDefault(name, Map.of());
            double share = share(own, spots);
            Map<Integer, TeePlace> places = new TreeMap<>();
            spots.forEach((hole, list) -> {
                TeeSpot mine = own.get(hole);
                if (mine != null) {
                    places.put(hole, new TeePlace(mine.place(), Optional.empty()));
                } else {
                    TeeSpot other = nearestInLength(list, share);
                    String standIn = nameOf(other, hole, sets);
                    places.put(hole, new TeePlace(other.place(), Optional.of(standIn)));
                    records.add(TeeOddities.standsIn(name, hole, standIn, other));
                }
            });
            out.add(new TeeSet(name, out.size(), places));
        }
        return out;
    }

    private static String nameOf(TeeSpot spot, int hole, Map<String, Map<Integer, TeeSpot>> sets) {
        for (var set : sets.entrySet()) {
            if (spot.equals(set.getValue().get(hole))) {
                return set.getKey();
            }
        }
        return spot.id();
    }

    /** Mean length of a set's holes as a share of each hole's longest tee. */
    private static double share(Map<Integer, TeeSpot> places, Map<Integer, List<TeeSpot>> spots) {
        return places.entrySet().stream()
                .mapToDouble(e -> e.getValue().lengthMetres() / longest(spots.getOrDefault(e.getKey(), List.of())))
                .average()
                .orElse(0);
    }

    private static double longest(List<TeeSpot> list) {
        return Math.max(
                1, list.stream().mapToDouble(TeeSpot::lengthMetres).max().orElse(1));
    }

    private static TeeSpot nearestInLength(List<TeeSpot> list, double share) {
        double wanted = share * longest(list);
        return list.stream()
                .min(Comparator.comparingDouble(s -> Math.abs(s.lengthMetres() - wanted)))
                .orElseThrow();
    }
}
