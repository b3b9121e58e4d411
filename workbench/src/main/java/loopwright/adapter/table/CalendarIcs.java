package loopwright.adapter.table;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.UUID;
import loopwright.action.CalendarFile;
import loopwright.action.WholeFile;

/**
 * Appointments as iCalendar (RFC 5545): one VEVENT each, repeated weekly (3.8.5.3), times floating (3.3.5, form 1), text escaped
 * (3.3.11), lines ended by CR LF and folded at 75 octets (3.1). The same appointment keeps its UID, so that a newer file updates
 * an older one.
 */
public final class CalendarIcs implements CalendarFile {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss");
    private static final int LONGEST = 75;

    private final Clock clock;

    public CalendarIcs(Clock clock) {
        this.clock = clock;
    }

    @Override
    public void write(Path file, List<Appointment> appointments) {
        WholeFile.write(file, text(appointments));
    }

    String text(List<Appointment> appointments) {
        StringBuilder out = new StringBuilder();
        line(out, "BEGIN:VCALENDAR");
        line(out, "VERSION:2.0");
        line(out, "PRODID:-//Loopwright//Practice//EN");
        String stamp = TIME.format(LocalDateTime.ofInstant(clock.instant(), ZoneOffset.UTC)) + "Z";
        for (Appointment a : appointments) {
            line(out, "BEGIN:VEVENT");
            line(out, "UID:" + id(a));
            line(out, "DTSTAMP:" + stamp);
            line(out, "DTSTART:" + TIME.format(a.start()));
            line(out, "DURATION:PT" + a.minutes() + "M");
            line(out, "RRULE:FREQ=WEEKLY;COUNT=" + a.weeks());
            line(out, "SUMMARY:" + escaped(a.title()));
            line(out, "DESCRIPTION:" + escaped(a.text()));
            line(out, "END:VEVENT");
        }
        line(out, "END:VCALENDAR");
        return out.toString();
    }

    private static String id(Appointment a) {
        byte[] same = (a.title() + TIME.format(a.start())).getBytes(StandardCharsets.UTF_8);
        return UUID.nameUUIDFromBytes(same) + "@loopwright";
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\\n")
                .replace("\n", "\\n");
    }

    /** Folded so that no line has more than 75 octets and no character is cut. */
    private static void line(StringBuilder out, String content) {
        int octets = 0;
        for (int i = 0; i < content.length(); ) {
            int point = content.codePointAt(i);
            String character = Character.toString(point);
            int size = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > LONGEST) {
                out.append("\r\n ");
                octets = 1;
            }
            out.append(character);
            octets += size;
            i += character.length();
        }
        out.append("\r\n");
    }
}
