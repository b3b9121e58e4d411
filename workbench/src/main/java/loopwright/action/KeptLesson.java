package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A lesson: what was seen, what was agreed, and one thing to do until the next.
 *
 * @param id empty until it is kept
 * @param homework empty if there was none
 * @param due the day by which it should be done
 * @param done true once it was
 */
public record KeptLesson(
        String id,
        LocalDate day,
        String notes,
        String agreed,
        String homework,
        Optional<LocalDate> due,
        boolean done,
        Instant at) {

    /** The same with its homework done. */
    public KeptLesson whenDone() {
        return new KeptLesson(id, day, notes, agreed, homework, due, true, at);
    }
}
