package loopwright.action;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import loopwright.player.ShotLog;
import loopwright.player.TouchBall;
import loopwright.putting.LoggedPutt;

/**
 * Shots as read from files.
 *
 * @param log full and partial swings, measured and counted
 * @param touch chips, pitches and bunker shots
 * @param putts logged beside them
 * @param notes what was understood, assumed and set aside, a sentence each
 * @param newest date of the newest shot, where dates are known; ages in the log count from it
 */
public record ShotImport(
        ShotLog log, List<TouchBall> touch, List<LoggedPutt> putts, List<String> notes, Optional<LocalDate> newest) {
    /** Nothing was read. */
    public static final ShotImport NOTHING =
            new ShotImport(ShotLog.EMPTY, List.of(), List.of(), List.of(), Optional.empty());

    public ShotImport {
        touch = List.copyOf(touch);
        putts = List.copyOf(putts);
        notes = List.copyOf(notes);
    }
}
