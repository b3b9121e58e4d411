package loopwright.adapter.store;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import loopwright.action.BenchStore.Selection;
import loopwright.action.CourseImage;
import loopwright.action.KeptImage;
import loopwright.action.KeptList;
import loopwright.action.KeptPlan;
import org.jdbi.v3.core.Handle;

/**
 * Writes a store, or a part of it, as a zip: tables as CSV, courses as GeoJSON, their images as PNG, players as JSON, lists as
 * delivered. The
 * same content gives the same bytes.
 */
final class ZipExport {
    static final String FORMAT = "4";
    /** The first format had no rounds, lessons and player files, the second no images under courses, the third one at most. */
    static final List<String> READABLE = List.of("1", "2", "3", FORMAT);

    static final String LAST = "end.csv";
    /** The earliest time a zip can hold, for every entry. */
    private static final LocalDateTime TIMELESS = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final Handle handle;

    ZipExport(Handle handle) {
        this.handle = handle;
    }

    void write(Selection what, OutputStream out) {
        try {
            ZipOutputStream zip = new ZipOutputStream(out);
            text(zip, "format.csv", csv(List.of(List.of("loopwright store", FORMAT))));
            for (String id : ids("player", what.everything(), what.players())) {
                player(zip, id);
            }
            for (String id : ids("course", what.everything(), what.courses())) {
                course(zip, id);
            }
            if (what.everything()) {
                text(
                        zip,
                        "plans.csv",
                        csv(SqlStore.plans(handle).stream().map(ZipExport::row).toList()));
                text(zip, "preferences.csv", pairs(SqlStore.preferences(handle)));
            }
            // read last: a zip that was cut off lacks it
            text(zip, LAST, csv(List.of(List.of("complete"))));
            zip.finish();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<String> ids(String kind, boolean all, List<String> wanted) {
        return handle
                .createQuery("SELECT id FROM document WHERE kind = ? ORDER BY id")
                .bind(0, kind)
                .mapTo(String.class)
                .list()
                .stream()
                .filter(id -> all || wanted.contains(id))
                .toList();
    }

    private void player(ZipOutputStream zip, String id) throws IOException {
        String folder = "players/" + id + "/";
        versions(zip, folder, id, ".json");
        text(zip, folder + "answers.csv", pairs(SqlStore.answers(handle, id)));
        List<KeptList> lists = SqlStore.lists(handle, id);
        text(zip, folder + "lists.csv", csv(lists.stream().map(ZipExport::row).toList()));
        for (KeptList l : lists) {
            text(zip, folder + "list-" + l.id() + ".csv", l.text());
        }
        for (RecordTable table : RecordTable.values()) {
            text(zip, folder + table.file(), csv(table.rows(handle, id)));
        }
        for (Map.Entry<String, String> round : SqlRecords.roundTexts(handle, id).entrySet()) {
            text(zip, folder + "round-" + round.getKey() + ".csv", round.getValue());
        }
    }

    private void course(ZipOutputStream zip, String id) throws IOException {
        String folder = "courses/" + id + "/";
        versions(zip, folder, id, ".geojson");
        List<List<String>> locations = handle.createQuery(
                        "SELECT day, hole, location FROM hole_location WHERE course = ? ORDER BY day, hole")
                .bind(0, id)
                .map((r, c) -> List.of(r.getString(1), r.getString(2), r.getString(3)))
                .list();
        text(zip, folder + "hole-locations.csv", csv(locations));
        text(
                zip,
                folder + "local-rules.csv",
                pairs(SqlStore.pairs(handle, "SELECT day, rules FROM local_rules WHERE course = ?", id)));
        text(zip, folder + "answers.csv", pairs(SqlStore.answers(handle, id)));
        List<List<String>> images = new ArrayList<>();
        for (KeptImage kept : SqlImages.list(handle, id)) {
            CourseImage image = SqlImages.get(handle, id, kept.number());
            images.add(SqlImages.row(kept, image));
            bytes(zip, folder + SqlImages.png(Integer.toString(kept.number())), image.png());
        }
        text(zip, folder + SqlImages.FILE, csv(images));
    }

    private void versions(ZipOutputStream zip, String folder, String id, String ending) throws IOException {
        List<List<String>> rows = handle.createQuery(
                        "SELECT version, name, note, made FROM document_version WHERE document = ? ORDER BY version")
                .bind(0, id)
                .map((r, c) -> List.of(r.getString(1), r.getString(2), r.getString(3), r.getString(4)))
                .list();
        text(zip, folder + "versions.csv", csv(rows));
        for (List<String> row : rows) {
            int version = Integer.parseInt(row.get(0));
            String body = handle.createQuery("SELECT body FROM document_version WHERE document = ? AND version = ?")
                    .bind(0, id)
                    .bind(1, version)
                    .mapTo(String.class)
                    .one();
            text(zip, folder + "v" + version + ending, body);
        }
    }

    private static List<String> row(KeptList l) {
        return List.of(l.id(), l.kind().name(), l.name(), l.setting(), Long.toString(l.at().toEpochMilli()));
    }

    private static List<String> row(KeptPlan p) {
        return List.of(
                p.player(),
                Integer.toString(p.playerVersion()),
                p.course(),
                Integer.toString(p.courseVersion()),
                p.inputs(),
                Long.toString(p.seed()),
                p.engine(),
                Double.toString(p.scoreMean()),
                Double.toString(p.scoreSd()),
                Double.toString(p.targetChance()),
                Double.toString(p.habitMean()),
                Long.toString(p.at().toEpochMilli()));
    }

    private static String pairs(Map<String, String> pairs) {
        return csv(pairs.entrySet().stream()
                .map(e -> List.of(e.getKey(), e.getValue()))
                .toList());
    }

    private static String csv(List<List<String>> rows) {
        StringWriter out = new StringWriter();
        try (CsvWriter writer = CsvWriter.builder().build(out)) {
            rows.forEach(writer::writeRecord);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static void text(ZipOutputStream zip, String name, String text) throws IOException {
        bytes(zip, name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void bytes(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(TIMELESS);
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }
}
