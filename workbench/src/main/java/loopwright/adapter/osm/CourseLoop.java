package loopwright.adapter.osm;

import java.util.List;
import java.util.Optional;
import loopwright.action.ImportRecord;

/**
 * The holes that are played as one course: all of a candidate, or one of the nines and eighteens inside one border.
 *
 * @param holes of this loop
 * @param others holes of other loops inside the same border
 * @param records of what was odd while they were found
 */
record CourseLoop(
        CourseCandidate candidate,
        String name,
        Site site,
        List<HoleDraft> holes,
        List<HoleDraft> others,
        List<ImportRecord> records) {
    CourseLoop {
        holes = List.copyOf(holes);
        others = List.copyOf(others);
        records = List.copyOf(records);
    }

    Optional<HoleDraft> findHole(int number) {
        return holes.stream()
                .filter(h -> h.number().isPresent() && h.getNumber() == number)
                .findFirst();
    }
}
