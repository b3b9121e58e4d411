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

/** The flight verb as it is typed; options are split at bars because values carry spaces. */
class FlightIT {
    /** PGA TOUR 2015 average drive, from the distance report of 2015. */
    private static final String DRIVE = "--ball-speed|167.7 mph|--launch|10.8|--spin|2599";

    @TempDir
    Path folder;

    private static Typed run(String typed) {
        List<String> args = new ArrayList<>(List.of("flight"));
        args.addAll(List.of(typed.split("\\|")));
        return Typed.run(args.toArray(String[]::new));
    }

    private JsonNode json(String typed) throws IOException {
        Path file = folder.resolve("flight.json");
        Typed run = run(typed + "|--json|" + file);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isZero();
        Schema.assertFits("flight.schema.json", file);
        return new ObjectMapper().readTree(file.toFile());
    }

    @Test
    void averageDriveGoesItsPublishedTotal() throws IOException {
        JsonNode answer = json(DRIVE + "|--air|75 F, 30.0 inHg, 50 %");
        // 268 +- 13: spread of published coefficient sets; total 289.7 yd published (from memory), 275 to 305 allowed
        assertThat(answer.get("carryYards").asDouble()).isCloseTo(268, within(13.0));
        assertThat(answer.get("totalYards").asDouble()).isBetween(275.0, 305.0);
        assertThat(answer.get("sideYards").asDouble()).isZero();
    }

    @Test
    void unitsAreRead() throws IOException {
        double mph = json(DRIVE).get("carryYards").asDouble();
        double metric = json("--ball-speed|74.97 m/s|--launch|10.8 deg|--spin|43.32 rev/s")
                .get("carryYards")
                .asDouble();
        assertThat(metric).isCloseTo(mph, within(0.1)); // the rounding of the typed values
    }

    @Test
    void reducedPressureIsConvertedAndSaid() throws IOException {
        String high = DRIVE + "|--altitude|1600 m|--air|24 C, 30.0 inHg";
        Typed reduced = run(high);
        assertThat(reduced.out()).contains("taken as reduced to sea level and converted to 24.");
        Typed station = run(DRIVE + "|--altitude|1600 m|--air|24 C, 24.8 inHg station");
        assertThat(station.out()).doesNotContain("converted");
        double thin = json(high).get("airDensityKgPerCubicMetre").asDouble();
        double standard = json(DRIVE + "|--altitude|1600 m")
                .get("airDensityKgPerCubicMetre")
                .asDouble();
        // 30.00 inHg is 266 Pa above standard pressure at sea level: 0.3 % denser
        assertThat(thin).isCloseTo(standard, within(0.01));
    }

    @Test
    void windIsTurnedAgainstTheAim() throws IOException {
        String wind = DRIVE + "|--wind|10 mph from W|--direction|";
        assertThat(json(wind + "0").get("sideYards").asDouble()).isGreaterThan(5);
        assertThat(json(wind + "180").get("sideYards").asDouble()).isLessThan(-5);
        double still = json(DRIVE).get("carryYards").asDouble();
        assertThat(json(wind + "270").get("carryYards").asDouble()).isLessThan(still - 10);
        assertThat(json(wind + "90").get("carryYards").asDouble()).isGreaterThan(still + 8);
    }

    @Test
    void gustsAreSaid() throws IOException {
        assertThat(json(DRIVE + "|--wind|10 mph from 0 gusting 19")
                        .get("gustYards")
                        .asDouble())
                .isBetween(2.0, 10.0);
        assertThat(json(DRIVE + "|--wind|10 mph from 0").get("gustYards").asDouble())
                .isZero();
    }

    @ParameterizedTest
    @CsvSource({"svg", "png"})
    void pictureIsDrawn(String ending) throws IOException {
        Path file = folder.resolve("flight." + ending);
        Typed run = run(DRIVE + "|--wind|10 mph from 300|--land|-5m|--picture|" + file);
        assertThat(run.exitCode()).isZero();
        assertThat(Files.size(file)).isGreaterThan(2000);
        if (ending.equals("svg")) {
            assertThat(Files.readString(file)).contains("<svg").doesNotContain("NaN");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "--ball-speed|-3|--launch|10|--spin|2500; between 5 and 230 mph",
                "--ball-speed|fast|--launch|10|--spin|2500; between 5 and 230 mph",
                "--ball-speed|NaN|--launch|10|--spin|2500; between 5 and 230 mph",
                "--ball-speed|150|--launch|10|--spin|1e6; between 0 and 14,000 rpm",
                "--ball-speed|150|--launch|10|--spin|1000000; between 0 and 14,000 rpm",
                "--ball-speed|150|--launch|95|--spin|2500; between -10 and 80 deg",
                "--ball-speed|150|--launch|10|--spin|2500|--wind|strong; 0 to 60 mph from a bearing",
                "--ball-speed|150|--launch|10|--spin|2500|--wind|200 mph from 0; between 0 and 60 mph",
                "--ball-speed|150|--launch|10|--spin|2500|--wind|10 mph from 400; bearing of 0 to 360",
                "--ball-speed|150|--launch|10|--spin|2500|--wind|1.2.3 mph from 0; between 0 and 60 mph",
                "--ball-speed|150|--launch|10|--spin|2500|--air|99 C; -25 to 50 C",
                "--ball-speed|150|--launch|10|--spin|2500|--air|24 C, thin; thin",
                "--ball-speed|150|--launch|10|--spin|2500|--air|24 C, 120 %; humidity",
                "--ball-speed|150|--launch|10|--spin|2500|--air|24 C, 3 inHg; pressure",
                "--ball-speed|150|--launch|10|--spin|2500|--altitude|9000 m; between -450 and 4,500 m",
                "--ball-speed|150|--launch|10|--spin|2500|--land|60m; never comes down on ground 60.0 m above",
                "--ball-speed|150|--launch|10|--spin|2500|--land|500m; between -100 and 100 m",
                "--ball-speed|150|--launch|10|--spin|2500|--surface|ice; not one of fairway",
                "--ball-speed|150|--launch|10|--spin|2500|--firmness|wet; not one of soft",
                "--ball-speed|150|--launch|10|--spin|2500|--picture|x.gif; .png, .svg or .pdf",
                "--ball-speed|150|--launch|10|--spin|2500|--json|/no/such/folder/x.json; folder does not exist",
                "--launch|10|--spin|2500; Missing required option"
            })
    void refusesInOneSentence(String typed, String says) {
        Typed run = run(typed);
        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().strip()).contains(says).hasLineCount(1);
    }
}
