package loopwright.adapter.store;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import loopwright.action.BenchStore;
import loopwright.action.KeptList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two processes write to one store and are killed at random moments: nothing that was acknowledged is lost, nothing is
 * half there, and the store opens every time.
 */
class StoreKilledIT {
    private static final long SEED = 20260531;
    /** Each kill ends two processes, so this many rounds are twice as many kills. */
    private static final int SHORT = 2;

    private static final int LONG = 100;

    @Test
    void embedded(@TempDir Path folder) throws Exception {
        killed(folder, Optional.empty(), SHORT);
    }

    @Test
    void postgres(@TempDir Path folder) throws Exception {
        try (EmbeddedPostgres server = EmbeddedPostgres.start()) {
            killed(folder, Optional.of(server.getJdbcUrl("postgres", "postgres")), SHORT);
        }
    }

    @Test
    @Tag("long")
    void embeddedAtTwoHundredMoments(@TempDir Path folder, TestReporter reporter) throws Exception {
        reporter.publishEntry("acknowledged writes", "" + killed(folder, Optional.empty(), LONG));
    }

    @Test
    @Tag("long")
    void postgresAtTwoHundredMoments(@TempDir Path folder, TestReporter reporter) throws Exception {
        try (EmbeddedPostgres server = EmbeddedPostgres.start()) {
            int acknowledged = killed(folder, Optional.of(server.getJdbcUrl("postgres", "postgres")), LONG);
            reporter.publishEntry("acknowledged writes", "" + acknowledged);
        }
    }

    /** Returns how many writes were acknowledged before the kills. */
    private static int killed(Path folder, Optional<String> server, int rounds) throws Exception {
        String course;
        try (BenchStore store = Database.open(folder, server)) {
            course = store.courses().add("Heath", StoreWriter.text(1), "").id();
            store.players().add("A", "{}", "");
        }
        SplittableRandom random = new SplittableRandom(SEED);
        int acknowledged = 0;
        for (int round = 0; round < rounds; round++) {
            Path said = Files.createTempFile(folder, "said", ".txt");
            Path saidToo = Files.createTempFile(folder, "said", ".txt");
            Process one = start(folder, course, server, said);
            Process two = start(folder, course, server, saidToo);
            while (Files.size(said) == 0 && one.isAlive()) {
                Thread.sleep(5);
            }
            Thread.sleep(random.nextInt(250));
            assertThat(one.isAlive()).as("the writer writes until it is killed").isTrue();
            one.destroyForcibly();
            two.destroyForcibly();
            one.waitFor();
            two.waitFor();
            try (BenchStore store = Database.open(folder, server)) {
                acknowledged += check(store, course, said) + check(store, course, saidToo);
            }
        }
        assertThat(acknowledged)
                .as("writes that were acknowledged before a kill, seed %d", SEED)
                .isPositive();
        return acknowledged;
    }

    private static Process start(Path folder, String course, Optional<String> server, Path said) throws IOException {
        return new ProcessBuilder(StoreWriter.command(folder, course, server))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(said.toFile())
                .start();
    }

    /** Everything a killed process said is there and whole; returns how many writes that were. */
    private static int check(BenchStore store, String course, Path said) throws IOException {
        String player = store.players().list().get(0).id();
        Map<String, KeptList> lists = store.listLists(player).stream().collect(Collectors.toMap(KeptList::id, l -> l));
        int lines = 0;
        for (String line : Files.readAllLines(said)) {
            String[] parts = line.split(" ", -1);
            if (parts.length == 3 && !parts[2].isEmpty()) {
                int version = Integer.parseInt(parts[0]);
                assertThat(store.courses().get(course, version).text()).isEqualTo(StoreWriter.text(version));
                assertThat(lists).containsKey(parts[1]);
                lines++;
            }
        }
        lists.values().forEach(l -> assertThat(l.text()).hasSize(StoreWriter.CHARACTERS));
        int newest = store.courses().get(course).version();
        assertThat(store.courses().listVersions(course)).hasSize(newest);
        Map<String, String> answers = store.listAnswers(player);
        assertThat(answers.get("a")).isEqualTo(answers.get("b"));
        return lines;
    }
}
