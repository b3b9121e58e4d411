package loopwright.adapter.store;

import com.zaxxer.hikari.HikariDataSource;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.action.AccessBook;
import loopwright.action.BenchStore;
import loopwright.action.CourseImage;
import loopwright.action.KeptImage;
import loopwright.action.KeptList;
import loopwright.action.KeptPlan;
import loopwright.action.PlayerRecords;
import loopwright.action.Shelf;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/** The store in an SQL database; {@link Database} opens it. */
final class SqlStore implements BenchStore {
    private final HikariDataSource source;
    private final Jdbi jdbi;
    private final String where;
    private final Path folder;

    SqlStore(HikariDataSource source, String where, Path folder) {
        this.source = source;
        this.jdbi = Jdbi.create(source);
        this.where = where;
        this.folder = folder;
    }

    @Override
    public Shelf courses() {
        return new SqlShelf(jdbi, "course");
    }

    @Override
    public Shelf players() {
        return new SqlShelf(jdbi, "player");
    }

    @Override
    public Map<String, String> listAnswers(String player) {
        return jdbi.withHandle(h -> answers(h, player));
    }

    static Map<String, String> answers(Handle h, String player) {
        return pairs(h, "SELECT question, answer FROM answer WHERE player = ?", player);
    }

    @Override
    public void setAnswers(String player, Map<String, String> answers) {
        jdbi.useTransaction(h -> {
            h.execute("DELETE FROM answer WHERE player = ?", player);
            answers.forEach((q, a) -> insertAnswer(h, player, q, a));
        });
    }

    static void insertAnswer(Handle h, String player, String question, String answer) {
        h.execute(
                "INSERT INTO answer VALUES (?, ?, ?) ON CONFLICT (player, question) DO UPDATE SET answer ="
                        + " excluded.answer",
                player,
                question,
                answer);
    }

    @Override
    public List<KeptList> listLists(String player) {
        return jdbi.withHandle(h -> lists(h, player));
    }

    static List<KeptList> lists(Handle h, String player) {
        return h.createQuery(
                        "SELECT id, kind, name, setting, body, added FROM list WHERE player = ? ORDER BY added, id")
                .bind(0, player)
                .map((r, c) -> new KeptList(
                        r.getString(1),
                        KeptList.Kind.valueOf(r.getString(2)),
                        r.getString(3),
                        r.getString(4),
                        r.getString(5),
                        Instant.ofEpochMilli(r.getLong(6))))
                .list();
    }

    @Override
    public KeptList addList(String player, KeptList.Kind kind, String name, String setting, String text) {
        KeptList list = new KeptList(Ids.fresh(), kind, name, setting, text, Ids.now());
        jdbi.useTransaction(h -> insert(h, player, list));
        return list;
    }

    static void insert(Handle h, String player, KeptList l) {
        h.execute(
                "INSERT INTO list VALUES (?, ?, ?, ?, ?, ?, ?)",
                l.id(),
                player,
                l.kind().name(),
                l.name(),
                l.setting(),
                l.text(),
                l.at().toEpochMilli());
    }

    @Override
    public void eraseList(String player, String list) {
        jdbi.useTransaction(h -> h.execute("DELETE FROM list WHERE player = ? AND id = ?", player, list));
    }

    @Override
    public Map<Integer, String> listHoleLocations(String course, String day) {
        Map<Integer, String> out = new TreeMap<>();
        jdbi.useHandle(h -> h.createQuery("SELECT hole, location FROM hole_location WHERE course = ? AND day = ?")
                .bind(0, course)
                .bind(1, day)
                .map((r, c) -> Map.entry(r.getInt(1), r.getString(2)))
                .forEach(e -> out.put(e.getKey(), e.getValue())));
        return out;
    }

    @Override
    public void setHoleLocations(String course, String day, Map<Integer, String> locations) {
        jdbi.useTransaction(h -> {
            h.execute("DELETE FROM hole_location WHERE course = ? AND day = ?", course, day);
            locations.forEach((hole, place) -> insertHoleLocation(h, course, day, hole, place));
        });
    }

    static void insertHoleLocation(Handle h, String course, String day, int hole, String location) {
        h.execute(
                "INSERT INTO hole_location VALUES (?, ?, ?, ?)"
                        + " ON CONFLICT (course, day, hole) DO UPDATE SET location = excluded.location",
                course,
                day,
                hole,
                location);
    }

    @Override
    public String localRules(String course, String day) {
        return jdbi.withHandle(h -> h.createQuery("SELECT rules FROM local_rules WHERE course = ? AND day = ?")
                .bind(0, course)
                .bind(1, day)
                .mapTo(String.class)
                .findOne()
                .orElse(""));
    }

