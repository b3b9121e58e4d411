package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.SplittableRandom;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.geo.LatLon;
import loopwright.geo.Line;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.scoring.BenchmarkMaker;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A round looked back on and the page of its player, in a real browser, on three holes of the demo course. */
class BenchReviewIT {
    private static final String PLAYER = "invented player";
    private static final int OTHER_ROUNDS = 6;

    @TempDir
    private static Path folder;

    private static @Nullable OpenBench bench;

    @BeforeAll
    static void keepRoundsAndOpen() throws Exception {
        Course demo = new OsmCourseFiles()
                .read(Path.of("..", "demo", "course.geojson"))
                .course();
        Course three = demo.withHoles(demo.holes().subList(0, 3));
        Path file = folder.resolve("three.geojson");
        new OsmCourseFiles().write(three, file);
        typed("store", "import", "../demo/player.json");
        typed("store", "import", file.toString());
        Path rounds = Files.writeString(folder.resolve("rounds.csv"), rounds(three));
        typed("round", "import", rounds.toString(), "--player", PLAYER, "--course", file.toString());
        typed("player", "file", PLAYER, "--goal", "85", "--plays", "2099-06-14");
        typed(
                "lesson",
                "add",
                "--player",
                PLAYER,
                "--notes",
                "hurries from sand",
                "--homework",
                "sand, ten a day",
                "--due",
                "2099-06-12");
        bench = OpenBench.withBrowser(folder.resolve("store"));
    }

    @AfterAll
    static void close() {
        if (bench != null) {
            bench.close();
        }
    }

    private static Browser browser() {
        return Objects.requireNonNull(bench).browser();
    }

    private static String typed(String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(List.of("--data", folder.resolve("store").toString()));
        Typed run = Typed.run(all.toArray(String[]::new));
        assertThat(run.exitCode()).as(run.err()).isZero();
        return run.out();
    }

    /** Rounds of strokes, invented; the last one has places and aims. */
    private static String rounds(Course course) {
        SplittableRandom random = new SplittableRandom(1);
        StringBuilder out = new StringBuilder("date,course,tees,hole,club,lie,to_hole_m,lat,lon,aim_lat,aim_lon\n");
        for (int round = 1; round <= OTHER_ROUNDS + 1; round++) {
            for (Hole hole : course.holes()) {
                strokes(out, course, hole, "2026-05-0" + round, round > OTHER_ROUNDS, random);
            }
        }
        return out.toString();
    }

    private static void strokes(
            StringBuilder out, Course course, Hole hole, String day, boolean places, SplittableRandom random) {
        Place tee = course.findTeeSet("middle")
                .orElseThrow()
                .getPlace(hole.number())
                .place();
        Line line = hole.lineFrom(tee);
        double length = line.lengthMetres();
        List<Double> along = new ArrayList<>(List.of(0.0));
        while (length - along.get(along.size() - 1) > 170) {
            along.add(along.get(along.size() - 1) + 170 + random.nextInt(20));
        }
        along.add(length - 12 - random.nextInt(10));
        along.add(length - 2 - random.nextInt(4));
        along.add(length - 0.5);
        for (double at : along) {
            Place ball = line.placeAt(Math.min(at, length - 0.5));
            Surface under = at == 0 ? Surface.TEE : new CourseMap(course, hole).surfaceAt(ball);
            Surface lie = under.isPlayable() ? under : Surface.ROUGH;
            double left = ball.distanceTo(hole.holeLocation());
            Place aim = line.placeAt(Math.min(length, at + 185));
            out.append(String.format(
                    Locale.ROOT,
                    "%s,%s,middle,%d,%s,%s,%.1f,%s,%s%n",
                    day,
                    course.name(),
                    hole.number(),
                    club(lie, left),
                    BenchmarkMaker.lieOf(lie).name().toLowerCase(Locale.ROOT),
                    left,
                    places ? degrees(course, ball) : ",",
                    places && lie != Surface.GREEN ? degrees(course, aim) : ","));
        }
    }

    private static String club(Surface lie, double left) {
        return lie == Surface.GREEN ? "putter" : left > 150 ? "driver" : left > 60 ? "8-iron" : "pitch";
    }

    private static String degrees(Course course, Place place) {
        LatLon p = new LocalFrame(course.origin()).toLatLon(place);
        return String.format(Locale.ROOT, "%.7f,%.7f", p.latitudeDegrees(), p.longitudeDegrees());
    }

    private static void openNewestReview() {
        browser().go("/rounds");
        browser().run("document.querySelector(\"a[href^='/rounds/review']\").click()");
        browser().await("#opening");
    }

    private static void look(String name) {
        browser().assertAccessible();
        browser().screenshots(name);
        browser().assertNoForeignRequest();
    }

    @Test
    void theReviewOpensWithThreeSentencesAndDividesWhatWasLostAsTheCommandLineDoes() throws Exception {
        openNewestReview();
        Path file = folder.resolve("report.json");
        String words = typed("report", "--player", PLAYER, "--causes", "--no-solve", "--json", file.toString());
        JsonNode report = new ObjectMapper().readTree(file.toFile());
        assertThat(browser().all("#opening li").stream().map(li -> li.getText()).toList())
                .isEqualTo(words.lines().skip(1).limit(3).toList());
        for (String part : List.of("decision", "execution", "luck")) {
            double sum = 0;
            for (JsonNode stroke : report.get("causes")) {
                sum += stroke.get(part).asDouble();
            }
            assertThat(browser().text("[data-part='" + part + "']"))
                    .isEqualTo(String.format(Locale.ROOT, "%+.2f", sum));
        }
        assertThat(browser().text("main"))
                .contains("Strokes gained", "Ordinary or unusual", "What stands between", "Cannot separate these yet")
                .contains("9 in 10 of the " + OTHER_ROUNDS + " other rounds");
        assertThat(browser().all("svg.strip")).hasSize(3);
        assertThat(browser().all(".gain-bar .whisker")).isNotEmpty();
        look("review-whole");
    }

    @Test
    void thePageOfThePlayerSaysWhereHeStands() {
        openNewestReview();
        browser().go("/rounds").await("h1");
        assertThat(browser().text("main"))
                .contains(
                        "To reach: 85",
                        "Next round: 2099-06-14",
                        "Not yet calibrated",
                        "hurries from sand",
                        "To do: sand, ten a day")
                .contains("What stands between", "three-putts", "Cannot separate these yet");
        look("player-records");
    }
}
