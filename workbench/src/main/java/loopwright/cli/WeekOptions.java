package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import loopwright.action.CalendarFile;
import loopwright.action.PracticeCalendar;
import loopwright.action.PracticePictures;
import loopwright.action.PracticePlan;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The week of a practice plan: how many sessions, and where it is written. */
final class WeekOptions {
    @Option(
            names = "--sessions",
            defaultValue = "3",
            paramLabel = "N",
            description = "Sessions a week, 1 to 7. Default: ${DEFAULT-VALUE}.")
    private int sessions = 3;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Draw the week as .pdf, .png or .svg, to print and tick.")
    private @Nullable Path picture;

    @Option(names = "--calendar", paramLabel = "FILE", description = "Write the weeks as iCalendar (.ics).")
    private @Nullable Path calendar;

    @Option(
            names = "--from",
            paramLabel = "DAY",
            description = "Day of the first session; the others follow evenly. Default: tomorrow.")
    private @Nullable LocalDate from;

    @Option(
            names = "--at",
            defaultValue = "17:00",
            paramLabel = "TIME",
            description = "Time of day of a session. Default: ${DEFAULT-VALUE}.")
    private LocalTime time = LocalTime.of(17, 0);

    int sessions() {
        return sessions;
    }

    void write(PracticePlan plan, PracticePictures pictures, CalendarFile calendars, LocalDate today, PrintWriter out) {
        if (picture != null) {
            pictures.drawWeek(plan, picture);
            out.println("Week drawn in " + picture + ".");
        }
        if (calendar != null) {
            calendars.write(calendar, PracticeCalendar.of(plan, from == null ? today.plusDays(1) : from, time));
            out.println("Calendar written to " + calendar + ".");
        }
    }
}
