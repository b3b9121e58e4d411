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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan of a few holes of the demo as it is typed. */
class PlanIT {
    private static final Path DEMO = Path.of("..", "demo");

    @TempDir
    Path folder;

    private Typed plan(String... more) {
        List<String> args = new ArrayList<>(List.of(
                "plan",
                "--course",
                DEMO.resolve("course.geojson").toString(),
                "--player",
                DEMO.resolve("player.json").toString()));
        args.addAll(List.of(more));
        return Typed.run(args.toArray(String[]::new));
    }

    @Test
    void writesAPlanThatFitsItsSchemaAndAddsUp() throws IOException {
        Path json = folder.resolve("plan.json");
        Path pictures = folder.resolve("pictures");
        Typed run =
                plan("--target", "7", "--holes", "3,2", "--json", json.toString(), "--picture", pictures.toString());
        assertThat(run.exitCode()).isZero();
        assertThat(run.out())
                .contains("leaving your habit pay")
                .contains("Checked:")
                .contains("Not yet calibrated");
        Schema.assertFits("plan.schema.json", json);
        assertThat(pictures.resolve("hole-02.png")).isNotEmptyFile();
        JsonNode plan = new ObjectMapper().readTree(json.toFile());
        double expected = 0;
        for (JsonNode hole : plan.get("holes")) {
            expected += hole.get("expected").asDouble();
            double all = hole.get("pParOrBetter").asDouble()
                    + hole.get("pBogey").asDouble()
                    + hole.get("pDoubleOrWorse").asDouble();
            assertThat(all).isCloseTo(1, within(1e-9)); // rounding of twenty additions
        }
        double mean = plan.get("score").get("mean").asDouble();
        // Lanes are kept as floats; two holes' worth of their rounding.
        assertThat(mean).isCloseTo(expected, within(2e-3));
        JsonNode check = plan.get("check");
        // The referee within four standard errors and two holes' share of 0.05 strokes a round, times two for one
        // hole's luck.
        assertThat(check.get("simulatedMean").asDouble())
                .isCloseTo(mean, within(4 * check.get("simulatedStandardError").asDouble() + 0.011));
    }

