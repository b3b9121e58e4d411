package loopwright.action;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;

/** Port: writes appointments for calendars; the file appears whole or not at all. */
public interface CalendarFile {
    void write(Path file, List<Appointment> appointments);

    /**
     * An appointment that comes back every week.
     *
     * @param start in the player's own time, wherever he is
     * @param weeks how often, 1 or more
     */
    record Appointment(String title, String text, LocalDateTime start, int minutes, int weeks) {}
}
