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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the survey says, or does not say, reaches every output: a synthetic par 3 of 130 m without a green on the map. */
class SurveyedPlanIT {
    private static final String PLAYER = Path.of("..", "demo", "player.json").toString();

    @TempDir
    Path folder;

    private Path map;
    private Path course;

    @BeforeEach
    void drawTheMap() throws IOException {
        map = Files.writeString(folder.resolve("map.geojson"), """
                {"type":"FeatureCollection","features":[
                {"type":"Feature","id":"line","properties":{"golf":"hole","ref":"1","par":"3"},
                 "geometry":{"type":"LineString","coordinates":[[10,50],[10,50.00117]]}},
                {"type":"Feature","id":"hedge","properties":{"natural":"wood"},"geometry":{"type":"Polygon",
                 "coordinates":[[[9.999,50.0003],[10.001,50.0003],[10.001,50.0004],[9.999,50.0004],[9.999,50.0003]]]}}]}
                """);
        course = folder.resolve("course.geojson");
    }

    private void survey(Path from, String... lines) {
        List<String> typed = new ArrayList<>(List.of("course", "survey", from.toString(), "--out", course.toString()));
        for (String line : lines) {
            typed.addAll(List.of("--set", line));
        }
        Typed run = Typed.run(typed.toArray(String[]::new));
        assertThat(run.exitCode()).as(run.err()).isZero();
    }

    private record Planned(String text, JsonNode json) {
        JsonNode hole() {
            return json.get("holes").get(0);
        }
    }

    private Planned plan(Path of, String tees) throws IOException {
        Path json = folder.resolve("plan.json");
        Typed run = Typed.run(
                "plan",
                "--course",
                of.toString(),
                "--player",
                PLAYER,
                "--target",
                "3",
                "--tees",
                tees,
                "--json",
                json.toString());
        assertThat(run.exitCode()).as(run.err()).isZero();
        Schema.assertFits("plan.schema.json", json);
        return new Planned(run.out(), new ObjectMapper().readTree(json.toFile()));
    }

    @Test
    void nobodyHasLookedAndEveryOutputSaysSo() throws IOException {
        Planned plan = plan(map, "back");
        assertThat(plan.text().lines().findFirst().orElseThrow()).startsWith("ASSUMED GREEN on hole 1");
        assertThat(plan.text()).contains("UNSURVEYED, not open: on hole 1").contains("  unsurveyed");
        assertThat(plan.json().get("unsurveyedHoles")).hasSize(1);
        assertThat(plan.hole().get("unsurveyed").asBoolean()).isTrue();
        assertThat(plan.hole().get("greenAssumed").asBoolean()).isTrue();
        assertThat(Typed.run("course", "list", map.toString()).out())
                .contains("1 holes")
                .contains(", unsurveyed");
        assertThat(Typed.run("course", "read", map.toString()).out()).contains("Unsurveyed: all holes");
        String pictures = folder.resolve("pictures").toString();
        assertThat(Typed.run("course", "draw", map.toString(), "--svg", "--out", pictures)
                        .out())
                .contains("Unsurveyed holes: 1");
        assertThat(Files.readString(Path.of(pictures, "hole-01.svg"))).contains("Unsurveyed");
    }

    @Test
    void localRulesAreSaidAndTheTemporaryGreenIsPlayedTo() throws IOException {
        survey(map, "1 all yes", "1 rules drop, zone, preferred", "1 temporary 50.0009 10.0", "lost woods 40");
        Planned plan = plan(course, "back");
        assertThat(plan.text())
                .contains("local rule: E-5 lost or out of bounds")
                .contains("local rule: E-1 dropping zone (none is on the map)")
                .contains("local rule: E-3 preferred lies")
                .contains("local rule: temporary green")
                .doesNotContain("ASSUMED GREEN");
        assertThat(plan.hole().get("localRules")).hasSize(4);
        // 0.0009 degrees of latitude are 100.1 m, 109.4 yd
        assertThat(plan.hole().get("lengthYards").asDouble()).isCloseTo(109.4, within(0.3));
    }

    @Test
    void surveyedAndPlayedFromTodaysMarkersOverAHedgeThatHidesTheGreen() throws IOException {
        survey(
                map,
                "1 all yes",
                "tees winter = back; all: +10",
                "tees today = winter; 1: +5",
                "woods hedge 30 0",
                "1 skyline 50.01 10.0 the water tower");
        Planned plan = plan(course, "today");
        // 0.00117 degrees of latitude are 130.1 m, 142.3 yd, less 15 yd of markers
        assertThat(plan.hole().get("lengthYards").asDouble()).isCloseTo(142.3 - 15, within(0.3));
        assertThat(plan.text()).contains("blind: line is ").contains("the water tower");
        JsonNode aim = plan.hole().get("shots").get(0).get("aim");
        assertThat(aim.get("blind").asBoolean()).isTrue();
        assertThat(aim.get("landmark").asText()).contains("the water tower");
        assertThat(plan.text().toLowerCase(java.util.Locale.ROOT)).doesNotContain("unsurveyed");
        assertThat(plan.json().get("unsurveyedHoles")).isEmpty();
        assertThat(Typed.run("course", "list", course.toString()).out()).doesNotContain("unsurveyed");
    }
}
