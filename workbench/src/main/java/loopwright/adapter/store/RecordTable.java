package loopwright.adapter.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.action.KeptDrill;
import loopwright.action.KeptForecast;
import loopwright.action.KeptLesson;
import loopwright.action.KeptRound;
import org.jdbi.v3.core.Handle;

/** The tables of a player's records as they are carried: one CSV file each, its columns those of the table without the player. */
enum RecordTable {
    INTAKE(2, "SELECT item, answer FROM intake WHERE player = ? ORDER BY item") {
        @Override
        void insert(Handle h, String player, List<String> row, String body) {
            SqlRecords.insertIntake(h, player, row.get(0), row.get(1));
        }
    },
    ROUNDS(
            9,
            "SELECT id, day, course, tees, holes, score, tier, lesson, added FROM played_round WHERE player = ? ORDER"
                    + " BY id") {
        @Override
        void insert(Handle h, String player, List<String> row, String body) {
            OptionalInt score =
                    row.get(5).isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(row.get(5)));
            SqlRecords.insert(
                    h,
                    player,
                    new KeptRound(
                            row.get(0),
                            LocalDate.parse(row.get(1)),
                            row.get(2),
                            row.get(3),
                            Integer.parseInt(row.get(4)),
                            score,
                            row.get(6),
                            row.get(7).equals("1"),
                            time(row.get(8))),
                    body);
        }
    },
    LESSONS(8, "SELECT id, day, notes, agreed, homework, due, done, added FROM lesson WHERE player = ? ORDER BY id") {
        @Override
        void insert(Handle h, String player, List<String> row, String body) {
            SqlRecords.insert(
                    h,
                    player,
                    new KeptLesson(
                            row.get(0),
                            LocalDate.parse(row.get(1)),
                            row.get(2),
                            row.get(3),
                            row.get(4),
                            Optional.of(row.get(5)).filter(d -> !d.isEmpty()).map(LocalDate::parse),
                            row.get(6).equals("1"),
                            time(row.get(7))));
        }
    },
    BREAKS(2, "SELECT day, reason FROM dated_break WHERE player = ? ORDER BY day") {
        @Override
        void insert(Handle h, String player, List<String> row, String body) {
            SqlRecords.insertBreak(h, player, LocalDate.parse(row.get(0)), row.get(1));
        }
    },
    FORECASTS(
            11,
            "SELECT id, day, course, tees, holes, target, score_mean, score_sd, target_chance, engine, added"
                    + " FROM forecast WHERE player = ? ORDER BY id") {
        @Override
        void insert(Handle h, String player, List<String> row, String body) {
            SqlRecords.insert(
                    h,
                    player,
                    new KeptForecast(
                            row.get(0),
                            LocalDate.parse(row.get(1)),
                            row.get(2),
                            row.get(3),
                            Integer.parseInt(row.get(4)),
                            Integer.parseInt(row.get(5)),
                            Double.parseDouble(row.get(6)),
                            Double.parseDouble(row.get(7)),
                            Double.parseDouble(row.get(8)),
                            row.get(9),
                            time(row.get(10))));
        }
    },
    DRILLS(7, "SELECT id, day, drill, score, minutes, note, added FROM drill WHERE player = ? ORDER BY id") {
        @Override
        void insert(Handle h, String player, List<String> row, String body) {
            SqlRecords.insert(
                    h,
                    player,
                    new KeptDrill(
                            row.get(0),
                            LocalDate.parse(row.get(1)),
                            row.get(2),
                            Integer.parseInt(row.get(3)),
                            Integer.parseInt(row.get(4)),
                            row.get(5),
                            time(row.get(6))));
        }
    };

    private final int columns;
    private final String query;

    RecordTable(int columns, String query) {
        this.columns = columns;
        this.query = query;
    }

    /** Puts a row as it was carried into its table; {@code body} is the text of a round. */
    abstract void insert(Handle h, String player, List<String> row, String body);

    int columns() {
        return columns;
    }

    String file() {
        return name().toLowerCase(Locale.ROOT) + ".csv";
    }

    List<List<String>> rows(Handle h, String player) {
        return h.createQuery(query)
                .bind(0, player)
                .map((r, c) -> {
                    String[] cells = new String[columns];
                    for (int i = 0; i < columns; i++) {
                        Object cell = r.getObject(i + 1);
                        cells[i] = cell == null ? "" : cell.toString();
                    }
                    return List.of(cells);
                })
                .list();
    }

    private static Instant time(String millis) {
        return Instant.ofEpochMilli(Long.parseLong(millis));
    }
}
