package loopwright.adapter.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import loopwright.player.Mishit;
import loopwright.player.Zone;
import loopwright.units.Distance;

/**
 * Reads counted balls, a row per club: how many inside, left and right of a strip ({@code strip_yd}), or short of, level with
 * and long of a flag ({@code flag_yd}), and how many topped, thin, fat, off heel or toe. An empty cell counts none.
 */
final class CountRows {
    private static final List<String> ACROSS = List.of("inside", "left", "right");
    private static final List<String> ALONG = List.of("short", "level", "long");
    private static final List<Mishit.Kind> MISHITS =
            List.of(Mishit.Kind.TOPPED, Mishit.Kind.THIN, Mishit.Kind.FAT, Mishit.Kind.HEEL, Mishit.Kind.TOE);
    private static final int MOST_BALLS = 500;
    private static final Distance LONGEST = Distance.ofYards(430);
    private static final double SHORTEST_METRES = 1;

    private CountRows() {}

    /** True if a table counts balls and measures none. */
    static boolean areIn(CsvTable table) {
        boolean measured = table.columns().keySet().stream()
                .anyMatch(c -> c.startsWith("carry") || c.startsWith("total") || c.startsWith("to_hole"));
        return !measured && words().anyMatch(table.columns()::containsKey);
    }

    /** What the header lacks to say what inside or short is meant of. */
    static Optional<String> lengthsMissing(CsvTable table) {
        if (!areIn(table)) {
            return Optional.empty();
        }
        return lengthMissing(table, ACROSS, "strip", "the width of the strip in yards or metres")
                .or(() -> lengthMissing(table, ALONG, "flag", "the distance of the flag in yards or metres"));
    }

    private static Optional<String> lengthMissing(CsvTable table, List<String> words, String stem, String what) {
        Optional<String> word =
                words.stream().filter(table.columns()::containsKey).findFirst();
        boolean told =
                RoundWords.UNITS.keySet().stream().anyMatch(u -> table.columns().containsKey(stem + "_" + u));
        return word.isEmpty() || told
                ? Optional.empty()
                : Optional.of("lacks a column " + stem + "_yd or " + stem + "_m (" + what + ") beside " + word.get()
                        + (table.columns().containsKey(stem) ? "; " + stem + " tells no unit, rename it." : "."));
    }

    static Stream<String> columns() {
        return Stream.concat(
                Stream.concat(words(), Stream.of("balls")),
                RoundWords.UNITS.keySet().stream().flatMap(u -> Stream.of("strip_" + u, "flag_" + u)));
    }

    /** Balls by zone; what is wrong with the row is rejected in {@code cells}. */
    static Map<Zone, Integer> read(CsvRow row, RowReader cells) {
        Map<Zone, Integer> out = new LinkedHashMap<>();
        boolean across = anyOf(ACROSS, row);
        boolean along = anyOf(ALONG, row);
        if (across && along) {
            String column = cells.present(ALONG);
            cells.reject(
                    column,
                    row.cell(column),
                    "in a row of its own: a row counts its balls across the line or along it, not both");
            return out;
        }
        double length = across ? length(cells, row, "strip") : along ? length(cells, row, "flag") : 0;
        for (String word : across ? ACROSS : along ? ALONG : List.<String>of()) {
            add(out, zone(word, length), cells, word);
        }
        MISHITS.forEach(kind -> add(out, Zone.mishit(kind), cells, word(kind)));
        checkSum(out, row, cells);
        return out;
    }

    private static Stream<String> words() {
        return Stream.concat(
                Stream.concat(ACROSS.stream(), ALONG.stream()), MISHITS.stream().map(CountRows::word));
    }

    private static String word(Mishit.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    private static boolean anyOf(List<String> words, CsvRow row) {
        return words.stream().anyMatch(w -> !row.cell(w).isEmpty());
    }

    private static double length(RowReader cells, CsvRow row, String stem) {
        Optional<Distance> length = cells.distance(stem, LONGEST).filter(d -> d.metres() >= SHORTEST_METRES);
        if (length.isEmpty()) {
            List<String> columns = new ArrayList<>();
            RoundWords.UNITS.keySet().forEach(u -> columns.add(stem + "_" + u));
            String column = cells.present(columns);
            cells.reject(
                    column,
                    row.cell(column),
                    stem.equals("strip")
                            ? "the width of the strip, 1 to 430 yd"
                            : "the distance of the flag, 1 to 430 yd");
        }
        return length.map(Distance::metres).orElse(1.0);
    }

    private static Zone zone(String word, double length) {
        return switch (word) {
            case "inside" -> Zone.inside(length);
            case "left" -> Zone.leftOf(length);
            case "right" -> Zone.rightOf(length);
            case "short" -> Zone.shortOf(length);
            case "level" -> Zone.level(length);
            default -> Zone.longOf(length);
        };
    }

    private static void add(Map<Zone, Integer> out, Zone zone, RowReader cells, String word) {
        int balls = cells.whole(word, 0, MOST_BALLS).orElse(0);
        if (balls > 0) {
            out.put(zone, balls);
        }
    }

    private static void checkSum(Map<Zone, Integer> counted, CsvRow row, RowReader cells) {
        OptionalInt said = cells.whole("balls", 0, MOST_BALLS);
        int sum = counted.values().stream().mapToInt(Integer::intValue).sum();
        if (said.isPresent() && said.getAsInt() != sum) {
            cells.reject("balls", row.cell("balls"), "what the counts of the row add up to, " + sum);
        }
    }
}
