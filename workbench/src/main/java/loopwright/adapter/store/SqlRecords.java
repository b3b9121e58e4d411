package loopwright.adapter.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import loopwright.action.KeptDrill;
import loopwright.action.KeptForecast;
import loopwright.action.KeptLesson;
import loopwright.action.KeptRound;
import loopwright.action.PlayerRecords;
import loopwright.action.UserFault;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/** Rounds, lessons, breaks, forecasts and player files in the tables of the store. */
final class SqlRecords implements PlayerRecords {
    static final List<String> TABLES = List.of("intake", "played_round", "lesson", "dated_break", "forecast", "drill");

    private final Jdbi jdbi;

    SqlRecords(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    static void erase(Handle h, String player) {
        TABLES.forEach(table -> h.execute("DELETE FROM " + table + " WHERE player = ?", player));
    }

    @Override
    public Map<String, String> listIntake(String player) {
        return jdbi.withHandle(h -> SqlStore.pairs(h, "SELECT item, answer FROM intake WHERE player = ?", player));
    }

    @Override
    public void setIntake(String player, Map<String, String> answers) {
        jdbi.useTransaction(h -> {
            h.execute("DELETE FROM intake WHERE player = ?", player);
            answers.forEach((item, answer) -> insertIntake(h, player, item, answer));
        });
    }

    static void insertIntake(Handle h, String player, String item, String answer) {
        h.execute("INSERT INTO intake VALUES (?, ?, ?)", player, item, answer);
    }

    @Override
    public List<KeptRound> listRounds(String player) {
        return jdbi.withHandle(h -> h.createQuery("SELECT id, day, course, tees, holes, score, tier, lesson, added"
                        + " FROM played_round WHERE player = ? ORDER BY day, added, id")
                .bind(0, player)
                .map((r, c) -> new KeptRound(
                        r.getString(1),
                        day(r, 2),
                        r.getString(3),
                        r.getString(4),
                        r.getInt(5),
                        whole(r, 6),
                        r.getString(7),
                        r.getInt(8) == 1,
                        Instant.ofEpochMilli(r.getLong(9))))
                .list());
    }

    private static LocalDate day(ResultSet r, int column) throws SQLException {
        return LocalDate.parse(r.getString(column));
    }

    private static OptionalInt whole(ResultSet r, int column) throws SQLException {
        int value = r.getInt(column);
        return r.wasNull() ? OptionalInt.empty() : OptionalInt.of(value);
    }

    @Override
    public Map<String, String> listRoundTexts(String player) {
        return jdbi.withHandle(h -> roundTexts(h, player));
    }

    static Map<String, String> roundTexts(Handle h, String player) {
        return SqlStore.pairs(h, "SELECT id, body FROM played_round WHERE player = ?", player);
    }

    @Override
    public String getRoundText(String player, String round) {
        return jdbi.withHandle(h -> h.createQuery("SELECT body FROM played_round WHERE player = ? AND id = ?")
                        .bind(0, player)
                        .bind(1, round)
                        .mapTo(String.class)
                        .findOne())
                .orElseThrow(() -> noRound(round));
    }

    private static UserFault noRound(String round) {
        return new UserFault(
                "There is no round " + round + " of this player; \"loopwright round list\" shows what is kept.");
    }

    @Override
    public List<KeptRound> addRounds(String player, List<KeptRound> rounds, List<String> texts) {
        List<KeptRound> kept = new ArrayList<>();
        jdbi.useTransaction(h -> {
            for (int i = 0; i < rounds.size(); i++) {
                KeptRound r = rounds.get(i);
                KeptRound next = new KeptRound(
                        Ids.fresh(),
                        r.day(),
                        r.course(),
                        r.tees(),
                        r.holes(),
                        r.score(),
                        r.tier(),
                        r.lesson(),
                        Ids.now());
                insert(h, player, next, texts.get(i));
                kept.add(next);
            }
        });
        return kept;
    }

    static void insert(Handle h, String player, KeptRound r, String text) {
        h.execute(
                "INSERT INTO played_round VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                r.id(),
                player,
                r.day().toString(),
                r.course(),
                r.tees(),
                r.holes(),
                boxed(r.score()),
                r.tier(),
                r.lesson() ? 1 : 0,
                text,
                r.at().toEpochMilli());
    }

    private static @Nullable Integer boxed(OptionalInt value) {
        return value.isPresent() ? value.getAsInt() : null;
    }

    @Override
    public void changeRound(String player, KeptRound round, String text) {
        jdbi.useTransaction(h -> {
            if (h.execute("DELETE FROM played_round WHERE player = ? AND id = ?", player, round.id()) == 0) {
                throw noRound(round.id());
            }
            insert(h, player, round, text);
        });
    }

    @Override
    public void eraseRound(String player, String round) {
        jdbi.useTransaction(h -> {
            if (h.execute("DELETE FROM played_round WHERE player = ? AND id = ?", player, round) == 0) {
                throw noRound(round);
            }
        });
    }

    @Override
    public List<KeptLesson> listLessons(String player) {
        return jdbi.withHandle(h -> h.createQuery("SELECT id, day, notes, agreed, homework, due, done, added"
                        + " FROM lesson WHERE player = ? ORDER BY day, added, id")
                .bind(0, player)
                .map((r, c) -> new KeptLesson(
                        r.getString(1),
                        day(r, 2),
                        r.getString(3),
                        r.getString(4),
                        r.getString(5),
                        Optional.of(r.getString(6)).filter(d -> !d.isEmpty()).map(LocalDate::parse),
                        r.getInt(7) == 1,
                        Instant.ofEpochMilli(r.getLong(8))))
                .list());
    }

    @Override
    public KeptLesson addLesson(String player, KeptLesson l) {
        KeptLesson kept =
                new KeptLesson(Ids.fresh(), l.day(), l.notes(), l.agreed(), l.homework(), l.due(), l.done(), Ids.now());
        jdbi.useTransaction(h -> insert(h, player, kept));
        return kept;
    }

    static void insert(Handle h, String player, KeptLesson l) {
        h.execute(
                "INSERT INTO lesson VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                l.id(),
                player,
                l.day().toString(),
                l.notes(),
                l.agreed(),
                l.homework(),
                l.due().map(LocalDate::toString).orElse(""),
                l.done() ? 1 : 0,
                l.at().toEpochMilli());
    }

    @Override
    public void changeLesson(String player, KeptLesson lesson) {
        jdbi.useTransaction(h -> {
            if (h.execute("DELETE FROM lesson WHERE player = ? AND id = ?", player, lesson.id()) == 0) {
                throw new UserFault("There is no lesson " + lesson.id()
                        + " of this player; \"loopwright lesson list\" shows what is kept.");
            }
            insert(h, player, lesson);
        });
    }

    @Override
    public Map<LocalDate, String> listBreaks(String player) {
        Map<LocalDate, String> out = new TreeMap<>();
        jdbi.useHandle(h -> SqlStore.pairs(h, "SELECT day, reason FROM dated_break WHERE player = ?", player)
                .forEach((day, reason) -> out.put(LocalDate.parse(day), reason)));
        return out;
    }

    @Override
    public void setBreaks(String player, Map<LocalDate, String> breaks) {
        jdbi.useTransaction(h -> {
            h.execute("DELETE FROM dated_break WHERE player = ?", player);
            breaks.forEach((day, reason) -> insertBreak(h, player, day, reason));
        });
    }

    static void insertBreak(Handle h, String player, LocalDate day, String reason) {
        h.execute("INSERT INTO dated_break VALUES (?, ?, ?)", player, day.toString(), reason);
    }

    @Override
    public List<KeptForecast> listForecasts(String player) {
        return jdbi.withHandle(h -> h.createQuery("SELECT id, day, course, tees, holes, target, score_mean, score_sd,"
                        + " target_chance, engine, added FROM forecast WHERE player = ? ORDER BY day, added, id")
                .bind(0, player)
                .map((r, c) -> new KeptForecast(
                        r.getString(1),
                        day(r, 2),
                        r.getString(3),
                        r.getString(4),
                        r.getInt(5),
                        r.getInt(6),
                        r.getDouble(7),
                        r.getDouble(8),
                        r.getDouble(9),
                        r.getString(10),
                        Instant.ofEpochMilli(r.getLong(11))))
                .list());
    }

    @Override
    public KeptForecast addForecast(String player, KeptForecast f) {
        KeptForecast kept = new KeptForecast(
                Ids.fresh(),
                f.day(),
                f.course(),
                f.tees(),
                f.holes(),
                f.target(),
                f.mean(),
                f.sd(),
                f.chance(),
                f.engine(),
                Ids.now());
        jdbi.useTransaction(h -> insert(h, player, kept));
        return kept;
    }

    static void insert(Handle h, String player, KeptForecast f) {
        h.execute(
                "INSERT INTO forecast VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                f.id(),
                player,
                f.day().toString(),
                f.course(),
                f.tees(),
                f.holes(),
                f.target(),
                f.mean(),
                f.sd(),
                f.chance(),
                f.engine(),
                f.at().toEpochMilli());
    }

    @Override
    public List<KeptDrill> listDrills(String player) {
        return jdbi.withHandle(h -> h.createQuery("SELECT id, day, drill, score, minutes, note, added FROM drill"
                        + " WHERE player = ? ORDER BY day, added, id")
                .bind(0, player)
                .map((r, c) -> new KeptDrill(
                        r.getString(1),
                        day(r, 2),
                        r.getString(3),
                        r.getInt(4),
                        r.getInt(5),
                        r.getString(6),
                        Instant.ofEpochMilli(r.getLong(7))))
                .list());
    }

    @Override
    public KeptDrill addDrill(String player, KeptDrill d) {
        KeptDrill kept = new KeptDrill(Ids.fresh(), d.day(), d.drill(), d.score(), d.minutes(), d.note(), Ids.now());
        jdbi.useTransaction(h -> insert(h, player, kept));
        return kept;
    }

    static void insert(Handle h, String player, KeptDrill d) {
        h.execute(
                "INSERT INTO drill VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                d.id(),
                player,
                d.day().toString(),
                d.drill(),
                d.score(),
                d.minutes(),
                d.note(),
                d.at().toEpochMilli());
    }
}
