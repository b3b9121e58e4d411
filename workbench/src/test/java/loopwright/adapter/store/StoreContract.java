package loopwright.adapter.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import loopwright.action.BenchStore;
import loopwright.action.BenchStore.Selection;
import loopwright.action.CourseImage;
import loopwright.action.CourseImage.Corners;
import loopwright.action.KeptDrill;
import loopwright.action.KeptForecast;
import loopwright.action.KeptImage;
import loopwright.action.KeptLesson;
import loopwright.action.KeptList;
import loopwright.action.KeptPlan;
import loopwright.action.KeptRound;
import loopwright.action.PlayerRecords;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.geo.LatLon;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every kind of store promises. */
abstract class StoreContract {
    /** Text that has to be quoted in SQL, CSV, HTML and Java. */
    private static final String AWKWARD = "O'Neill; \"x\", <script>alert(1)</script> \u00e4\u4e2d\n--";

    private static final LocalDate DAY = LocalDate.of(2026, 5, 31);

    /** As every PNG begins; then bytes that are no text. */
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 26, 10, 0, (byte) 0xFF, (byte) 0xC3, 0};

    private static final Corners CORNERS =
            Corners.turned(new LatLon(50.1, 8), new LatLon(50.1 + 1 / 300.0, 8.1), new LatLon(50 + 1 / 300.0, 8.1));

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
        assertThat(store().records().listIntake(ids[0])).isEmpty();
        assertThat(store().records().listRoundTexts(ids[0])).isEmpty();
        assertThat(store().records().listLessons(ids[0])).isEmpty();
        assertThat(store().records().listBreaks(ids[0])).isEmpty();
        assertThat(store().records().listForecasts(ids[0])).isEmpty();
        assertThat(store().records().listDrills(ids[0])).isEmpty();
        assertThat(store().courses().list()).hasSize(1);
        assertThat(new String(export(Selection.ALL), StandardCharsets.ISO_8859_1))
                .doesNotContain(ids[0]);
    }

    @Test
    void keepsRoundsLessonsBreaksForecastsAndThePlayerFile() {
        String[] ids = fill();
        PlayerRecords records = store().records();
        assertThat(records.listIntake(ids[0])).isEqualTo(Map.of("goal", "79", "limits", AWKWARD));
        KeptRound round = records.listRounds(ids[0]).get(0);
        assertThat(round.day()).isEqualTo(DAY.minusDays(1));
        assertThat(round.score()).isEmpty();
        assertThat(records.getRoundText(ids[0], round.id())).isEqualTo("hole,score\n1,x\n");
        assertThat(records.listRoundTexts(ids[0])).hasSize(2).containsEntry(round.id(), "hole,score\n1,x\n");
        KeptLesson lesson = records.listLessons(ids[0]).get(0);
        records.changeLesson(ids[0], lesson.whenDone());
        assertThat(records.listLessons(ids[0])).containsExactly(lesson.whenDone());
        assertThat(records.listBreaks(ids[0])).isEqualTo(Map.of(DAY, "new driver"));
        assertThat(records.listForecasts(ids[0]).get(0).chance()).isEqualTo(1 / 3.0);
        KeptDrill drill = records.listDrills(ids[0]).get(0);
        assertThat(drill.score()).isEqualTo(7);
        assertThat(drill.note()).isEqualTo(AWKWARD);
        assertThat(store().localRules(ids[1], "2026-05-31")).isEqualTo("preferred lies\ngreen 7 is temporary");
        records.eraseRound(ids[0], round.id());
        assertThat(records.listRounds(ids[0])).hasSize(1);
        assertThatThrownBy(() -> records.getRoundText(ids[0], round.id()))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining(round.id());
    }

    @Test
    void keepsAllRoundsOrNone() {
        String[] ids = fill();
        PlayerRecords records = store().records();
        KeptRound good = records.listRounds(ids[0]).get(0);
        assertThatThrownBy(() -> records.addRounds(ids[0], List.of(good, good), List.of("one text")))
                .isInstanceOf(RuntimeException.class);
        assertThat(records.listRounds(ids[0])).hasSize(2);
    }

    @Test
    void readsTheFormatBeforeRoundsWereKept() throws Exception {
        byte[] zip = zip(
                "format.csv", "loopwright store,1\n",
                "players/abc/versions.csv", "1,A,,1790000000123\n",
                "players/abc/v1.json", "{}",
                "end.csv", "complete\n");
        store().importZip(new ByteArrayInputStream(zip), "old.zip", false);
        assertThat(store().players().get("abc").name()).isEqualTo("A");
        assertThat(store().records().listRounds("abc")).isEmpty();
    }

    @Test
    void keepsTheLastImagesUnderACourseAndErasesThemWithIt() {
        String course = fill()[1];
        CourseImage first = store().findImage(course).orElseThrow();
        assertThat(first.name()).isEqualTo(AWKWARD);
        assertThat(first.png()).isEqualTo(PNG);
        assertThat(first.corners()).isEqualTo(CORNERS);
        CourseImage other = new CourseImage("b.png", CORNERS, first.at(), PNG);
        store().addImage(course, other);
        assertThat(store().findImage(course).orElseThrow().name()).isEqualTo("b.png");
        assertThat(store().listImages(course))
                .containsExactly(
                        new KeptImage(2, true, "b.png", first.at(), PNG.length),
                        new KeptImage(1, false, AWKWARD, first.at(), PNG.length));
        store().showImage(course, 1);
        assertThat(store().findImage(course).orElseThrow().name()).isEqualTo(AWKWARD);
        assertThatThrownBy(() -> store().showImage(course, 7))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("no image 7");
        assertThat(store().findImage(course).orElseThrow().name()).isEqualTo(AWKWARD);
        store().showImage(course, 0);
        assertThat(store().findImage(course)).isEmpty();
        assertThat(store().listImages(course)).hasSize(2);
        store().eraseImage(course, 2);
        assertThat(store().listImages(course)).extracting(KeptImage::number).containsExactly(1);
        for (int i = 0; i < BenchStore.MOST_IMAGES; i++) {
            store().addImage(course, other);
        }
        assertThat(store().listImages(course)).extracting(KeptImage::number).containsExactly(6, 5, 4, 3, 2);
        store().courses().erase(course);
        assertThat(store().listImages(course)).isEmpty();
    }

    @Test
    void readsTheFormatBeforeSeveralImagesWereKept() throws Exception {
        byte[] zip = zip(
                "format.csv", "loopwright store,3\n",
                "courses/abc/versions.csv", "1,A,,1790000000123\n",
                "courses/abc/v1.geojson", "{}",
                "courses/abc/image.csv", "a.png,1790000000123,50.1,8,50.1,8.1,50,8\n",
                "courses/abc/image.png", new String(PNG, StandardCharsets.ISO_8859_1),
                "end.csv", "complete\n");
        store().importZip(new ByteArrayInputStream(zip), "old.zip", false);
        assertThat(store().findImage("abc").orElseThrow().png()).isEqualTo(PNG);
        assertThat(store().listImages("abc")).hasSize(1);
    }

    @Test
    void refusesAnImageThatIsNone() throws Exception {
        byte[] zip = zip(
                "format.csv", "loopwright store,3\n",
                "courses/abc/versions.csv", "1,A,,1790000000123\n",
                "courses/abc/v1.geojson", "{}",
                "courses/abc/image.csv", "a.png,1790000000123,50.1,8,50.1,8.1,50,8\n",
                "courses/abc/image.png", "<script>",
                "end.csv", "complete\n");
        assertThatThrownBy(() -> store().importZip(new ByteArrayInputStream(zip), "odd.zip", false))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("image.png");
        assertThat(store().courses().list()).isEmpty();
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
        s.setLocalRules(course, "2026-05-31", "preferred lies\ngreen 7 is temporary");
        records(player);
        s.setPreference("units", "metric");
        s.addImage(course, new CourseImage(AWKWARD, CORNERS, Instant.ofEpochMilli(1_790_000_000_456L), PNG));
        Instant at = Instant.ofEpochMilli(1_790_000_000_123L);
        s.keepPlan(
                new KeptPlan(player, 1, course, 2, "tees=middle&target=79", 1, "0.1.0", 80.25, 3.1, 1 / 3.0, 81.5, at));
        return new String[] {player, course};
    }

    private void records(String player) {
        PlayerRecords r = store().records();
        Instant any = Instant.EPOCH;
        r.setIntake(player, Map.of("goal", "79", "limits", AWKWARD));
        r.addRounds(
                player,
                List.of(
                        new KeptRound("", DAY, "Heath", "middle", 18, OptionalInt.of(92), "COUNTS", false, any),
                        new KeptRound("", DAY.minusDays(1), "", "", 1, OptionalInt.empty(), "SCORE", true, any)),
                List.of("hole,score\n1,5\n", "hole,score\n1,x\n"));
        r.addLesson(player, new KeptLesson("", DAY, AWKWARD, "club up", "100 putts", Optional.of(DAY), false, any));
        r.setBreaks(player, Map.of(DAY, "new driver"));
        r.addForecast(player, new KeptForecast("", DAY, "Heath", "middle", 18, 79, 84.5, 3.25, 1 / 3.0, "0.1.0", any));
        r.addDrill(player, new KeptDrill("", DAY, "circle-6", 7, 15, AWKWARD, any));
    }

    private byte[] export(Selection what) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        store().export(what, out);
        return out.toByteArray();
    }

    /** A zip of files: name and content in turn, every character of a content one byte. */
    private static byte[] zip(String... files) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (int i = 0; i < files.length; i += 2) {
                zip.putNextEntry(new ZipEntry(files[i]));
                zip.write(files[i + 1].getBytes(StandardCharsets.ISO_8859_1));
            }
        }
        return out.toByteArray();
    }
}
