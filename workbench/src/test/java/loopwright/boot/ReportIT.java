package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Course;
import loopwright.course.Hole;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports, forecasts and playing lessons on holes of the demo course, typed as a coach would. */
class ReportIT {
    private static final String PLAYER = "invented player";
    private static final double TELESCOPE = 1e-9; // sums of a few dozen numbers below 10

    @TempDir
    private static Path folder;

    private static final Course DEMO =
            new OsmCourseFiles().read(Path.of("..", "demo", "course.geojson")).course();
    /** What is solved for a report or a forecast is one hole; a lesson takes at least three. */
    private static final String SHORT = "one hole of the demo";

    private static final String LESSON = "three holes of the demo";

    private static List<Integer> pars = List.of();

    @BeforeAll
    static void keepPlayerCourseAndRounds() throws IOException {
        ok("store", "import", Path.of("..", "demo", "player.json").toString());
        Path file = keep(SHORT, DEMO.holes().subList(1, 2));
        keep(LESSON, DEMO.holes().subList(0, 3));
        pars = DEMO.holes().subList(0, 3).stream().map(Hole::par).toList();
        Path rounds = Files.writeString(folder.resolve("rounds.csv"), rounds());
        ok("round", "import", rounds.toString(), "--player", PLAYER, "--course", file.toString());
        ok("player", "file", PLAYER, "--goal", "80");
    }

    private static Path keep(String name, List<Hole> holes) throws IOException {
        Path file = folder.resolve(name + ".geojson");
        new OsmCourseFiles().write(DEMO.withHoles(holes), file);
        Files.writeString(file, Files.readString(file).replace(DEMO.name(), name));
        ok("store", "import", file.toString());
        return file;
    }

    /** Two rounds of strokes on the hole, invented. */
    private static String rounds() {
        StringBuilder out = new StringBuilder("date,course,tees,hole,club,lie,to_hole_yd,to_hole_ft,penalty\n");
        for (String day : List.of("2026-05-31", "2099-06-07")) {
            for (String stroke : List.of(
                    "driver,tee,360,,",
                    "7-iron,rough,150,,",
                    "pitch,fairway,20,,",
                    "putter,green,,9,",
                    "putter,green,,2,")) {
                out.append(day + "," + SHORT + ",middle,2," + stroke + "\n");
            }
        }
        return out.toString();
    }

    private static Typed typed(String keys, String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(List.of("--data", folder.resolve("store").toString()));
        return Typed.answering(keys, all.toArray(String[]::new));
    }

    private static String ok(String... args) {
        Typed run = typed("", args);
        assertThat(run.exitCode()).as(run.err()).isZero();
        return run.out();
    }

