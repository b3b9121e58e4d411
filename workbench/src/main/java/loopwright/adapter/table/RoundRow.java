package loopwright.adapter.table;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import loopwright.action.RowProblem;
import loopwright.geo.LatLon;
import loopwright.scoring.HoleCounts;
import loopwright.scoring.HoleMark;
import loopwright.scoring.Intent;
import loopwright.scoring.Lie;
import loopwright.scoring.ShotRecord;
import loopwright.units.Distance;

/**
 * One row of a round table, all its cells read: a hole, or a stroke of a hole.
 *
 * @param problem why the row cannot be used; the other values then mean nothing
 * @param shot the stroke, in a table of strokes
 */
record RoundRow(
        long line,
        String round,
        Optional<String> date,
        Optional<String> course,
        Optional<String> tees,
        Optional<String> format,
        boolean lesson,
        int hole,
        OptionalInt par,
        Optional<Distance> length,
        OptionalInt score,
        boolean conceded,
        boolean pickedUp,
        Set<HoleMark> marks,
        HoleCounts counts,
        Optional<ShotRecord> shot,
        Optional<RowProblem> problem) {
    private static final Distance LONGEST_HOLE = Distance.ofYards(900);
    private static final Distance LONGEST_PUTT = Distance.ofYards(100);
    private static final int MOST_STROKES = 40;

    static RoundRow of(CsvRow row, boolean ofShots) {
        RowReader cells = new RowReader(row);
        String score = row.cell("score");
        boolean noScore = score.equalsIgnoreCase("x") || score.equals("-");
        return new RoundRow(
                row.line(),
                name(cells),
                cells.day("date").map(LocalDate::toString),
                cells.text("course"),
                cells.text("tees"),
                cells.text("format"),
                cells.yes("lesson"),
                cells.wholeNeeded("hole", 1, 99),
                cells.whole("par", 3, 6),
                cells.distance("length", LONGEST_HOLE),
                noScore ? OptionalInt.empty() : cells.whole("score", 1, MOST_STROKES),
                cells.yes("conceded"),
                noScore || cells.yes("picked_up"),
                marks(cells),
                ofShots ? HoleCounts.NONE : counts(cells),
                ofShots ? Optional.of(shot(row, cells)) : Optional.empty(),
                checked(row, cells, ofShots, noScore));
    }

    /** Runs last: the arguments above have read every cell by then. */
    private static Optional<RowProblem> checked(CsvRow row, RowReader cells, boolean ofShots, boolean noScore) {
        boolean unscored = !ofShots && row.cell("score").isEmpty() && !cells.yes("picked_up");
        if (unscored && !noScore) {
            cells.reject("score", "", "a whole number from 1 to " + MOST_STROKES + ", or x for picked up");
        }
        return cells.problem();
    }

    private static String name(RowReader cells) {
        return cells.text("round").or(() -> cells.text("date")).orElse("1");
    }

    private static Set<HoleMark> marks(RowReader cells) {
        Set<HoleMark> marks = EnumSet.noneOf(HoleMark.class);
        RoundWords.MARKS.forEach((column, mark) -> {
            if (cells.yes(column)) {
                marks.add(mark);
            }
        });
        return marks;
    }

    private static HoleCounts counts(RowReader cells) {
        return new HoleCounts(
                cells.word("tee_ball", RoundWords.TEE_BALLS, "one of: in play, left, right, lost"),
                cells.text("approach_club"),
                cells.word("approach", RoundWords.APPROACHES, "one of: green, left, right, short, long"),
                cells.whole("penalties", 0, MOST_STROKES),
                cells.whole("chips", 0, MOST_STROKES),
                cells.distance("first_putt", LONGEST_PUTT),
                cells.whole("putts", 0, MOST_STROKES));
    }

    private static ShotRecord shot(CsvRow row, RowReader cells) {
        cells.whole("shot", 1, MOST_STROKES);
        String accepted = "one of: tee, fairway, rough, sand, recovery, green";
        Optional<Lie> lie = cells.word("lie", RoundWords.LIES, accepted);
        if (lie.isEmpty()) {
            cells.reject("lie", row.cell("lie"), accepted);
        }
        Optional<Distance> toHole = cells.distance("to_hole", LONGEST_HOLE);
        if (toHole.isEmpty()) {
            String column = cells.present(List.of("to_hole_yd", "to_hole_m", "to_hole_ft", "to_hole_paces"));
            cells.reject(column, row.cell(column), "a distance to the hole; one column of to_hole must be filled");
        }
        return new ShotRecord(
                cells.text("club"),
                lie.orElse(Lie.TEE),
                toHole.orElse(Distance.ofMetres(0)),
                place(row, cells, ""),
                cells.whole("penalty", 0, 9).orElse(0),
                cells.word(
                        "situation",
                        RoundWords.SITUATIONS,
                        "one of: ordinary, sitting up, down, plugged, clear, window, sideways only"),
                intent(row, cells));
    }

    private static Intent intent(CsvRow row, RowReader cells) {
        return new Intent(
                cells.text("meant_club"),
                place(row, cells, "aim_"),
                cells.word("meant_lie", RoundWords.LIES, "one of: tee, fairway, rough, sand, recovery, green"),
                cells.yesOrNo("as_meant"));
    }

    private static Optional<LatLon> place(CsvRow row, RowReader cells, String stem) {
        OptionalDouble lat = cells.decimal(stem + "lat", -90, 90);
        OptionalDouble lon = cells.decimal(stem + "lon", -180, 180);
        if (lat.isPresent() != lon.isPresent()) {
            String column = stem + (lat.isPresent() ? "lon" : "lat");
            cells.reject(column, row.cell(column), "a number of degrees; a place needs lat and lon");
        }
        return lat.isPresent() && lon.isPresent()
                ? Optional.of(new LatLon(lat.getAsDouble(), lon.getAsDouble()))
                : Optional.empty();
    }
}
