package loopwright.course;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.geo.Place;

/**
 * What a coach notes about a hole besides ticks.
 *
 * @param skylineTargets to aim at, in the order they were noted
 * @param localRules in force on this hole
 * @param dropZones where a ball may be dropped under the local rule, if it is in force
 */
public record HoleNotes(List<SkylineTarget> skylineTargets, Set<LocalRule> localRules, List<Place> dropZones) {
    public static final HoleNotes NOTHING = new HoleNotes(List.of(), Set.of(), List.of());

    public HoleNotes {
        skylineTargets = List.copyOf(skylineTargets);
        localRules = java.util.Collections.unmodifiableSet(new TreeSet<>(localRules));
        dropZones = List.copyOf(dropZones);
    }

    public HoleNotes withSkylineTarget(SkylineTarget target) {
        return new HoleNotes(plus(skylineTargets, target), localRules, dropZones);
    }

    public HoleNotes withDropZone(Place place) {
        return new HoleNotes(skylineTargets, localRules, plus(dropZones, place));
    }

    public HoleNotes withLocalRules(Set<LocalRule> rules) {
        return new HoleNotes(skylineTargets, rules, dropZones);
    }

    private static <T> List<T> plus(List<T> list, T item) {
        List<T> out = new java.util.ArrayList<>(list);
        out.add(item);
        return out;
    }
}