    @Override
    public void setLocalRules(String course, String day, String rules) {
        jdbi.useTransaction(h -> {
            h.execute("DELETE FROM local_rules WHERE course = ? AND day = ?", course, day);
            if (!rules.isBlank()) {
                h.execute("INSERT INTO local_rules VALUES (?, ?, ?)", course, day, rules);
            }
        });
    }

    @Override
    public Optional<CourseImage> findImage(String course) {
        return jdbi.withHandle(h -> SqlImages.findShown(h, course));
    }

    @Override
    public List<KeptImage> listImages(String course) {
        return jdbi.withHandle(h -> SqlImages.list(h, course));
    }

    @Override
    public void addImage(String course, CourseImage image) {
        jdbi.useTransaction(h -> SqlImages.add(h, course, image));
    }

    @Override
    public void showImage(String course, int number) {
        jdbi.useTransaction(h -> SqlImages.show(h, course, number));
    }

    @Override
    public void eraseImage(String course, int number) {
        jdbi.useTransaction(h -> SqlImages.erase(h, course, number));
    }

    @Override
    public PlayerRecords records() {
        return new SqlRecords(jdbi);
    }

    @Override
    public List<KeptPlan> listPlans() {
        return jdbi.withHandle(SqlStore::plans);
    }

    static List<KeptPlan> plans(Handle h) {
        return h.createQuery("SELECT player, player_version, course, course_version, inputs, seed, engine,"
                        + " score_mean, score_sd, target_chance, habit_mean, made FROM plan ORDER BY made DESC, inputs")
                .map((r, c) -> new KeptPlan(
                        r.getString(1),
                        r.getInt(2),
                        r.getString(3),
                        r.getInt(4),
                        r.getString(5),
                        r.getLong(6),
                        r.getString(7),
                        r.getDouble(8),
                        r.getDouble(9),
                        r.getDouble(10),
                        r.getDouble(11),
                        Instant.ofEpochMilli(r.getLong(12))))
                .list();
    }

    @Override
    public void keepPlan(KeptPlan plan) {
        jdbi.useTransaction(h -> insert(h, plan));
    }

    static void insert(Handle h, KeptPlan p) {
        h.execute(
                "INSERT INTO plan VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"
                        + " ON CONFLICT (player, player_version, course, course_version, inputs, seed) DO UPDATE SET"
                        + " engine = excluded.engine, score_mean = excluded.score_mean, score_sd = excluded.score_sd,"
                        + " target_chance = excluded.target_chance, habit_mean = excluded.habit_mean,"
                        + " made = excluded.made",
                p.player(),
                p.playerVersion(),
                p.course(),
                p.courseVersion(),
                p.inputs(),
                p.seed(),
                p.engine(),
                p.scoreMean(),
                p.scoreSd(),
                p.targetChance(),
                p.habitMean(),
                p.at().toEpochMilli());
    }

    @Override
    public Map<String, String> listPreferences() {
        return jdbi.withHandle(SqlStore::preferences);
    }

    static Map<String, String> preferences(Handle h) {
        return pairs(h, "SELECT name, value FROM preference");
    }

    @Override
    public void setPreference(String name, String value) {
        jdbi.useTransaction(h -> insertPreference(h, name, value));
    }

    static void insertPreference(Handle h, String name, String value) {
        h.execute(
                "INSERT INTO preference VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
                name,
                value);
    }

    @Override
    public void eraseEverything() {
        jdbi.useTransaction(ZipImport::eraseAll);
    }

    @Override
    public void export(Selection what, OutputStream out) {
        // serializable: every table as of one moment
        jdbi.useTransaction(TransactionIsolationLevel.SERIALIZABLE, h -> new ZipExport(h).write(what, out));
    }

    @Override
    public void importZip(InputStream zip, String label, boolean replace) {
        ZipImport read = ZipImport.read(zip, label);
        jdbi.useTransaction(h -> read.into(h, replace));
    }

    @Override
    public void restore(InputStream zip, String label) {
        ZipImport read = ZipImport.read(zip, label);
        jdbi.useTransaction(h -> {
            ZipImport.eraseAll(h);
            read.into(h, true);
        });
    }

    @Override
    public AccessBook access() {
        return new SqlAccess(jdbi);
    }

    @Override
    public String where() {
        return where;
    }

    @Override
    public Path folder() {
        return folder;
    }

    @Override
    public void close() {
        source.close();
    }

    static Map<String, String> pairs(Handle h, String sql, Object... values) {
        Map<String, String> out = new TreeMap<>();
        h.select(sql, values)
                .map((r, c) -> Map.entry(r.getString(1), r.getString(2)))
                .forEach(e -> out.put(e.getKey(), e.getValue()));
        return out;
    }
}
