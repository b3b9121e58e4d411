package loopwright.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.geo.Line;
import loopwright.geo.Place;

/**
 * A set of tees made from others: one set as the base, other sets on some holes, markers moved forward or back along
 * the line of play. Mixed sets, today's markers and shorter winter tees are all this.
 *
 * @param setByHole holes that are played from another set than the base
 * @param forwardMetresByHole how far the markers stand nearer the hole than their set; negative: further back
 */
public record TeePlan(
        String name, String base, Map<Integer, String> setByHole, Map<Integer, Double> forwardMetresByHole) {
    public TeePlan {
        setByHole = Map.copyOf(setByHole);
        forwardMetresByHole = Map.copyOf(forwardMetresByHole);
    }

    /** The course with the set added, or replaced if it has one of this name; sets stay longest first. */
    public Course addedTo(Course course) {
        Map<Integer, TeePlace> places = new TreeMap<>();
        for (Hole hole : course.holes()) {
            places.put(hole.number(), place(course, hole));
        }
        List<TeeSet> sets = new ArrayList<>(course.teeSets());
        sets.removeIf(s -> s.name().equals(name));
        sets.add(new TeeSet(name, 0, places));
        sets.sort(Comparator.comparingDouble((TeeSet s) -> -course.lengthMetres(s)));
        List<TeeSet> ranked = new ArrayList<>();
        sets.forEach(s -> ranked.add(new TeeSet(s.name(), ranked.size(), s.placeByHole())));
        return course.withTeeSets(ranked);
    }

    private TeePlace place(Course course, Hole hole) {
        String from = setByHole.getOrDefault(hole.number(), base);
        TeeSet set = course.findTeeSet(from)
                .orElseThrow(() -> new IllegalArgumentException("there are no tees named \"" + from + "\""));
        TeePlace there = set.getPlace(hole.number());
        double forward = forwardMetresByHole.getOrDefault(hole.number(), 0.0);
        boolean own = from.equals(base) && forward == 0;
        Optional<String> standsIn = own ? there.standsIn() : Optional.of(set.name());
        return forward == 0
                ? new TeePlace(there.place(), standsIn)
                : new TeePlace(moved(hole, there.place(), forward), standsIn);
    }

    private static Place moved(Hole hole, Place tee, double forwardMetres) {
        Line play = hole.lineFrom(tee);
        if (!(Math.abs(forwardMetres) < play.lengthMetres() / 2)) {
            throw new IllegalArgumentException(
                    "the markers of hole " + hole.number() + " cannot move by half of the hole or more");
        }
        if (forwardMetres >= 0) {
            return play.placeAt(forwardMetres);
        }
        return tee.along(play.places().get(1).bearingTo(tee), -forwardMetres);
    }
}