    private static String refused(String... args) {
        Typed run = typed("", args);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().strip()).hasLineCount(1);
        return run.err();
    }

    private static JsonNode json(String schema, String... args) throws IOException {
        Path json = folder.resolve("out.json");
        List<String> all = new ArrayList<>(List.of(args));
        all.addAll(List.of("--json", json.toString()));
        ok(all.toArray(String[]::new));
        Schema.assertFits(schema, json);
        return new ObjectMapper().readTree(json.toFile());
    }

    @Test
    void aReportOpensWithThreeSentencesAndItsColumnsAddUp() throws IOException {
        String page = ok("report", "--player", PLAYER);
        assertThat(page.lines().skip(1).limit(3))
                .satisfiesExactly(
                        l -> assertThat(l).startsWith("Done well: "),
                        l -> assertThat(l).startsWith("One decision: "),
                        l -> assertThat(l).startsWith("One practice item: "));
        assertThat(page).contains("Cannot separate these yet", "not yet calibrated", "a player of 80");
        Path pdf = folder.resolve("report.pdf");
        Path sheet = folder.resolve("page.pdf");
        JsonNode report = json(
                "report.schema.json",
                "report",
                "--player",
                PLAYER,
                "--no-solve",
                "--pdf",
                pdf.toString(),
                "--page",
                sheet.toString());
        assertThat(pdf).isNotEmptyFile();
        assertThat(sheet).isNotEmptyFile();
        for (String column : List.of("tour", "benchmark", "past")) {
            JsonNode review = report.get(column);
            double sum = 0;
            for (JsonNode row : review.get("rows")) {
                sum += row.get("gained").asDouble();
            }
            assertThat(sum).as(column).isCloseTo(review.get("total").asDouble(), within(TELESCOPE));
            assertThat(sum)
                    .isCloseTo(
                            review.get("start").asDouble()
                                    - review.get("end").asDouble()
                                    - review.get("strokes").asDouble(),
                            within(TELESCOPE));
        }
        assertThat(report.get("gap").get("separated").asBoolean()).isFalse();
        assertThat(report.get("gap").get("roundsNeeded").asInt()).isGreaterThanOrEqualTo(10);
    }

    @Test
    void aForecastIsKeptAndScoredOnceItsRoundIsPlayed() throws IOException {
        JsonNode made = json(
                "forecasts.schema.json",
                "forecast",
                "make",
                "--player",
                PLAYER,
                "--course",
                SHORT,
                "--target",
                "4",
                "--date",
                "2099-06-07");
        double chance = made.get("forecasts").get(0).get("chance").asDouble();
        assertThat(chance).isBetween(0.05, 0.95);
        assertThat(ok("forecast", "list", "--player", PLAYER)).contains("played: 5", "Brier score");
        assertThat(ok("today", "--on", "2099-06-01")).contains("Plays within ten days", "2099-06-07");
        assertThat(ok("forecast", "check", "--player", PLAYER)).contains("Modelled 1 round", "not yet calibrated");
        JsonNode listed = json("forecasts.schema.json", "forecast", "list", "--player", PLAYER);
        assertThat(listed.get("standing").get("outcomes").asInt()).isEqualTo(2);
        assertThat(listed.get("standing").get("brier").asDouble())
                .as("the round that was modelled after the fact is not scored")
                .isCloseTo(chance * chance, within(1e-12));
        assertThat(refused("forecast", "make", "--player", PLAYER, "--course", "nowhere", "--target", "4"))
                .contains("nowhere");
    }

    @Test
    void aPlayingLessonTellsDecisionFromStrike() throws IOException {
        StringBuilder keys = new StringBuilder();
        for (int par : pars) {
            keys.append(par == 3 ? "t\n7-iron\nr5\ng\ny\n" : "t\ndriver\nr5\nf\ny\n?\n150 l10\n7-iron\n0\ng\nn\n");
            keys.append("g12\ng2\nh\n");
        }
        Path csv = folder.resolve("lesson.csv");
        Typed lesson = typed(
                keys.toString(),
                "lesson",
                "play",
                "--player",
                PLAYER,
                "--course",
                LESSON,
                "--holes",
                "1-3",
                "--date",
                "2026-05-01",
                "--out",
                csv.toString());
        assertThat(lesson.err()).isEmpty();
        assertThat(lesson.out()).contains("yours: driver 5 yd right of the line", "struck as meant", "Kept 3 holes");
        assertThat(Files.readString(csv)).contains("aim_lat", "driver,tee");
        assertThat(ok("round", "list", "--player", PLAYER)).contains("2026-05-01", "a lesson", "written down: places");
        String id = json("rounds.schema.json", "round", "list", "--player", PLAYER)
                .get("rounds")
                .get(0)
                .get("id")
                .asText();
        JsonNode report =
                json("report.schema.json", "report", "--player", PLAYER, "--round", id, "--no-solve", "--causes");
        assertThat(report.get("causes"))
                .hasSize(pars.stream().mapToInt(par -> par == 3 ? 3 : 4).sum());
        assertThat(report.get("causes").get(0).get("knowledge").asText()).isEqualTo("NOTED");
        JsonNode learned = json("player-learn.schema.json", "player", "learn", PLAYER);
        assertThat(learned.get("swings").asInt()).isGreaterThanOrEqualTo(3);
        assertThat(refused("player", "learn", PLAYER, "--keep")).contains("20 are needed");
    }

    @Test
    void aLessonOfTwoHolesOrOfAScoreIsRefused() {
        assertThat(refused("lesson", "play", "--player", PLAYER, "--course", LESSON, "--holes", "1-2"))
                .contains("3 to 9");
        assertThat(refused("lesson", "play", "--player", PLAYER, "--course", LESSON, "--holes", "some"))
                .contains("4-9");
        assertThat(refused("lesson", "play", "--player", PLAYER, "--course", LESSON, "--holes", "2-19"))
                .contains("3 to 9");
        assertThat(refused("lesson", "play", "--player", PLAYER, "--course", LESSON, "--holes", "15-19"))
                .contains("15");
        assertThat(refused("report", "--player", PLAYER, "--round", "none")).contains("round list");
        assertThat(refused("report", "--player", PLAYER, "--target", "40")).contains("60 to 130");
    }
}
