package loopwright.adapter.table;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loopwright.action.RowProblem;
import loopwright.action.ShotFiles;
import loopwright.action.ShotImport;
import loopwright.action.UserFault;
import loopwright.player.BallCount;
import loopwright.player.Setting;
import loopwright.player.Shot;
import loopwright.player.ShotLog;
import loopwright.player.TouchBall;
import loopwright.putting.LoggedPutt;

/** A player's balls from CSV files: measured, counted, and those of the short game. */
public final class ShotCsv implements ShotFiles {

    private final Clock clock;

    public ShotCsv() {
        this(Clock.system(ZoneId.systemDefault()));
    }

    /** With a clock of its own, which tells what days have been. */
    ShotCsv(Clock clock) {
        this.clock = clock;
    }

    /** What has been gathered from all files. */
    private static final class Gathered {
        final List<ShotRow> shots = new ArrayList<>();
        final List<CountRow> counts = new ArrayList<>();
        final List<TouchBall> touch = new ArrayList<>();
        final List<LoggedPutt> putts = new ArrayList<>();
        final List<String> notes = new ArrayList<>();

        Optional<LocalDate> newest() {
            return Stream.concat(
                            shots.stream().flatMap(r -> r.date().stream()),
                            counts.stream().flatMap(r -> r.date().stream()))
                    .max(LocalDate::compareTo);
        }
    }

    @Override
    public ShotImport read(List<Path> files, Map<String, String> map, Setting fallback) {
        Gathered all = new Gathered();
        for (Path file : files) {
            readFile(file, map, fallback, all);
        }
        return new ShotImport(log(all), all.touch, all.putts, all.notes, all.newest());
    }

    private void readFile(Path file, Map<String, String> map, Setting fallback, Gathered all) {
        List<String> lines = CsvTable.linesOf(file);
        if (CountLines.areIn(lines)) {
            all.counts.addAll(CountLines.read(file, lines, fallback));
            return;
        }
        CsvTable table = CsvTable.of(file, lines);
        ShotColumns columns = new ShotColumns(table, map);
        ShotRowReader reader = new ShotRowReader(table, columns, fallback, LocalDate.now(clock));
        List<RowProblem> problems = new ArrayList<>();
        List<ShotRow> rows = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            row.broken()
                    .ifPresentOrElse(
                            problems::add, () -> reader.read(row, problems).ifPresent(rows::add));
        }
        if (!problems.isEmpty()) {
            int others = problems.size() - 1;
            String more = others == 0 ? "" : " (and " + others + (others == 1 ? " more row)" : " more rows)");
            RowProblem first = problems.get(0);
            throw new UserFault(
                    file + ", " + first.named(table.written(first.name())).sentence() + more);
        }
        String found = found(rows, reader);
        List<String> aside = reader.setAside();
        if (found.isEmpty()) {
            throw new UserFault(file + " has a header row but no shot that can be fitted"
                    + (table.rows().isEmpty() ? "" : " (" + String.join(" ", aside) + ")")
                    + "; a row per ball is expected.");
        }
        all.notes.add(file + ": " + found + "; understood " + columns.understood()
                + (columns.ignored().isEmpty() ? "" : "; not used " + String.join(", ", columns.ignored())) + ".");
        all.notes.addAll(aside);
        all.shots.addAll(rows);
        all.counts.addAll(reader.counts());
        all.touch.addAll(reader.shortRows().touch);
        all.putts.addAll(reader.shortRows().putts);
    }

    /** "42 shots, 20 counted balls, 6 short shots, 12 putts"; empty where there is none of them. */
    private static String found(List<ShotRow> rows, ShotRowReader reader) {
        int counted = reader.counts().stream()
                .flatMap(c -> c.balls().values().stream())
                .mapToInt(Integer::intValue)
                .sum();
        return Stream.of(
                        said(rows.size(), "shot"),
                        said(counted, "counted ball"),
                        said(reader.shortRows().touch.size(), "short shot"),
                        said(reader.shortRows().putts.size(), "putt"))
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String said(int count, String what) {
        return count == 0 ? "" : count + " " + what + (count == 1 ? "" : "s");
    }

    /** Numbers the sessions in the order in which they appear and turns dates into ages. */
    private static ShotLog log(Gathered all) {
        Map<String, Integer> sessions = new LinkedHashMap<>();
        List<Shot> shots = new ArrayList<>();
        for (ShotRow r : all.shots) {
            int session = sessions.computeIfAbsent(r.session(), s -> sessions.size());
            shots.add(new Shot(
                    r.club(),
                    r.effort(),
                    r.carryMetres(),
                    r.totalMetres(),
                    r.sideMetres(),
                    r.setting(),
                    session,
                    age(r.date(), all.newest())));
        }
        List<BallCount> counts = new ArrayList<>();
        for (CountRow r : all.counts) {
            int session = sessions.computeIfAbsent(r.session(), s -> sessions.size());
            r.balls()
                    .forEach((zone, balls) -> counts.add(new BallCount(
                            r.club(), r.effort(), balls, zone, r.setting(), session, age(r.date(), all.newest()))));
        }
        return new ShotLog(shots, counts);
    }

    private static double age(Optional<LocalDate> date, Optional<LocalDate> newest) {
        return date.isEmpty() || newest.isEmpty() ? 0 : ChronoUnit.DAYS.between(date.get(), newest.get());
    }
}
