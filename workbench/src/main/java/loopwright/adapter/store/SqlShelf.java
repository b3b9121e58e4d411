package loopwright.adapter.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;

/** Documents of one kind; their versions are rows that are never changed. */
final class SqlShelf implements Shelf {
    private static final String COLUMNS = "SELECT v.document, v.version, v.name, v.note, v.made";
    private static final String NEWEST =
            " AND v.version = (SELECT MAX(w.version) FROM document_version w WHERE w.document = v.document)";

    private final Jdbi jdbi;
    private final String kind;

    SqlShelf(Jdbi jdbi, String kind) {
        this.jdbi = jdbi;
        this.kind = kind;
    }

    @Override
    public List<Entry> list() {
        return jdbi.withHandle(h -> entries(h.createQuery(COLUMNS
                        + " FROM document_version v JOIN document d ON d.id = v.document WHERE d.kind = ?"
                        + NEWEST
                        + " ORDER BY v.name, v.document")
                .bind(0, kind)));
    }

    @Override
    public List<Entry> listVersions(String id) {
        return jdbi.withHandle(h ->
                entries(h.createQuery(COLUMNS + " FROM document_version v WHERE v.document = ? ORDER BY v.version DESC")
                        .bind(0, id)));
    }

    @Override
    public Document get(String id) {
        return get(NEWEST, id);
    }

    @Override
    public Document get(String id, int version) {
        return get(" AND v.version = " + version, id);
    }

    private Document get(String which, String id) {
        return jdbi.withHandle(h -> find(h, which, id))
                .orElseThrow(() -> new UserFault("There is no such " + kind + " (" + id
                        + ") in this store; it may have been erased. \"loopwright store list\" shows what is kept."));
    }

    private Optional<Document> find(Handle h, String which, String id) {
        return h.createQuery(COLUMNS
                        + ", v.body FROM document_version v JOIN document d ON d.id = v.document"
                        + " WHERE d.kind = ? AND v.document = ?"
                        + which)
                .bind(0, kind)
                .bind(1, id)
                .map((r, c) -> new Document(
                        new Entry(
                                r.getString(1),
                                r.getInt(2),
                                r.getString(3),
                                r.getString(4),
                                Instant.ofEpochMilli(r.getLong(5))),
                        r.getString(6)))
                .findOne();
    }

    @Override
    public Document add(String name, String text, String note) {
        Document document = new Document(new Entry(Ids.fresh(), 1, name, note, Ids.now()), text);
        jdbi.useTransaction(h -> {
            h.execute("INSERT INTO document VALUES (?, ?)", document.id(), kind);
            insert(h, document);
        });
        return document;
    }

    static void insert(Handle h, Document d) {
        h.execute(
                "INSERT INTO document_version VALUES (?, ?, ?, ?, ?, ?)",
                d.id(),
                d.version(),
                d.name(),
                d.entry().note(),
                d.entry().at().toEpochMilli(),
                d.text());
    }

    @Override
    public Document change(String id, int seen, String name, String text, String note) {
        Document next = new Document(new Entry(id, seen + 1, name, note, Ids.now()), text);
        try {
            jdbi.useTransaction(h -> {
                if (newest(h, id) != seen) {
                    throw outdated(id, seen);
                }
                insert(h, next);
            });
        } catch (UnableToExecuteStatementException e) {
            // two writers passed the question at once; the key let only one of them in
            if (jdbi.withHandle(h -> newest(h, id)) != seen) {
                throw outdated(id, seen);
            }
            throw e;
        }
        return next;
    }

    private static int newest(Handle h, String id) {
        return h.createQuery("SELECT COALESCE(MAX(version), 0) FROM document_version WHERE document = ?")
                .bind(0, id)
                .mapTo(Integer.class)
                .one();
    }

    private Outdated outdated(String id, int seen) {
        return new Outdated("This " + kind + " (" + id + ") was changed elsewhere after version " + seen
                + " was read; load it again and repeat the change.");
    }

    @Override
    public void erase(String id) {
        jdbi.useTransaction(h -> erase(h, id));
    }

    static void erase(Handle h, String id) {
        h.execute("DELETE FROM plan WHERE player = ? OR course = ?", id, id);
        h.execute("DELETE FROM hole_location WHERE course = ?", id);
        h.execute("DELETE FROM local_rules WHERE course = ?", id);
        SqlImages.eraseAll(h, id);
        SqlRecords.erase(h, id);
        h.execute("DELETE FROM list WHERE player = ?", id);
        h.execute("DELETE FROM answer WHERE player = ?", id);
        SqlAccess.erase(h, id);
        h.execute("DELETE FROM document_version WHERE document = ?", id);
        h.execute("DELETE FROM document WHERE id = ?", id);
    }

    private static List<Entry> entries(Query query) {
        return query.map((r, c) -> new Entry(
                        r.getString(1),
                        r.getInt(2),
                        r.getString(3),
                        r.getString(4),
                        Instant.ofEpochMilli(r.getLong(5))))
                .list();
    }
}
