package loopwright.action;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The coach's list of a day: whom to think of, and why. The day is an argument; nothing here looks at a clock. */
public final class TodayList {
    static final int AHEAD_DAYS = 10;
    static final int SILENT_DAYS = 21;

    /** Common practice, no source: a drill is played again after a week; after four weeks it was given up. */
    private static final int DRILL_AGAIN_DAYS = 7;

    private static final int DRILL_GIVEN_UP_DAYS = 28;

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
    private record Work(String what, LocalDate day) {}

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
        work(records, player.id(), today)
                .filter(w -> !w.day().isAfter(today))
                .forEach(w -> out.add(line(player, Reason.WORK_DUE, w.day(), w.what())));
        Optional<LocalDate> heard = lastHeard(records, player.id());
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

    private static Stream<Work> work(PlayerRecords records, String player, LocalDate today) {
        Stream<Work> homework = records.listLessons(player).stream()
                .filter(l -> !l.homework().isEmpty() && !l.done() && l.due().isPresent())
                .map(l -> new Work(l.homework(), l.due().orElseThrow()));
        return Stream.concat(homework, drills(records, player, today));
    }

    /** Every drill the player is at, by the day it is to be played again. */
    private static Stream<Work> drills(PlayerRecords records, String player, LocalDate today) {
        Map<String, LocalDate> last = new TreeMap<>();
        records.listDrills(player).stream()
                .filter(d -> d.block().isEmpty())
                .forEach(d -> last.merge(d.drill(), d.day(), TodayList::later));
        return last.entrySet().stream()
                .filter(e -> ChronoUnit.DAYS.between(e.getValue(), today) <= DRILL_GIVEN_UP_DAYS)
                .map(e -> new Work("drill \"" + e.getKey() + "\"", e.getValue().plusDays(DRILL_AGAIN_DAYS)));
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    /** The latest round, lesson or drill. */
    private static Optional<LocalDate> lastHeard(PlayerRecords records, String player) {
        return Stream.of(
                        records.listRounds(player).stream().map(KeptRound::day),
                        records.listLessons(player).stream().map(KeptLesson::day),
                        records.listDrills(player).stream().map(KeptDrill::day))
                .flatMap(days -> days)
                .max(Comparator.naturalOrder());
    }
}
