package loopwright.adapter.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import loopwright.action.UserFault;
import loopwright.units.Distance;

/** Finds the columns of a shot list by their names, which carry the unit, or as the user maps them. */
final class ShotColumns {

    /** A column of lengths and the metres in one of its units. */
    record Length(String column, double metresPerUnit) {}

    private static final Map<String, List<String>> LENGTHS = Map.of(
            "carry", List.of("carry", "carry_distance"),
            "total", List.of("total", "total_distance"),
            "side", List.of("side", "offline", "lateral", "deviation"));

    private static final List<String> WORDS =
            List.of("club", "effort", "ball", "surface", "lie", "date", "session", "temperature_c", "temperature_f");

    private static final Map<String, Double> UNITS = units();

    private final CsvTable table;
    private final Map<String, String> map;
    private final Map<String, Length> lengths = new LinkedHashMap<>();
    private final Map<String, String> words = new LinkedHashMap<>();

    ShotColumns(CsvTable table, Map<String, String> map) {
        this.table = table;
        this.map = map;
        map.keySet().forEach(this::requireKnown);
        for (String quantity : List.of("carry", "total", "side")) {
            findLength(quantity).ifPresent(length -> lengths.put(quantity, length));
        }
        for (String word : WORDS) {
            findWord(word).ifPresent(column -> words.put(word, column));
        }
        requireEnough();
    }

    Optional<Length> length(String quantity) {
        return Optional.ofNullable(lengths.get(quantity));
    }

    Optional<String> word(String word) {
        return Optional.ofNullable(words.get(word));
    }

    /** Names of the columns whose meaning is not known, as the table has them. */
    List<String> ignored() {
        TreeSet<String> left = new TreeSet<>(table.columns().keySet());
        lengths.values().forEach(l -> left.remove(l.column()));
        left.removeAll(words.values());
        if (ShortRows.areIn(table)) {
            ShortRows.columns().forEach(left::remove);
        }
        if (CountRows.areIn(table)) {
            CountRows.columns().forEach(left::remove);
        }
        return left.stream().map(table::written).toList();
    }

    String understood() {
        List<String> out = new ArrayList<>();
        words.forEach(
                (word, column) -> out.add(word.equals(column) ? word : word + " (" + table.written(column) + ")"));
        lengths.forEach((word, length) -> out.add(word + " (" + table.written(length.column()) + ")"));
        table.columns().keySet().stream().filter(this::isCountedOrShort).forEach(out::add);
        return String.join(", ", out);
    }

    private boolean isCountedOrShort(String column) {
        Stream<String> known = Stream.concat(
                CountRows.areIn(table) ? CountRows.columns() : Stream.of(),
                ShortRows.areIn(table) ? ShortRows.columns() : Stream.of());
        return known.anyMatch(column::equals);
    }

    private Optional<Length> findLength(String quantity) {
        for (Map.Entry<String, String> entry : map.entrySet()) {
            String key = plain(entry.getKey());
            if (key.equals(quantity) || key.startsWith(quantity + "_")) {
                return Optional.of(mapped(quantity, key, entry.getValue()));
            }
        }
        List<Length> found = new ArrayList<>();
        for (String name : LENGTHS.getOrDefault(quantity, List.of())) {
            for (String column : table.columns().keySet()) {
                if (column.startsWith(name + "_")) {
                    unit(column.substring(name.length() + 1)).ifPresent(u -> found.add(new Length(column, u)));
                }
            }
            if (found.isEmpty() && table.columns().containsKey(name)) {
                throw fault(
                        name,
                        "tells no unit; name it " + name + "_yd or " + name + "_m, or say --map " + quantity + "_yd="
                                + name);
            }
        }
        if (found.size() > 1) {
            throw fault(
                    found.get(1).column(),
                    "gives " + quantity + " a second time beside "
                            + found.get(0).column() + "; keep one, or say which with --map " + quantity + "=COLUMN");
        }
        return found.stream().findFirst();
    }

    private Length mapped(String quantity, String key, String columnText) {
        String column = column(columnText);
        String told = key.equals(quantity) ? column : key;
        for (String part : told.split("_", -1)) {
            Optional<Double> unit = unit(part);
            if (unit.isPresent()) {
                return new Length(column, unit.get());
            }
        }
        throw new UserFault("--map " + quantity + "=" + columnText + ": the column's name tells no unit; say --map "
                + quantity + "_yd=" + columnText + " or --map " + quantity + "_m=" + columnText + ".");
    }

    private Optional<String> findWord(String word) {
        for (Map.Entry<String, String> entry : map.entrySet()) {
            if (plain(entry.getKey()).equals(word)) {
                return Optional.of(column(entry.getValue()));
            }
        }
        return table.columns().containsKey(word) ? Optional.of(word) : Optional.empty();
    }

    private String column(String text) {
        String column = plain(text);
        if (!table.columns().containsKey(column)) {
            throw new UserFault(table.file() + " has no column \"" + text + "\" to map; its columns are "
                    + String.join(", ", table.written()) + ".");
        }
        return column;
    }

    private void requireKnown(String key) {
        String plain = plain(key);
        boolean length = LENGTHS.keySet().stream().anyMatch(q -> plain.equals(q) || plain.startsWith(q + "_"));
        if (!length && !WORDS.contains(plain)) {
            throw new UserFault("--map " + key + "=...: nothing is called \"" + key + "\"; carry, total, side, "
                    + String.join(", ", WORDS) + " can be mapped.");
        }
    }

    private void requireEnough() {
        List<String> missing = new ArrayList<>();
        if (!words.containsKey("club")) {
            missing.add("club");
        }
        CountRows.lengthsMissing(table).ifPresent(sentence -> {
            throw new UserFault(table.file() + ", line 1 " + sentence);
        });
        boolean measured = lengths.containsKey("carry") || lengths.containsKey("total");
        if (!measured && !CountRows.areIn(table) && !ShortRows.areIn(table)) {
            missing.add("carry_yd, carry_m, total_yd or total_m");
        }
        if (!missing.isEmpty()) {
            throw new UserFault(table.file() + ", line 1 lacks a column " + String.join(" and a column ", missing)
                    + "; it has " + String.join(", ", table.written())
                    + ". Rename a column or say --map carry_yd=COLUMN.");
        }
    }

    private UserFault fault(String column, String sentence) {
        return new UserFault(table.file() + ", line 1, column "
                + (table.columns().getOrDefault(column, 0) + 1) + " (" + table.written(column) + ") " + sentence + ".");
    }

    private static String plain(String text) {
        return text.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "_")
                .replaceAll("^_|_$", "");
    }

    private static Optional<Double> unit(String word) {
        return Optional.ofNullable(UNITS.get(word));
    }

    private static Map<String, Double> units() {
        Map<String, Double> out = new LinkedHashMap<>();
        List.of("yd", "yds", "yard", "yards", "paces").forEach(u -> out.put(u, Distance.METRES_PER_YARD));
        List.of("m", "metre", "metres", "meter", "meters").forEach(u -> out.put(u, 1.0));
        List.of("ft", "feet", "foot").forEach(u -> out.put(u, Distance.METRES_PER_FOOT));
        return out;
    }
}
