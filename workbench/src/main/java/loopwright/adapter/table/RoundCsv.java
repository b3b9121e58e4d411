package loopwright.adapter.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.RoundFile;
import loopwright.action.RoundImport;
import loopwright.action.RowProblem;
import loopwright.action.UserFault;
import loopwright.action.WholeFile;
import loopwright.scoring.RoundRecord;

/** Rounds from CSV: a table of holes (tiers of scores and counts) or of strokes (with distances, with places). */
public final class RoundCsv implements RoundFile {

    @Override
    public RoundImport read(Path file) {
        return rounds(CsvTable.read(file));
    }

    @Override
    public RoundImport readText(String label, String text) {
        return rounds(CsvTable.of(Path.of(label), text));
    }

    @Override
    public String text(List<RoundRecord> rounds) {
        return RoundCsvText.of(rounds);
    }

    private static RoundImport rounds(CsvTable table) {
        boolean ofShots = table.columns().containsKey("lie");
        requireColumns(table, ofShots);
        List<RowProblem> problems = new ArrayList<>();
        Map<String, RoundBuild> rounds = new LinkedHashMap<>();
        String current = "";
        for (CsvRow cells : table.rows()) {
            if (cells.broken().isPresent()) {
                problems.add(cells.broken().get());
                Optional.ofNullable(rounds.get(current)).ifPresent(RoundBuild::spoilCurrent);
                continue;
            }
            RoundRow row = RoundRow.of(cells, ofShots);
            current = row.round();
            rounds.computeIfAbsent(current, name -> new RoundBuild(name, ofShots))
                    .add(row, cells)
                    .ifPresent(problems::add);
        }
        return new RoundImport(built(rounds), problems, ignored(table));
    }

    @Override
    public void write(List<RoundRecord> rounds, Path file) {
        WholeFile.write(file, RoundCsvText.of(rounds));
    }

    private static List<RoundRecord> built(Map<String, RoundBuild> rounds) {
        return rounds.values().stream().flatMap(build -> build.round().stream()).toList();
    }

    private static List<String> ignored(CsvTable table) {
        return table.columns().keySet().stream()
                .filter(column -> !RoundWords.isKnown(column))
                .toList();
    }

    private static void requireColumns(CsvTable table, boolean ofShots) {
        List<String> missing = new ArrayList<>();
        if (!table.columns().containsKey("hole")) {
            missing.add("hole");
        }
        if (!ofShots && !table.columns().containsKey("score")) {
            missing.add("score (or, for a table of strokes, lie and to_hole_yd)");
        }
        if (ofShots
                && RoundWords.UNITS.keySet().stream()
                        .noneMatch(unit -> table.columns().containsKey("to_hole_" + unit))) {
            missing.add("to_hole_yd (or to_hole_m, to_hole_ft, to_hole_paces)");
        }
        if (!missing.isEmpty()) {
            List<String> understood = table.columns().keySet().stream()
                    .filter(RoundWords::isKnown)
                    .toList();
            throw new UserFault(table.file() + " is no round: the column " + String.join(" and ", missing)
                    + " is missing; understood: " + (understood.isEmpty() ? "none" : String.join(", ", understood))
                    + "; not understood: " + String.join(", ", ignored(table)) + ".");
        }
    }
}
