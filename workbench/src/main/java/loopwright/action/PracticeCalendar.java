package loopwright.action;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.action.CalendarFile.Appointment;
import loopwright.practice.PracticeWeek;

/** The sessions of a practice plan as appointments, spread evenly over the week and repeated as long as it lasts. */
public final class PracticeCalendar {
    private static final int DAYS = 7;

    private PracticeCalendar() {}

    /** {@code first} is the day of the first session. */
    public static List<Appointment> of(PracticePlan plan, LocalDate first, LocalTime time) {
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
