package loopwright.action;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import loopwright.player.ShotLog;

/**
 * Shots as read from files.
 *
 * @param log what can be fitted
 * @param notes what was understood, assumed and set aside, a sentence each
 * @param newest date of the newest shot, where dates are known; ages in the log count from it
 */
public record ShotImport(ShotLog log, List<String> notes, Optional<LocalDate> newest) {
    public ShotImport {
        notes = List.copyOf(notes);
    }
}
