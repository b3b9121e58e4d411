package loopwright.adapter.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loopwright.action.RowProblem;
import loopwright.action.UserFault;

/**
 * A table with a header row: commas, semicolons or tabs between the cells, lines beginning with # and empty lines left
 * out. Each line is a row of its own, so that one bad quote spoils one row and not the rest of the file.
 *
 * @param columns header names (lower case, words joined by _) and their places, from 0
 * @param header the names as they are written
 */
record CsvTable(Path file, Map<String, Integer> columns, List<String> header, List<CsvRow> rows) {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    static CsvTable read(Path file) {
        return of(file, linesOf(file));
    }

    /** A table that is text already; {@code file} is what to call it. */
    static CsvTable of(Path file, String text) {
        return of(file, plainLines(text));
    }

    static CsvTable of(Path file, List<String> lines) {
        int header = 0;
        while (header < lines.size() && isSkipped(lines.get(header))) {
            header++;
        }
        if (header == lines.size()) {
            throw new UserFault(file + " is empty; a table with a header row is expected.");
        }
        char separator = separatorOf(lines.get(header));
        CsvReader.CsvReaderBuilder cells = CsvReader.builder()
                .fieldSeparator(separator)
                .commentStrategy(CommentStrategy.NONE)
                .allowUnclosedQuote(false);
        List<String> names = namesOf(file, header + 1, cells, lines.get(header));
        Map<String, Integer> columns = columnsOf(file, header + 1, names);
        List<CsvRow> rows = new ArrayList<>();
        for (int i = header + 1; i < lines.size(); i++) {
            if (!isSkipped(lines.get(i))) {
                rows.add(row(i + 1, lines.get(i), cells, columns));
            }
        }
        return new CsvTable(file, columns, names, rows);
    }

    /** A column as the file writes it; the program's own name where it has none. */
    String written(String column) {
        Integer place = columns.get(column);
        String name = place == null ? "" : header.get(place).strip();
        return name.isEmpty() ? column : name;
    }

    /** All columns as the file writes them. */
    List<String> written() {
        return columns.keySet().stream().map(this::written).toList();
    }

    private static CsvRow row(long line, String text, CsvReader.CsvReaderBuilder reader, Map<String, Integer> columns) {
        try {
            List<String> cells = reader.ofSingleCsvRecord(text).getFields();
            if (cells.size() <= columns.size()) {
                return new CsvRow(line, cells, columns, Optional.empty());
            }
            return broken(line, text, columns, "a row of " + columns.size() + " cells but one of " + cells.size());
        } catch (CsvParseException e) {
            return broken(line, text, columns, "a row whose quotes are closed on the same line");
        }
    }

    private static CsvRow broken(long line, String text, Map<String, Integer> columns, String accepted) {
        return new CsvRow(line, List.of(), columns, Optional.of(new RowProblem(line, 0, "", text, accepted)));
    }

    private static List<String> namesOf(Path file, long line, CsvReader.CsvReaderBuilder reader, String header) {
        try {
            return reader.ofSingleCsvRecord(header).getFields();
        } catch (CsvParseException e) {
            throw new UserFault(file + ", line " + line + ": a quote in the header row is not closed; close it.", e);
        }
    }

    private static Map<String, Integer> columnsOf(Path file, long line, List<String> names) {
        Map<String, Integer> columns = new LinkedHashMap<>();
        for (String name : names) {
            String plain = plain(name);
            String key = plain.isEmpty() ? "column_" + (columns.size() + 1) : plain;
            if (columns.putIfAbsent(key, columns.size()) != null) {
                throw new UserFault(
                        file + ", line " + line + ": the column \"" + name.strip() + "\" occurs twice; rename one.");
            }
        }
        return columns;
    }

    /** "To hole (yd)" and "to_hole_yd" are the same column. */
    private static String plain(String name) {
        return name.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "_")
                .replaceAll("^_|_$", "");
    }

    private static char separatorOf(String header) {
        char best = ',';
        for (char c : new char[] {';', '\t'}) {
            if (header.chars().filter(x -> x == c).count()
                    > header.chars().filter(x -> x == ',').count()) {
                best = c;
            }
        }
        return best;
    }

    static boolean isSkipped(String line) {
        return line.startsWith("#") || line.replaceAll("[,;\\s]", "").isEmpty();
    }

    /** The lines of a file, without its byte order mark. */
    static List<String> linesOf(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new UserFault(file + " does not exist or is not a file; name a table in CSV.");
        }
        try {
            return plainLines(Files.readString(file, StandardCharsets.UTF_8));
        } catch (CharacterCodingException e) {
            throw new UserFault(file + " is not text in UTF-8; save it as CSV in UTF-8.", e);
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read (" + e.getMessage() + ").", e);
        }
    }

    private static List<String> plainLines(String text) {
        return (text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text)
                .lines()
                .toList();
    }
}
