package loopwright.adapter.store;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import loopwright.action.CourseImage;
import loopwright.action.KeptList;
import loopwright.action.KeptPlan;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import org.jdbi.v3.core.Handle;

/** Reads what {@link ZipExport} wrote. Nothing of it reaches the disk under a name of the zip's choosing. */
final class ZipImport {
    private static final Pattern NAME = Pattern.compile("format\\.csv|end\\.csv|plans\\.csv|preferences\\.csv"
            + "|(players|courses)/[a-z0-9]{1,40}/"
            + "(versions\\.csv|answers\\.csv|lists\\.csv|hole-locations\\.csv|local-rules\\.csv|"
            + "intake\\.csv|rounds\\.csv|lessons\\.csv|breaks\\.csv|forecasts\\.csv|drills\\.csv|(list|round)-[a-z0-9]{1,40}\\.csv"
            + "|image\\.csv|image(-[0-9]{1,6})?\\.png|v[0-9]{1,6}\\.(json|geojson))");
    private static final String PNG_BEGINS = "\u0089PNG\r\n";
    private static final long LARGEST = 500L << 20;

    private final String label;
    private final Map<String, byte[]> files;

    private ZipImport(String label, Map<String, byte[]> files) {
        this.label = label;
        this.files = files;
    }

    static ZipImport read(InputStream in, String label) {
        Map<String, byte[]> files = new TreeMap<>();
        long left = LARGEST;
        try (ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (!NAME.matcher(entry.getName()).matches()) {
                    throw new UserFault(label + " holds \"" + entry.getName()
                            + "\", which no export of this program holds; choose a zip written by \"loopwright store"
                            + " export\" or \"backup\".");
                }
                byte[] bytes = bytes(zip, left, label);
                left -= bytes.length;
                files.put(entry.getName(), bytes);
            }
        } catch (IOException e) {
            throw new UserFault(label + " is damaged (" + e.getMessage() + "); nothing was changed.", e);
        }
        ZipImport out = new ZipImport(label, files);
        out.checkFormat();
        out.checkComplete();
        return out;
    }

    private static byte[] bytes(InputStream in, long most, String label) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] buffer = new byte[1 << 16];
        for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
            out.write(buffer, 0, n);
            if (out.size() > most) {
                throw new UserFault(label + " unpacks to more than 500 MB, which no export does; nothing was changed.");
            }
        }
        return out.toByteArray();
    }

    private void checkFormat() {
        List<List<String>> rows = rows("format.csv", 2);
        if (rows.isEmpty()) {
            throw new UserFault(label + " is no zip of this program; choose one written by \"loopwright store export\""
                    + " or \"backup\".");
        }
        String format = rows.get(0).get(1);
        if (!ZipExport.READABLE.contains(format)) {
            throw new UserFault(label + " has format " + format + ", and this program reads formats "
                    + String.join(" and ", ZipExport.READABLE)
                    + "; use the program that wrote it, or a newer one.");
        }
    }

    private void checkComplete() {
        if (!files.containsKey(ZipExport.LAST)) {
            throw new UserFault(label + " was cut off before its end; nothing was changed.");
        }
    }

    static void eraseAll(Handle h) {
        SqlRecords.TABLES.forEach(table -> h.execute("DELETE FROM " + table));
        for (String table : List.of(
                "local_rules",
                "kept_image",
                "plan",
                "hole_location",
                "list",
                "answer",
                "document_version",
                "document",
                "preference")) {
            h.execute("DELETE FROM " + table);
        }
    }

    void into(Handle h, boolean replace) {
        for (String id : ids("players")) {
            makeRoom(h, id, "player", replace);
            String folder = "players/" + id + "/";
            versions(h, id, folder, ".json");
            rows(folder + "answers.csv", 2).forEach(r -> SqlStore.insertAnswer(h, id, r.get(0), r.get(1)));
            rows(folder + "lists.csv", 5).forEach(r -> SqlStore.insert(h, id, list(folder, r)));
            records(h, id, folder);
        }
        for (String id : ids("courses")) {
            makeRoom(h, id, "course", replace);
            String folder = "courses/" + id + "/";
            versions(h, id, folder, ".geojson");
            rows(folder + "answers.csv", 2).forEach(r -> SqlStore.insertAnswer(h, id, r.get(0), r.get(1)));
            rows(folder + "hole-locations.csv", 3)
                    .forEach(r -> SqlStore.insertHoleLocation(
                            h, id, r.get(0), Math.toIntExact(number("hole-locations.csv", r.get(1))), r.get(2)));
            rows(folder + "local-rules.csv", 2)
                    .forEach(r -> h.execute("INSERT INTO local_rules VALUES (?, ?, ?)", id, r.get(0), r.get(1)));
            images(h, id, folder);
        }
        rows("plans.csv", 12).forEach(r -> SqlStore.insert(h, plan(r)));
        rows("preferences.csv", 2).forEach(r -> SqlStore.insertPreference(h, r.get(0), r.get(1)));
    }

    private void images(Handle h, String id, String folder) {
        if (files.containsKey(folder + SqlImages.OLD_PNG)) {
            rows(folder + SqlImages.FILE, SqlImages.OLD_COLUMNS)
                    .forEach(r -> SqlImages.insert(h, id, 1, true, image(folder, SqlImages.OLD_PNG, r)));
            return;
        }
        boolean shown = false;
        for (List<String> r : rows(folder + SqlImages.FILE, SqlImages.COLUMNS)) {
            int number = Math.toIntExact(number(folder + SqlImages.FILE, r.get(0)));
            if (shown && r.get(1).equals("shown")) {
                throw damaged(folder + SqlImages.FILE, "more than one image is shown");
            }
            shown |= r.get(1).equals("shown");
            CourseImage image = image(folder, SqlImages.png(r.get(0)), r.subList(2, r.size()));
            SqlImages.insert(h, id, number, r.get(1).equals("shown"), image);
        }
    }

    private CourseImage image(String folder, String file, List<String> row) {
        byte[] png = bytes(folder + file);
        if (!new String(png, 0, Math.min(png.length, PNG_BEGINS.length()), StandardCharsets.ISO_8859_1)
                .equals(PNG_BEGINS)) {
            throw damaged(folder + file, "it is no PNG");
        }
        try {
            return SqlImages.of(row, png);
        } catch (IllegalArgumentException e) {
            throw damaged(folder + SqlImages.FILE, String.valueOf(e.getMessage()));
        }
    }

    private void records(Handle h, String id, String folder) {
        for (RecordTable table : RecordTable.values()) {
            String file = folder + table.file();
            for (List<String> row : rows(file, table.columns())) {
                String body = table == RecordTable.ROUNDS ? text(folder + "round-" + row.get(0) + ".csv") : "";
                try {
                    table.insert(h, id, row, body);
                } catch (IllegalArgumentException | DateTimeException e) {
                    throw damaged(file, String.valueOf(e.getMessage()));
                }
            }
        }
    }

    private Set<String> ids(String kind) {
        Set<String> out = new TreeSet<>();
        for (String name : files.keySet()) {
            if (name.startsWith(kind + "/")) {
                out.add(name.substring(kind.length() + 1, name.indexOf('/', kind.length() + 1)));
            }
        }
        return out;
    }

    private void makeRoom(Handle h, String id, String kind, boolean replace) {
        boolean there = h.createQuery("SELECT COUNT(*) FROM document WHERE id = ?")
                        .bind(0, id)
                        .mapTo(Integer.class)
                        .one()
                > 0;
        if (there && !replace) {
            throw new UserFault(label + " holds the " + kind + " " + id
                    + ", which this store has already; nothing was changed. Say --replace to put the zip's in"
                    + " its place.");
        }
        if (there) {
            SqlShelf.erase(h, id);
        }
        h.execute("INSERT INTO document VALUES (?, ?)", id, kind);
    }

    private void versions(Handle h, String id, String folder, String ending) {
        List<List<String>> rows = rows(folder + "versions.csv", 4);
        if (rows.isEmpty()) {
            throw damaged(folder + "versions.csv", "it lists no version");
        }
        for (List<String> r : rows) {
            int version = Math.toIntExact(number("versions.csv", r.get(0)));
            var entry = new Shelf.Entry(id, version, r.get(1), r.get(2), time("versions.csv", r.get(3)));
            SqlShelf.insert(h, new Shelf.Document(entry, text(folder + "v" + version + ending)));
        }
    }

    private KeptList list(String folder, List<String> r) {
        try {
            return new KeptList(
                    r.get(0),
                    KeptList.Kind.valueOf(r.get(1)),
                    r.get(2),
                    r.get(3),
                    text(folder + "list-" + r.get(0) + ".csv"),
                    time("lists.csv", r.get(4)));
        } catch (IllegalArgumentException e) {
            throw damaged("lists.csv", "\"" + r.get(1) + "\" is neither SHOTS nor PUTTS");
        }
    }

    private KeptPlan plan(List<String> r) {
        return new KeptPlan(
                r.get(0),
                Math.toIntExact(number("plans.csv", r.get(1))),
                r.get(2),
                Math.toIntExact(number("plans.csv", r.get(3))),
                r.get(4),
                number("plans.csv", r.get(5)),
                r.get(6),
                decimal(r.get(7)),
                decimal(r.get(8)),
                decimal(r.get(9)),
                decimal(r.get(10)),
                time("plans.csv", r.get(11)));
    }

    private double decimal(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw damaged("plans.csv", "\"" + text + "\" is no number");
        }
    }

    private long number(String file, String text) {
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException e) {
            throw damaged(file, "\"" + text + "\" is no whole number");
        }
    }

    private Instant time(String file, String text) {
        return Instant.ofEpochMilli(number(file, text));
    }

    private String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    private byte[] bytes(String name) {
        byte[] bytes = files.get(name);
        if (bytes == null) {
            throw damaged(name, "it is missing");
        }
        return bytes;
    }

    private List<List<String>> rows(String name, int columns) {
        String text = new String(files.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
        List<List<String>> rows;
        try (var reader = CsvReader.builder().ofCsvRecord(text)) {
            rows = reader.stream().map(r -> r.getFields()).toList();
        } catch (IOException | RuntimeException e) {
            throw damaged(name, "it is no table");
        }
        for (List<String> row : rows) {
            if (row.size() != columns) {
                throw damaged(name, "a row has " + row.size() + " fields instead of " + columns);
            }
        }
        return rows;
    }

    private UserFault damaged(String file, String why) {
        return new UserFault(label + " is damaged at " + file + ": " + why + "; nothing was changed.");
    }
}
