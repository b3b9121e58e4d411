package loopwright.adapter.table;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import loopwright.action.RowProblem;
import loopwright.player.Club;
import loopwright.player.ClubTable;
import loopwright.player.Setting;
import loopwright.player.Swing;
import loopwright.player.Zone;

/** Reads the rows of one shot list. */
final class ShotRowReader {
    /** Longer than any drive on level ground without wind; a typing error beyond. */
    private static final double LONGEST_METRES = 420;

    private static final double WIDEST_METRES = 300;
    /** A ball with much backspin comes back by some 10 m; further it was no such ball (common practice, no source). */
    private static final double MOST_BACK_METRES = 15;
    /** Carry per degree Celsius: 9.4 yd in 260 from 50 to 90 F with a driver by air density alone (computed with a flight model). */
    private static final double CARRY_PER_DEGREE = 0.0015;

    private static final double STANDARD_CELSIUS = 24;

    private static final Map<String, String> EFFORTS = Map.of(
            "full", Swing.FULL,
            "100", Swing.FULL,
            "three quarter", "three-quarter",
            "3/4", "three-quarter",
            "75", "three-quarter",
            "half", "half",
            "1/2", "half",
            "50", "half");
    private static final Map<String, Setting.Ball> BALLS = Map.of(
            "range",
            Setting.Ball.RANGE,
            "range ball",
            Setting.Ball.RANGE,
            "own",
            Setting.Ball.OWN,
            "own ball",
            Setting.Ball.OWN);
    private static final Map<String, Setting.Ground> GROUNDS = Map.of(
            "mat", Setting.Ground.MAT,
            "grass", Setting.Ground.GRASS,
            "range", Setting.Ground.GRASS,
            "course", Setting.Ground.COURSE);
    private static final Map<String, Boolean> LIES = Map.ofEntries(
            Map.entry("tee", true),
            Map.entry("fairway", true),
            Map.entry("mat", true),
            Map.entry("grass", true),
            Map.entry("good", true),
            Map.entry("rough", false),
            Map.entry("deep rough", false),
            Map.entry("sand", false),
            Map.entry("bunker", false),
            Map.entry("woods", false),
            Map.entry("poor", false));

    private final Path file;
    private final ShotColumns columns;
    private final Setting fallback;
    private final LocalDate today;
    private final boolean hasShort;
    private final boolean isCounted;
    private final Map<String, Integer> aside = new TreeMap<>();
    private final ShortRows shortRows = new ShortRows();
    private final List<CountRow> counts = new ArrayList<>();

    ShotRowReader(CsvTable table, ShotColumns columns, Setting fallback, LocalDate today) {
        this.file = table.file();
        hasShort = ShortRows.areIn(table);
        isCounted = CountRows.areIn(table);
        this.columns = columns;
        this.fallback = fallback;
        this.today = today;
    }

    /** Chips, pitches, bunker shots and putts read so far. */
    ShortRows shortRows() {
        return shortRows;
    }

    /** Counted balls read so far. */
    List<CountRow> counts() {
        return counts;
    }

    /** The row, nothing if it is set aside or no full or partial swing; what is wrong with it is added to the problems. */
    Optional<ShotRow> read(CsvRow row, List<RowProblem> problems) {
        RowReader cells = new RowReader(row);
        String name = row.cell(columns.word("club").orElse("club"));
        Optional<ShotRow> shot = Optional.empty();
        if (hasShort && ShortRows.isShort(name)) {
            shortRows.read(row, name, cells);
        } else if (isCounted) {
            count(row, cells);
        } else {
            shot = swing(row, cells);
        }
        cells.problem().ifPresent(problems::add);
        return cells.problem().isPresent() ? Optional.empty() : shot;
    }

    private void count(CsvRow row, RowReader cells) {
        Optional<Club> club = club(row, cells);
        String effort = effort(cells);
        Map<Zone, Integer> balls = CountRows.read(row, cells);
        Setting setting = setting(cells, false);
        Optional<LocalDate> date = date(row, cells);
        if (cells.problem().isEmpty() && club.isPresent()) {
            if (balls.isEmpty()) {
                aside.merge("no ball was counted", 1, Integer::sum);
            } else {
                counts.add(new CountRow(club.get(), effort, balls, setting, session(row, date), date));
            }
        }
    }

    private String effort(RowReader cells) {
        return word(cells, "effort", EFFORTS, "full, three-quarter or half").orElse(Swing.FULL);
    }

    private String session(CsvRow row, Optional<LocalDate> date) {
        return file + "|" + columns.word("session").map(row::cell).orElse("") + "|"
                + date.map(LocalDate::toString).orElse("");
    }

    private Optional<ShotRow> swing(CsvRow row, RowReader cells) {
        Optional<Club> club = club(row, cells);
        OptionalDouble carry = length(row, cells, "carry", 0, LONGEST_METRES);
        OptionalDouble total = length(row, cells, "total", 0, LONGEST_METRES);
        OptionalDouble side = side(row, cells);
        checkTogether(row, cells, carry, total, side);
        String effort = effort(cells);
        boolean good = word(cells, "lie", LIES, "tee, fairway, rough, deep rough, sand, woods or poor")
                .orElse(true);
        double warmth = warmth(cells);
        Setting setting = setting(cells, carry.isEmpty());
        Optional<LocalDate> date = date(row, cells);
        String session = session(row, date);
        if (cells.problem().isPresent() || club.isEmpty() || isSetAside(club.get(), carry, total, good)) {
            return Optional.empty();
        }
        return Optional.of(new ShotRow(
                club.get(), effort, times(carry, warmth), times(total, warmth), side, setting, session, date));
    }

