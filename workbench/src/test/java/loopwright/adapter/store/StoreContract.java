package loopwright.adapter.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import loopwright.action.BenchStore;
import loopwright.action.BenchStore.Selection;
import loopwright.action.KeptList;
import loopwright.action.KeptPlan;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every kind of store promises. */
abstract class StoreContract {
    /** Text that has to be quoted in SQL, CSV, HTML and Java. */
    private static final String AWKWARD = "O'Neill; \"x\", <script>alert(1)</script> \u00e4\u4e2d\n--";

    abstract BenchStore store();

    @BeforeEach
    void empty() {
        store().eraseEverything();
    }

    @Test
    void keepsEveryVersionOfADocument() {
        Shelf courses = store().courses();
        Shelf.Document one = courses.add("Heath", "text 1", "drawn");
        Shelf.Document two = courses.change(one.id(), 1, "Heath", AWKWARD, "mended");
        assertThat(courses.get(one.id())).isEqualTo(two);
        assertThat(courses.get(one.id(), 1)).isEqualTo(one);
        assertThat(courses.listVersions(one.id())).containsExactly(two.entry(), one.entry());
        assertThat(courses.list()).containsExactly(two.entry());
        assertThat(store().players().list()).isEmpty();
    }

    @Test
    void refusesAChangeOfAnOldVersion() {
        Shelf players = store().players();
        Shelf.Document one = players.add("A", "1", "");
        players.change(one.id(), 1, "A", "2", "");
        assertThatThrownBy(() -> players.change(one.id(), 1, "A", "other", ""))
                .isInstanceOf(Shelf.Outdated.class)
                .hasMessageContaining("version 1");
        assertThat(players.get(one.id()).text()).isEqualTo("2");
    }

    @Test
    void namesWhatIsNotThere() {
        assertThatThrownBy(() -> store().courses().get("nowhere")).isInstanceOf(UserFault.class);
        Shelf.Document player = store().players().add("A", "1", "");
        assertThatThrownBy(() -> store().courses().get(player.id())).isInstanceOf(UserFault.class);
        assertThatThrownBy(() -> store().players().get(player.id(), 2)).isInstanceOf(UserFault.class);
    }

    @Test
    void losesNoUpdateOfTwentyWriters() throws Exception {
        String id = store().players().add("A", "0", "").id();
        ExecutorService writers = Executors.newFixedThreadPool(20);
        List<Callable<Integer>> work = new ArrayList<>();
        for (int w = 0; w < 20; w++) {
            work.add(() -> addFive(id));
        }
        int tries = 0;
        for (Future<Integer> each : writers.invokeAll(work)) {
            tries += each.get();
        }
        writers.shutdown();
        assertThat(store().players().get(id).text()).isEqualTo("100");
        assertThat(store().players().listVersions(id)).hasSize(101);
        assertThat(tries)
                .as("each sum was added exactly once, however often it was tried")
                .isGreaterThanOrEqualTo(100);
    }

    /** Reads, adds one, writes; again from the start whenever another writer came between. */
    private int addFive(String id) {
        int tries = 0;
        for (int done = 0; done < 5; tries++) {
            Shelf.Document seen = store().players().get(id);
            String next = Integer.toString(Integer.parseInt(seen.text()) + 1);
            try {
                store().players().change(id, seen.version(), "A", next, "");
                done++;
            } catch (Shelf.Outdated e) {
                assertThat(e).hasMessageContaining(id);
            }
        }
        return tries;
    }

    @Test
    void readsAnExportBackToEquality() {
        fill();
        byte[] all = export(Selection.ALL);
        store().eraseEverything();
        assertThat(store().players().list()).isEmpty();
        store().importZip(new ByteArrayInputStream(all), "all.zip", false);
        assertThat(export(Selection.ALL)).isEqualTo(all);
    }

