package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.action.CalendarFile;
import loopwright.action.CalendarFile.Appointment;
import loopwright.action.PracticePictures;
import loopwright.action.PracticePlan;
import loopwright.action.PracticeReasons;
import loopwright.action.PracticeWords;
import loopwright.practice.PracticeWeek;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The week of a practice plan: how many sessions, and where it is written. */
final class WeekOptions {
    private static final int DAYS = 7;

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
            calendars.write(calendar, appointments(plan, from == null ? today.plusDays(1) : from));
            out.println("Calendar written to " + calendar + ".");
        }
    }

    private List<Appointment> appointments(PracticePlan plan, LocalDate first) {
        List<Appointment> out = new ArrayList<>();
        List<PracticeWeek.Session> all = plan.week().sessions();
        for (int i = 0; i < all.size(); i++) {
            LocalDate day = first.plusDays((long) i * DAYS / all.size());
            out.add(new Appointment(
                    "Practice " + (i + 1) + ": " + plan.player().name(),
                    text(all.get(i)),
                    day.atTime(time),
                    all.get(i).minutes(),
                    plan.hours().weeks()));
        }
        return out;
    }

    private static String text(PracticeWeek.Session session) {
        return session.blocks().stream()
                        .map(b -> b.minutes() + " min " + PracticeWords.of(b.skill()) + ", "
                                + PracticeWords.of(b.facility())
                                + b.drill().map(d -> ": drill " + d.name()).orElse(""))
                        .collect(Collectors.joining("\n"))
                + "\n"
                + PracticeReasons.CAUTIONS.get(0);
    }
}
