package loopwright.course;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import loopwright.geo.Place;

/**
 * What a coach notes about a hole besides ticks.
 *
 * @param skylineTargets to aim at, in the order they were noted
 * @param localRules in force on this hole
 * @param dropZones where a ball may be dropped under the local rule, if it is in force
 * @param temporaryGreen the middle of the temporary green, used while that rule is in force
 * @param green its slopes as measured
 */
public record HoleNotes(
        List<SkylineTarget> skylineTargets,
        Set<LocalRule> localRules,
        List<Place> dropZones,
        Optional<Place> temporaryGreen,
        GreenSurvey green) {
    public static final HoleNotes NOTHING =
            new HoleNotes(List.of(), Set.of(), List.of(), Optional.empty(), GreenSurvey.NOTHING);

    public HoleNotes {
        skylineTargets = List.copyOf(skylineTargets);
        localRules = java.util.Collections.unmodifiableSet(new TreeSet<>(localRules));
        dropZones = List.copyOf(dropZones);
    }

    public HoleNotes withSkylineTarget(SkylineTarget target) {
        return new HoleNotes(plus(skylineTargets, target), localRules, dropZones, temporaryGreen, green);
    }

    public HoleNotes withDropZone(Place place) {
        return new HoleNotes(skylineTargets, localRules, plus(dropZones, place), temporaryGreen, green);
    }

    public HoleNotes withLocalRules(Set<LocalRule> rules) {
        return new HoleNotes(skylineTargets, rules, dropZones, temporaryGreen, green);
    }

    /** Puts a temporary green here and into use. */
    public HoleNotes withTemporaryGreen(Place middle) {
        Set<LocalRule> rules = new TreeSet<>(localRules);
        rules.add(LocalRule.TEMPORARY_GREEN);
        return new HoleNotes(skylineTargets, rules, dropZones, Optional.of(middle), green);
    }

    public HoleNotes withGreen(GreenSurvey measured) {
        return new HoleNotes(skylineTargets, localRules, dropZones, temporaryGreen, measured);
    }

    private static <T> List<T> plus(List<T> list, T item) {
        List<T> out = new java.util.ArrayList<>(list);
        out.add(item);
        return out;
    }
}