    @Test
    void exportsOnePlayerOrCourseAlone() {
        String[] ids = fill();
        byte[] player = export(Selection.player(ids[0]));
        byte[] course = export(Selection.course(ids[1]));
        store().eraseEverything();
        store().importZip(new ByteArrayInputStream(player), "player.zip", false);
        assertThat(store().courses().list()).isEmpty();
        assertThat(store().listAnswers(ids[0])).containsEntry("name", AWKWARD);
        assertThat(store().listLists(ids[0]).get(0).text()).isEqualTo("club,carry_m\n7-iron,130\n");
        store().importZip(new ByteArrayInputStream(course), "course.zip", false);
        assertThat(store().listHoleLocations(ids[1], "2026-05-31")).isEqualTo(Map.of(7, "12,right 4"));
        assertThat(export(Selection.player(ids[0]))).isEqualTo(player);
    }

    @Test
    void importChangesNothingWhereSomethingIsThereAlready() {
        String[] ids = fill();
        byte[] all = export(Selection.ALL);
        store().players().change(ids[0], 1, "A", "later", "");
        byte[] before = export(Selection.ALL);
        assertThatThrownBy(() -> store().importZip(new ByteArrayInputStream(all), "all.zip", false))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("--replace");
        assertThat(export(Selection.ALL)).isEqualTo(before);
        store().importZip(new ByteArrayInputStream(all), "all.zip", true);
        assertThat(store().players().get(ids[0]).version()).isEqualTo(1);
    }

    @Test
    void restoreMakesTheStoreWhatTheBackupHolds() {
        fill();
        byte[] all = export(Selection.ALL);
        store().players().add("B", "new", "");
        store().restore(new ByteArrayInputStream(all), "all.zip");
        assertThat(export(Selection.ALL)).isEqualTo(all);
    }

    @Test
    void refusesZipsThatAreNotItsOwn() throws Exception {
        fill();
        byte[] before = export(Selection.ALL);
        for (String name : List.of("../../etc/passwd", "/tmp/x", "players/../x/v1.json", "note.txt")) {
            byte[] zip = zip(name, "x");
            assertThatThrownBy(() -> store().importZip(new ByteArrayInputStream(zip), "bad.zip", true))
                    .isInstanceOf(UserFault.class)
                    .hasMessageContaining(name);
        }
        byte[] whole = export(Selection.ALL);
        for (int tenth = 1; tenth < 5; tenth++) {
            byte[] cut = java.util.Arrays.copyOf(whole, whole.length * tenth / 10);
            assertThatThrownBy(() -> store().restore(new ByteArrayInputStream(cut), "cut.zip"))
                    .isInstanceOf(UserFault.class)
                    .hasMessageContaining("cut.zip");
        }
        assertThatThrownBy(() ->
                        store().restore(new ByteArrayInputStream("no zip".getBytes(StandardCharsets.UTF_8)), "text"))
                .isInstanceOf(UserFault.class);
        assertThat(export(Selection.ALL)).isEqualTo(before);
    }

    @Test
    void eraseTakesEverythingThatHangsOnIt() {
        String[] ids = fill();
        store().players().erase(ids[0]);
        assertThat(store().listAnswers(ids[0])).isEmpty();
        assertThat(store().listLists(ids[0])).isEmpty();
        assertThat(store().listPlans()).isEmpty();
        assertThat(store().courses().list()).hasSize(1);
        assertThat(new String(export(Selection.ALL), StandardCharsets.ISO_8859_1))
                .doesNotContain(ids[0]);
    }

    private String[] fill() {
        BenchStore s = store();
        String player =
                s.players().add(AWKWARD, "{\"a\": \"" + AWKWARD + "\"}", "").id();
        String course = s.courses().add("Heath", "{}", "drawn").id();
        s.courses().change(course, 1, "Heath", "{\"v\":2}", "mended");
        s.setAnswers(player, Map.of("name", AWKWARD, "level", "92"));
        s.addList(player, KeptList.Kind.SHOTS, "range.csv", "mat", "club,carry_m\n7-iron,130\n");
        s.setHoleLocations(course, "2026-05-31", Map.of(7, "12,right 4"));
        s.setPreference("units", "metric");
        Instant at = Instant.ofEpochMilli(1_790_000_000_123L);
        s.keepPlan(
                new KeptPlan(player, 1, course, 2, "tees=middle&target=79", 1, "0.1.0", 80.25, 3.1, 1 / 3.0, 81.5, at));
        return new String[] {player, course};
    }

    private byte[] export(Selection what) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        store().export(what, out);
        return out.toByteArray();
    }

    private static byte[] zip(String name, String text) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return out.toByteArray();
    }
}
