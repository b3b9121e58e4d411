package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import loopwright.action.BenchStore;
import loopwright.action.FitPlayer;
import loopwright.action.InterviewAnswers;
import loopwright.action.KeepPlayer;
import loopwright.action.KeptList;
import loopwright.action.PuttFitting;
import loopwright.action.Shelf;
import loopwright.action.Workroom;
import loopwright.adapter.chart.ChartedPatterns;
import loopwright.adapter.store.Database;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.adapter.table.JsonResultFile;
import loopwright.adapter.table.PuttCsv;
import loopwright.adapter.table.ShotCsv;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A player of the store who changed his clubs: what he hit before counts little once the break is kept. */
class PlayerBreakIT {
    private static final InterviewAnswers ANSWERS = new InterviewAnswers(Map.of("name", "A", "level", "90"));

    /** Forty 7-irons of 120 m with the old clubs, then twenty of 145 m with the new ones. */
    private static String shots() {
        StringBuilder out = new StringBuilder("date,club,carry_m,side_m\n");
        for (int i = 0; i < 60; i++) {
            boolean old = i < 40;
            out.append(old ? "2026-03-01" : "2026-04-15")
                    .append(",7-iron,")
                    .append((old ? 120 : 145) + 4 * Math.sin(i))
                    .append(',')
                    .append(5 * Math.cos(3 * i))
                    .append('\n');
        }
        return out.toString();
    }

    @Test
    void oldShotsCountLittleBehindABreak(@TempDir Path folder) {
        try (BenchStore store = Database.open(folder, Optional.empty())) {
            Workroom room = StoreVerbs.room(store);
            JsonPlayerFiles players = new JsonPlayerFiles();
            ChartedPatterns pictures = new ChartedPatterns();
            KeepPlayer keep = new KeepPlayer(
                    room,
                    players,
                    new FitPlayer(new ShotCsv(), players, new JsonResultFile(), pictures),
                    new PuttFitting(new PuttCsv(), players),
                    pictures);
            Shelf.Document player = keep.add(ANSWERS);
            Shelf.Document mixed =
                    keep.addList(player.id(), player.version(), KeptList.Kind.SHOTS, "range.csv", shots());
            store.records().setBreaks(player.id(), Map.of(LocalDate.of(2026, 4, 1), "new irons"));
            Shelf.Document after = keep.refit(player.id(), "break").orElseThrow();
            double before = sevenIron(room, mixed);
            double now = sevenIron(room, after);
            // a fifth of forty old balls against twenty new ones: two thirds of the way or more
            assertThat(now - before).isGreaterThan(4);
            assertThat(now).isGreaterThan(134);
        }
    }

    private static double sevenIron(Workroom room, Shelf.Document version) {
        return room.player(version.id(), version.version()).player().swings().stream()
                .filter(s -> s.club().name().equals("7-iron") && s.isFull())
                .findFirst()
                .orElseThrow()
                .pattern()
                .carryMetres();
    }
}
