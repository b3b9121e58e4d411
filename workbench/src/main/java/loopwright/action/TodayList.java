package loopwright.action;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The coach's list of a day: whom to think of, and why. The day is an argument; nothing here looks at a clock. */
public final class TodayList {
    static final int AHEAD_DAYS = 10;
    static final int SILENT_DAYS = 21;

    private final List<DueWork> due;

    /** {@code due} finds work that players owe beside the homework of their lessons. */
    public TodayList(List<DueWork> due) {
        this.due = List.copyOf(due);
    }

    /** Why a player is on the list, most pressing first. */
    public enum Reason {
        /** A round is to be played within ten days. */
        PLAYS_SOON,
        /** Homework or a drill is due. */
        WORK_DUE,
        /** The model's scores and the real ones disagree. */
        MODEL_DISAGREES,
        /** Nothing was heard for three weeks. */
        SILENT
    }

    /**
     * One line of the list.
     *
     * @param day of the round, the due work, or the last sign of life; none where nothing was ever heard
     * @param what the work that is due, or how far the model is off
     */
    public record Line(String player, String name, Reason reason, Optional<LocalDate> day, String what) {}

    /** Work that a player owes: what, and by when. */
    public record Work(String what, LocalDate day) {}

    /** Port: finds work that is not done yet; drills and the like. */
    public interface DueWork {
        List<Work> of(BenchStore store, String player);
    }

    /** The list of a day, by reason and then by day. */
    public List<Line> of(BenchStore store, LocalDate today) {
        return store.players().list().stream()
                .flatMap(player -> lines(store, player, today))
                .sorted(Comparator.comparing(Line::reason)
                        .thenComparing(l -> l.day().orElse(LocalDate.MIN))
                        .thenComparing(Line::name))
                .toList();
    }

    private Stream<Line> lines(BenchStore store, Shelf.Entry player, LocalDate today) {
        PlayerRecords records = store.records();
        List<Line> out = new ArrayList<>();
        Intake intake = new Intake(records.listIntake(player.id()));
        Stream.concat(
                        intake.plays().stream(),
                        records.listForecasts(player.id()).stream().map(KeptForecast::day))
                .filter(day -> !day.isBefore(today) && ChronoUnit.DAYS.between(today, day) <= AHEAD_DAYS)
                .distinct()
                .forEach(day -> out.add(line(player, Reason.PLAYS_SOON, day, "")));
        work(store, player.id())
                .filter(w -> !w.day().isAfter(today))
                .forEach(w -> out.add(line(player, Reason.WORK_DUE, w.day(), w.what())));
        Optional<LocalDate> heard = lastHeard(store, player.id());
        if (heard.isEmpty() || ChronoUnit.DAYS.between(heard.get(), today) >= SILENT_DAYS) {
            out.add(new Line(player.id(), player.name(), Reason.SILENT, heard, ""));
        }
        Standing standing = Standing.of(records, player.id());
        if (standing.disagrees()) {
            out.add(new Line(
                    player.id(), player.name(), Reason.MODEL_DISAGREES, Optional.empty(), standing.sentence()));
        }
        return out.stream();
    }

    private static Line line(Shelf.Entry player, Reason reason, LocalDate day, String what) {
        return new Line(player.id(), player.name(), reason, Optional.of(day), what);
    }

    private Stream<Work> work(BenchStore store, String player) {
        Stream<Work> homework = store.records().listLessons(player).stream()
                .filter(l -> !l.homework().isEmpty() && !l.done() && l.due().isPresent())
                .map(l -> new Work(l.homework(), l.due().orElseThrow()));
        return Stream.concat(homework, due.stream().flatMap(d -> d.of(store, player).stream()));
    }

    /** The latest round or lesson. */
    private static Optional<LocalDate> lastHeard(BenchStore store, String player) {
        return Stream.concat(
                        store.records().listRounds(player).stream().map(KeptRound::day),
                        store.records().listLessons(player).stream().map(KeptLesson::day))
                .max(Comparator.naturalOrder());
    }
}