    /** A ball that comes back farther than any, or lies farther aside than it went. */
    private void checkTogether(
            CsvRow row, RowReader cells, OptionalDouble carry, OptionalDouble total, OptionalDouble side) {
        if (carry.isPresent() && total.isPresent() && total.getAsDouble() < carry.getAsDouble() - MOST_BACK_METRES) {
            reject(row, cells, "total", "the end of a ball that carried so far; a total holds the carry");
        }
        double went = Math.max(carry.orElse(0), total.orElse(0));
        boolean measured = carry.isPresent() || total.isPresent();
        if (measured && Math.abs(side.orElse(0)) > went) {
            reject(
                    row,
                    cells,
                    "side",
                    "within the ball's own length; carry and total run from where it was hit to where the ball was");
        }
    }

    private void reject(CsvRow row, RowReader cells, String quantity, String accepted) {
        String column = columns.length(quantity).map(ShotColumns.Length::column).orElse(quantity);
        cells.reject(column, row.cell(column), accepted);
    }

    /** What was set aside and why, a sentence each. */
    List<String> setAside() {
        List<String> out = new ArrayList<>();
        if (shortRows.empty > 0) {
            aside.merge("nothing was filled in", shortRows.empty, Integer::sum);
        }
        aside.forEach((why, count) ->
                out.add(file + ": " + count + (count == 1 ? " row" : " rows") + " set aside: " + why + "."));
        return out;
    }

    private boolean isSetAside(Club club, OptionalDouble carry, OptionalDouble total, boolean good) {
        Optional<String> why = Optional.empty();
        if (club.family() == Club.Family.PUTTER) {
            why = Optional.of("putts belong into a putt list");
        } else if (carry.isEmpty() && total.isEmpty()) {
            why = Optional.of("no length was recorded");
        } else if (!good) {
            why = Optional.of("patterns are fitted from good lies only");
        }
        why.ifPresent(w -> aside.merge(w, 1, Integer::sum));
        return why.isPresent();
    }

    private Optional<Club> club(CsvRow row, RowReader cells) {
        String column = columns.word("club").orElse("club");
        Optional<Club> club = ClubTable.find(row.cell(column));
        if (club.isEmpty()) {
            cells.reject(
                    column,
                    row.cell(column),
                    "a club; names like driver, 3-wood, 4-hybrid, 7-iron, pitching wedge or 56-wedge are");
        }
        return club;
    }

    private OptionalDouble length(CsvRow row, RowReader cells, String quantity, double low, double high) {
        Optional<ShotColumns.Length> length = columns.length(quantity);
        if (length.isEmpty() || row.cell(length.get().column()).isEmpty()) {
            return OptionalDouble.empty();
        }
        double unit = length.get().metresPerUnit();
        OptionalDouble value = cells.decimal(length.get().column(), Math.rint(low / unit), Math.rint(high / unit));
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * unit) : value;
    }

    /** A signed number, + right, or one with L or R behind it. */
    private OptionalDouble side(CsvRow row, RowReader cells) {
        Optional<ShotColumns.Length> length = columns.length("side");
        if (length.isEmpty()) {
            return OptionalDouble.empty();
        }
        String column = length.get().column();
        String cell = row.cell(column).toLowerCase(Locale.ROOT).replace(',', '.');
        if (!cell.matches("\\d+(\\.\\d+)?\\s*[lr]")) {
            return length(row, cells, "side", -WIDEST_METRES, WIDEST_METRES);
        }
        double value = Double.parseDouble(cell.replaceAll("\\s*[lr]", ""))
                * length.get().metresPerUnit();
        if (value > WIDEST_METRES) {
            cells.reject(column, cell, "a side a ball can have");
        }
        return OptionalDouble.of(cell.endsWith("l") ? -value : value);
    }

    private Setting setting(RowReader cells, boolean totalOnly) {
        Setting.Ball ball = word(cells, "ball", BALLS, "range or own").orElse(fallback.ball());
        Setting.Ground paced = totalOnly ? Setting.Ground.COURSE : fallback.ground();
        Setting.Ground ground =
                word(cells, "surface", GROUNDS, "mat, grass or course").orElse(paced);
        return new Setting(ball, ground);
    }

    /** Factor that brings a carry to standard warmth. */
    private double warmth(RowReader cells) {
        OptionalDouble celsius = columns.word("temperature_c").isPresent()
                ? cells.decimal(columns.word("temperature_c").get(), -20, 50)
                : OptionalDouble.empty();
        OptionalDouble fahrenheit = columns.word("temperature_f").isPresent()
                ? cells.decimal(columns.word("temperature_f").get(), -4, 122)
                : OptionalDouble.empty();
        double degrees =
                celsius.orElse(fahrenheit.isPresent() ? (fahrenheit.getAsDouble() - 32) * 5 / 9 : STANDARD_CELSIUS);
        return 1 + CARRY_PER_DEGREE * (STANDARD_CELSIUS - degrees);
    }

    private Optional<LocalDate> date(CsvRow row, RowReader cells) {
        String column = columns.word("date").orElse("date");
        String cell = row.cell(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        try {
            LocalDate day = LocalDate.parse(cell);
            // a day on: the file may come from where it is tomorrow already
            if (day.isAfter(today.plusDays(1))) {
                cells.reject(column, cell, "a day that has been");
            }
            return Optional.of(day);
        } catch (DateTimeParseException e) {
            cells.reject(column, cell, "a date like 2026-05-31");
            return Optional.empty();
        }
    }

    private <T> Optional<T> word(RowReader cells, String word, Map<String, T> meanings, String accepted) {
        return columns.word(word).flatMap(column -> cells.word(column, meanings, accepted));
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }
}
