package loopwright.adapter.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import loopwright.action.RowProblem;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.RoundRecord;

/** Gathers the rows of one round. A hole with a bad row is left out whole: half its strokes would tell a lie. */
final class RoundBuild {
    private final String name;
    private final boolean ofShots;
    private final List<RoundRow> rows = new ArrayList<>();
    private final Map<Integer, HoleBuild> holes = new LinkedHashMap<>();
    private int current;

    RoundBuild(String name, boolean ofShots) {
        this.name = name;
        this.ofShots = ofShots;
    }

    /** Takes a row, or says why it cannot be used. */
    Optional<RowProblem> add(RoundRow row, CsvRow cells) {
        Optional<RowProblem> problem = row.problem().or(() -> misplaced(row, cells));
        if (problem.isPresent()) {
            if (row.hole() == 0) {
                spoilCurrent(); // the number cannot be read
            } else {
                current = row.hole();
                spoil(current);
            }
            return problem;
        }
        current = row.hole();
        rows.add(row);
        holes.computeIfAbsent(row.hole(), HoleBuild::new).add(row);
        return Optional.empty();
    }

    /** A row that tells no hole may have been a stroke of the hole before it. */
    void spoilCurrent() {
        if (ofShots && current > 0) {
            spoil(current);
        }
    }

    private void spoil(int hole) {
        holes.computeIfAbsent(hole, HoleBuild::new).spoil();
    }

    private Optional<RowProblem> misplaced(RoundRow row, CsvRow cells) {
        HoleBuild before = holes.get(row.hole());
        if (before == null) {
            return Optional.empty();
        }
        if (!ofShots || row.hole() != current) {
            return Optional.of(holeProblem(
                    row,
                    cells,
                    "new in round " + name + "; it was played before, so mend the number or name another round"));
        }
        return before.isOver()
                ? Optional.of(
                        holeProblem(row, cells, "still being played; the row before ended it (conceded or picked up)"))
                : Optional.empty();
    }

    private static RowProblem holeProblem(RoundRow row, CsvRow cells, String accepted) {
        return new RowProblem(row.line(), cells.placeOf("hole"), "hole", String.valueOf(row.hole()), accepted);
    }

    Optional<RoundRecord> round() {
        List<HoleRecord> built =
                holes.values().stream().flatMap(hole -> hole.hole().stream()).toList();
        if (built.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> format = first(RoundRow::format);
        return Optional.of(new RoundRecord(
                name,
                first(RoundRow::date),
                first(RoundRow::course),
                first(RoundRow::tees),
                format,
                format.map(f -> RoundWords.TEAM_FORMATS.stream()
                                .anyMatch(team -> f.toLowerCase(Locale.ROOT).contains(team)))
                        .orElse(false),
                rows.stream().anyMatch(RoundRow::lesson),
                built));
    }

    private Optional<String> first(Function<RoundRow, Optional<String>> value) {
        return rows.stream().flatMap(row -> value.apply(row).stream()).findFirst();
    }
}
