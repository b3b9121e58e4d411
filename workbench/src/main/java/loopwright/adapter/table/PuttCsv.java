package loopwright.adapter.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loopwright.action.PuttImport;
import loopwright.action.PuttLogFile;
import loopwright.action.RowProblem;
import loopwright.action.UserFault;
import loopwright.putting.LoggedPutt;
import loopwright.putting.LoggedPutt.Side;
import loopwright.units.Distance;

/**
 * Logged putts from CSV: distance, made, and where noted leave, side of the miss and whether it was a straight-putt
 * drill.
 */
public final class PuttCsv implements PuttLogFile {
    private static final Distance LONGEST = Distance.ofFeet(150);
    private static final double HOLE_RADIUS_METRES = 0.054;
    private static final List<String> MADE = List.of("made", "holed");
    private static final Map<String, Boolean> YES_OR_NO = Map.of(
            "yes", true, "y", true, "1", true, "true", true, "no", false, "n", false, "0", false, "false", false);
    private static final Map<String, Side> SIDES =
            Map.of("short", Side.SHORT, "long", Side.LONG, "past", Side.LONG, "left", Side.LEFT, "right", Side.RIGHT);
    private static final Set<String> KNOWN = Set.of("side", "drill", "made", "holed");

    @Override
    public PuttImport read(Path file) {
        CsvTable table = CsvTable.read(file);
        String made = requireColumns(table);
        List<LoggedPutt> putts = new ArrayList<>();
        List<RowProblem> problems = new ArrayList<>();
        for (CsvRow cells : table.rows()) {
            if (cells.broken().isPresent()) {
                problems.add(cells.broken().get());
                continue;
            }
            RowReader row = new RowReader(cells);
            Optional<LoggedPutt> putt = putt(row, cells, made);
            row.problem().ifPresentOrElse(problems::add, () -> putt.ifPresent(putts::add));
        }
        return new PuttImport(putts, problems, ignored(table));
    }

    private static Optional<LoggedPutt> putt(RowReader row, CsvRow cells, String made) {
        Optional<Distance> distance = row.distance("distance", LONGEST);
        Optional<Boolean> holed = row.word(made, YES_OR_NO, "yes or no (1 or 0)");
        Optional<Distance> leave = row.distance("leave", LONGEST).filter(d -> d.metres() > 0);
        Optional<Side> side = row.word("side", SIDES, "short, long, left or right");
        boolean drill = row.yes("drill");
        String unit = distanceColumn(cells);
        if (distance.isEmpty() || !(distance.get().metres() > HOLE_RADIUS_METRES)) {
            row.reject(unit, cells.cell(unit), "a distance longer than the hole is wide and up to 150 ft");
        }
        if (holed.isEmpty()) {
            row.reject(made, cells.cell(made), "yes or no (1 or 0)");
        }
        if (row.problem().isPresent() || distance.isEmpty() || holed.isEmpty()) {
            return Optional.empty();
        }
        if (holed.get() && (leave.isPresent() || side.isPresent())) {
            row.reject(made, cells.cell(made), "right beside a leave or a side of the miss; a holed putt has neither");
            return Optional.empty();
        }
        OptionalDouble left = leave.filter(d -> d.metres() > HOLE_RADIUS_METRES)
                .map(d -> OptionalDouble.of(d.metres()))
                .orElse(OptionalDouble.empty());
        return Optional.of(
                new LoggedPutt(distance.get().metres(), holed.get(), left, side.orElse(Side.NOT_NOTED), drill));
    }

    private static String distanceColumn(CsvRow cells) {
        return RoundWords.UNITS.keySet().stream()
                .map(unit -> "distance_" + unit)
                .filter(column -> cells.placeOf(column) > 0)
                .findFirst()
                .orElse("distance_ft");
    }

    private static String requireColumns(CsvTable table) {
        List<String> missing = new ArrayList<>();
        if (RoundWords.UNITS.keySet().stream().noneMatch(u -> table.columns().containsKey("distance_" + u))) {
            missing.add("distance_ft (or distance_m, distance_yd, distance_paces)");
        }
        Optional<String> made =
                MADE.stream().filter(table.columns()::containsKey).findFirst();
        if (made.isEmpty()) {
            missing.add("made");
        }
        if (!missing.isEmpty()) {
            throw new UserFault(table.file() + " is no record of putts: the column " + String.join(" and ", missing)
                    + " is missing; its columns are "
                    + String.join(", ", table.written()) + ".");
        }
        return made.orElse("made");
    }

    private static List<String> ignored(CsvTable table) {
        return table.columns().keySet().stream().filter(c -> !isKnown(c)).toList();
    }

    private static boolean isKnown(String column) {
        return KNOWN.contains(column)
                || RoundWords.UNITS.keySet().stream()
                        .anyMatch(u -> column.equals("distance_" + u) || column.equals("leave_" + u));
    }
}
