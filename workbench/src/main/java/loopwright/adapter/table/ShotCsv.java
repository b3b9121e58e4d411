package loopwright.adapter.table;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.RowProblem;
import loopwright.action.ShotFiles;
import loopwright.action.ShotImport;
import loopwright.action.UserFault;
import loopwright.player.Setting;
import loopwright.player.Shot;
import loopwright.player.ShotLog;

/** Measured shots from CSV files. */
public final class ShotCsv implements ShotFiles {

    @Override
    public ShotImport read(List<Path> files, Map<String, String> map, Setting fallback) {
        List<ShotRow> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (Path file : files) {
            rows.addAll(readFile(file, map, fallback, notes));
        }
        Optional<LocalDate> newest =
                rows.stream().flatMap(r -> r.date().stream()).max(LocalDate::compareTo);
        return new ShotImport(ShotLog.ofShots(shots(rows, newest)), notes, newest);
    }

    private static List<ShotRow> readFile(Path file, Map<String, String> map, Setting fallback, List<String> notes) {
        CsvTable table = CsvTable.read(file);
        ShotColumns columns = new ShotColumns(table, map);
        ShotRowReader reader = new ShotRowReader(file, columns, fallback);
        List<RowProblem> problems = new ArrayList<>();
        List<ShotRow> rows = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            row.broken()
                    .ifPresentOrElse(
                            problems::add, () -> reader.read(row, problems).ifPresent(rows::add));
        }
        if (!problems.isEmpty()) {
            String more = problems.size() == 1 ? "" : " (and " + (problems.size() - 1) + " more such rows)";
            throw new UserFault(file + ", " + problems.get(0).sentence() + more);
        }
        if (rows.isEmpty()) {
            throw new UserFault(file + " has a header row but no shot that can be fitted"
                    + (table.rows().isEmpty() ? "" : " (" + String.join(" ", reader.setAside()) + ")")
                    + "; a row per ball is expected.");
        }
        notes.add(file + ": " + rows.size() + " shots; understood " + columns.understood()
                + (columns.ignored().isEmpty() ? "" : "; not used " + String.join(", ", columns.ignored())) + ".");
        notes.addAll(reader.setAside());
        return rows;
    }

    /** Numbers the sessions in the order in which they appear and turns dates into ages. */
    private static List<Shot> shots(List<ShotRow> rows, Optional<LocalDate> newest) {
        Map<String, Integer> sessions = new LinkedHashMap<>();
        List<Shot> out = new ArrayList<>();
        for (ShotRow r : rows) {
            int session = sessions.computeIfAbsent(r.session(), s -> sessions.size());
            double age = r.date().isEmpty() || newest.isEmpty()
                    ? 0
                    : ChronoUnit.DAYS.between(r.date().get(), newest.get());
            out.add(new Shot(
                    r.club(), r.effort(), r.carryMetres(), r.totalMetres(), r.sideMetres(), r.setting(), session, age));
        }
        return out;
    }
}