    @Test
    void playsForTheTargetAndSaysWhatIsAtStakeOnEveryTee() throws IOException {
        Path json = folder.resolve("target.json");
        Typed run = plan(
                "--target",
                "7",
                "--holes",
                "2,3",
                "--start-hole",
                "3",
                "--objective",
                "target",
                "--state-of-play",
                "--json",
                json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("Playing for the target").contains("On the tee of hole 2:");
        Schema.assertFits("plan.schema.json", json);
        JsonNode plan = new ObjectMapper().readTree(json.toFile());
        assertThat(plan.get("holes").get(0).get("number").asInt()).isEqualTo(3);
        JsonNode chance = plan.get("score").get("pTarget");
        // Two holes' share of what the search and the clouds of a whole round may miss, 0.002.
        assertThat(chance.get("targetPlay").asDouble())
                .isGreaterThan(chance.get("meanPlay").asDouble() - 0.001);
        double before = 0;
        int hole = 0;
        for (JsonNode tee : plan.get("stateOfPlay")) {
            before = tee.get("hole").asInt() == hole ? before : 0;
            hole = tee.get("hole").asInt();
            assertThat(tee.get("targetPlay").asDouble()).isGreaterThanOrEqualTo(before);
            before = tee.get("targetPlay").asDouble();
        }
    }

    @Test
    void saysHowSureItIs() throws IOException {
        Path json = folder.resolve("sure.json");
        Typed run = plan("--target", "3", "--holes", "3", "--how-sure", "--json", json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("How sure:").contains("Measure next:");
        Schema.assertFits("plan.schema.json", json);
        JsonNode plan = new ObjectMapper().readTree(json.toFile());
        JsonNode chance = plan.get("howSure").get("pTarget");
        double middle = plan.get("score").get("pTarget").get("meanPlay").asDouble();
        // The interval is moved by the mean of 24 draws, but holds the plan's own number unless that is far off.
        assertThat(chance.get("low").asDouble()).isLessThan(middle);
        assertThat(chance.get("high").asDouble()).isGreaterThan(middle);
    }

    @Test
    void countsStablefordPoints() throws IOException {
        Path json = folder.resolve("points.json");
        Typed run = plan("--target", "2", "--holes", "3", "--counting", "stableford", "--json", json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("2 points or more");
        Schema.assertFits("plan.schema.json", json);
        JsonNode plan = new ObjectMapper().readTree(json.toFile());
        JsonNode hole = plan.get("holes").get(0);
        // Two points are net par, and no handicap was given.
        assertThat(plan.get("score").get("pTarget").get("meanPlay").asDouble())
                .isCloseTo(hole.get("pParOrBetter").asDouble(), within(1e-9)); // sums of twenty doubles
    }

    @Test
    void saysWhatIsCounted() {
        Typed net = plan("--target", "3", "--holes", "3", "--counting", "net", "--handicap", "18");
        assertThat(net.exitCode()).as(net.err()).isZero();
        assertThat(net.out())
                .contains("Target: 3 net or better, playing handicap 18.")
                .contains(" net, spread (SD)")
                .contains("strokes in all, however they count")
                .doesNotContain("or better 0.0 %")
                .doesNotContain("or better 100 %");
        // Scratch is a handicap too, and a plus handicap is written as in the game: a stroke given back on the par 3.
        Typed scratch = plan("--target", "3", "--holes", "3", "--counting", "net", "--handicap", "0");
        assertThat(scratch.out()).contains("Target: 3 net or better, playing handicap 0.");
        Typed plus = plan("--target", "3", "--holes", "3", "--counting", "net", "--handicap", "+2");
        assertThat(plus.out()).contains("Target: 3 net or better, playing handicap +2.");
        Typed points = plan(
                "--target",
                "2",
                "--holes",
                "3",
                "--counting",
                "stableford",
                "--objective",
                "target",
                "--state-of-play");
        assertThat(points.exitCode()).as(points.err()).isZero();
        assertThat(points.out()).contains("  1 point to make:").doesNotContain("1 points");
    }

    @Test
    void theSamePlanIsTheSameToTheByte() throws IOException {
        Path first = folder.resolve("first.json");
        Path second = folder.resolve("second.json");
        plan("--target", "4", "--holes", "3", "--json", first.toString());
        plan("--target", "4", "--holes", "3", "--json", second.toString());
        assertThat(Files.readString(second)).isEqualTo(Files.readString(first));
    }

    @Test
    void aForbiddenClubIsNotPlayedAndItsCostIsSaid() throws IOException {
        Path json = folder.resolve("locked.json");
        Typed run = plan("--target", "4", "--holes", "2", "--forbid", "hole 2: driver", "--json", json.toString());
        assertThat(run.out()).contains("your locks cost");
        JsonNode hole = new ObjectMapper().readTree(json.toFile()).get("holes").get(0);
        assertThat(hole.get("shots").get(0).get("club").asText()).isNotEqualTo("driver");
        // On a par 4 of 348 yd the second-longest club cannot be better; the search's own noise is a hundredth.
        assertThat(hole.get("lockCost").asDouble()).isGreaterThan(-0.01);
    }

    @Test
    void aDayIsFlownAndSaidAndWindsAreSetBesideEachOther() throws IOException {
        Path json = folder.resolve("windy.json");
        Typed run = Typed.run(
                "plan",
                "--course",
                DEMO.resolve("course.geojson").toString(),
                "--player",
                DEMO.resolve("player.json").toString(),
                "--target",
                "4",
                "--holes",
                "3",
                "--wind",
                "15 mph from 0",
                "--wind",
                "15 mph from 180",
                "--gust",
                "20 mph",
                "--air",
                "10 C, 29.9 inHg",
                "--altitude",
                "300m",
                "--firmness",
                "firm",
                "--green-speed",
                "9.5",
                "--json",
                json.toString());
        assertThat(run.exitCode()).isZero();
        assertThat(run.out().lines().skip(1).findFirst().orElseThrow())
                .isEqualTo(
                        "Day: wind 15 mph from 0 gusting 20 mph; 10 C, 28.9 inHg, 50 %; firm ground; greens 9.5 ft.");
        assertThat(run.out()).contains("reduced to sea level").contains("How the choices change");
        Schema.assertFits("plan.schema.json", json);
        JsonNode plan = new ObjectMapper().readTree(json.toFile());
        JsonNode north = plan.get("holes").get(0).get("shots").get(0).get("plays");
        JsonNode south = plan.get("otherDays")
                .get(0)
                .get("holes")
                .get(0)
                .get("shots")
                .get(0)
                .get("plays");
        // the hole plays south-west: a wind from the north helps, one from the south hurts more
        assertThat(north.get("windYards").asDouble()).isNegative();
        assertThat(south.get("windYards").asDouble())
                .isGreaterThan(-north.get("windYards").asDouble());
        double parts = 0;
        for (String part : List.of("windYards", "airYards", "heightYards", "groundYards")) {
            parts += south.get(part).asDouble();
        }
        JsonNode aim = plan.get("otherDays")
                .get(0)
                .get("holes")
                .get(0)
                .get("shots")
                .get(0)
                .get("aim");
        assertThat(aim.get("distanceYards").asDouble() + parts)
                .isCloseTo(south.get("yards").asDouble(), within(1e-6)); // the sum itself, and degrees of the aim
    }

    @Test
    void aMeasuredGreenIsPuttedOnItsSlope() throws IOException {
        Path course = folder.resolve("measured.geojson");
        String demo = DEMO.resolve("course.geojson").toString();
        assertThat(Typed.run(
                                "course",
                                "survey",
                                demo,
                                "--out",
                                course.toString(),
                                "--set",
                                "3 nine 4/90 4/90 4/90 4/90 4/90 4/90 4/90 4/90 4/90")
                        .exitCode())
                .isZero();
        Path json = folder.resolve("measured.json");
        String player = DEMO.resolve("player.json").toString();
        Typed run = Typed.run(
                "plan",
                "--course",
                course.toString(),
                "--player",
                player,
                "--target",
                "4",
                "--holes",
                "3",
                "--json",
                json.toString());
        assertThat(run.out()).contains("Greens measured on hole 3: putts are played on their slope.");
        Schema.assertFits("plan.schema.json", json);
        JsonNode sloped = new ObjectMapper().readTree(json.toFile());
        assertThat(sloped.get("holes").get(0).get("greenMeasured").asBoolean()).isTrue();
        JsonNode check = sloped.get("check");
        // as above, for one hole
        assertThat(check.get("simulatedMean").asDouble())
                .isCloseTo(
                        sloped.get("score").get("mean").asDouble(),
                        within(4 * check.get("simulatedStandardError").asDouble() + 0.011));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "--target 79 --tees purple; There are no purple tees",
                "--target 12; is no score for 18 holes; the nearest is 36",
                "--target 120 --counting stableford; is no number of points",
                "--target 79 --counting skins; is not known; it is strokes",
                "--target 79 --objective luck; it is mean or target",
                "--target 79 --handicap 99; is no playing handicap",
                "--target 72 --counting net; needs a playing handicap, and none was given",
                "--target 72 --counting net --handicap eighteen; is not a number",
                "--target 72 --counting net --handicap 3.5; --handicap takes a whole number",
                "--target 79 --counting strokes --maximum 8; goes with --counting maximum",
                "--target 79 --start-hole 22; is not among the holes played, 1 to 18.",
                "--target 4 --holes 3 --start-hole 9; is not among the holes played",
                "--target 4 --holes 22; There is no hole 22",
                "--target 4 --holes x; is not a list of holes",
                "--target 4 --holes 3 --hole-location 3:99,2; beyond the back of the green",
                "--target 4 --holes 3 --hole-location here; is not a hole location",
                "--target 4 --holes 3 --forbid 3:spoon; is not in the bag",
                "--holes 3; --target",
                "--target 4 --holes 3 --wind strong; is not a wind of 0 to 60 mph",
                "--target 4 --holes 3 --gust 20; needs a wind to gust",
                "--target 4 --holes 3 --green-speed 0; 4 (slow) to 16 (fast)",
                "--target 4 --holes 3 --firmness wet; is not one of soft, ordinary, firm",
                "--target 4 --holes 3 --altitude 9000; between -450 and 4,500"
            })
    void saysInOneSentenceWhatCannotBeUsed(String typed, String says) {
        Typed run = plan(typed.split(" "));
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains(says).doesNotContain("Exception");
        assertThat(run.err().strip().lines()).hasSize(1);
    }

    @Test
    void aPlayerFileThatIsNoneIsRefused() throws IOException {
        Path broken = folder.resolve("broken.json");
        Files.writeString(broken, "{\"name\":");
        Typed run = Typed.run(
                "plan",
                "--course",
                DEMO.resolve("course.geojson").toString(),
                "--player",
                broken.toString(),
                "--target",
                "79");
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains("broken.json").doesNotContain("Exception");
    }
}
