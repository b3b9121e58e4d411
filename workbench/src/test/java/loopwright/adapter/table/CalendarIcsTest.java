package loopwright.adapter.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import loopwright.action.CalendarFile.Appointment;
import org.junit.jupiter.api.Test;

/** Calendars as RFC 5545 wants them. */
class CalendarIcsTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-03-01T08:00:00Z"), ZoneOffset.UTC);
    private static final Appointment PRACTICE = new Appointment(
            "Practice 1: A, B; C\\D",
            "15 min chips, short game area: drill landing-spot\n30 min driver direction: a long line that has to be"
                    + " folded, with an \u00e4 in it \u00e4\u00e4\u00e4\u00e4\u00e4",
            LocalDateTime.of(2027, 3, 2, 17, 30),
            75,
            8);

    private final String text = new CalendarIcs(CLOCK).text(List.of(PRACTICE));

    @Test
    void saysWhenHowLongAndHowOften() {
        assertThat(text)
                .startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:")
                .contains("\r\nDTSTAMP:20270301T080000Z\r\n")
                .contains("\r\nDTSTART:20270302T173000\r\n")
                .contains("\r\nDURATION:PT75M\r\n")
                .contains("\r\nRRULE:FREQ=WEEKLY;COUNT=8\r\n")
                .endsWith("END:VEVENT\r\nEND:VCALENDAR\r\n");
    }

    @Test
    void escapesAndFoldsTextSoThatItReadsBack() {
        for (String line : text.split("\r\n", -1)) {
            assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75);
        }
        String unfolded = text.replace("\r\n ", "");
        assertThat(unfolded)
                .contains("SUMMARY:Practice 1: A\\, B\\; C\\\\D\r\n")
                .contains("landing-spot\\n30 min");
        assertThat(unfolded).contains("\u00e4\u00e4\u00e4\u00e4\u00e4\r\n");
    }

    @Test
    void theSameAppointmentKeepsItsName() {
        String uid = text.lines().filter(l -> l.startsWith("UID:")).findFirst().orElseThrow();
        assertThat(new CalendarIcs(Clock.systemUTC()).text(List.of(PRACTICE))).contains(uid);
    }
}
