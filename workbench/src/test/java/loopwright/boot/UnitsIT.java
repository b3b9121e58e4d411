package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Yards and metres on the command line, as it is typed. */
class UnitsIT {
    private static final String COURSE = Path.of("..", "demo", "course.geojson").toString();
    private static final String PLAYER = Path.of("..", "demo", "player.json").toString();
    private static final String ROUND = "--course " + COURSE + " --player " + PLAYER + " --target 4 --holes 3";

    /** What each verb with --units cannot do without. */
    private static final Map<String, String> VERBS = Map.ofEntries(
            Map.entry("plan", ROUND),
            Map.entry("tees", ROUND),
            Map.entry("expect", ROUND),
            Map.entry("bag", ROUND + " --swap 5-iron="),
            Map.entry("book", ROUND + " --out book.pdf"),
            Map.entry("approach", "--course " + COURSE + " --player " + PLAYER),
            Map.entry("wedges", "--player " + PLAYER),
            Map.entry("shortgame", "--player " + PLAYER),
            Map.entry("fit", "--shots nobody.csv"),
            Map.entry("flight", "--ball-speed 150 --launch 12 --spin 2700"),
            Map.entry("player sheet", ""),
            Map.entry("player new", "--level 88 --out player.json"),
            Map.entry("course walk", COURSE + " --out walk.pdf"),
            Map.entry("report", "--player nobody"),
            Map.entry("round review", "nobody.csv"));

    @TempDir
    Path folder;

    private static Typed run(String typed, String... more) {
        return Typed.run(Stream.concat(Stream.of(typed.trim().split(" ")), Stream.of(more))
                .toArray(String[]::new));
    }

    @Test
    void everyVerbThatTakesUnitsRefusesFurlongs() {
        Set<String> found = new TreeSet<>();
        collect(Main.commandLine(new StringReader("")), "", found);
        assertThat(found).isEqualTo(new TreeSet<>(VERBS.keySet()));
        VERBS.forEach((verb, needs) -> {
            Typed typed = run(verb + " " + needs, "--units", "furlongs");
            assertThat(typed.exitCode()).as(verb).isEqualTo(2);
            assertThat(typed.err().strip())
                    .as(verb)
                    .isEqualTo("The unit \"furlongs\" is not known; it is yards or metres.");
            assertThat(typed.out()).as(verb).isEmpty();
        });
    }

    private static void collect(CommandLine line, String verb, Set<String> found) {
        if (line.getCommandSpec().findOption("--units") != null) {
            found.add(verb.strip());
        }
        line.getSubcommands().forEach((name, sub) -> collect(sub, verb + " " + name, found));
    }

    @Test
    void theSamePlanTellsTheSameDistancesInBothUnits() throws IOException {
        Path yards = folder.resolve("yards.json");
        Path metres = folder.resolve("metres.json");
        Typed first = run("plan " + ROUND, "--json", yards.toString());
        Typed second = run("plan " + ROUND, "--units", "metres", "--json", metres.toString());
        assertThat(second.exitCode()).as(second.err()).isZero();
        assertThat(second.out()).doesNotContain(" yd").doesNotContain(" ft ");
        assertThat(Files.readString(metres)).isEqualTo(Files.readString(yards));
        List<Double> told = lengths(first.out(), "yd");
        List<Double> converted = lengths(second.out(), "m");
        assertThat(told).hasSizeGreaterThan(3).hasSameSizeAs(converted);
        for (int i = 0; i < told.size(); i++) {
            // both are whole numbers, each off by at most a half
            assertThat(converted.get(i))
                    .isCloseTo(
                            told.get(i) * Distance.METRES_PER_YARD,
                            within(0.5 + 0.5 * Distance.METRES_PER_YARD + 1e-9));
        }
    }

    /** Lengths of the course, of the hole, to the hole and of the aim; what lies beside a line may vanish in rounding. */
    private static List<Double> lengths(String page, String unit) {
        List<Double> out = new ArrayList<>();
        Matcher m = Pattern.compile("(?:par \\d+, |^  |aim )(\\d+) " + unit + "\\b", Pattern.MULTILINE)
                .matcher(page);
        while (m.find()) {
            out.add(Double.valueOf(m.group(1)));
        }
        return out;
    }

    @Test
    void aPlayerIsTheSameFromCarriesInEitherUnit() throws IOException {
        Path yards = folder.resolve("yards.json");
        Path metres = folder.resolve("metres.json");
        run("player new --level 88 --driver-carry 250 --7-iron-total 150", "--out", yards.toString());
        Typed typed = run(
                "player new --level 88 --driver-carry 228.6 --7-iron-total 137.16 --units metres",
                "--out",
                metres.toString());
        assertThat(typed.exitCode()).as(typed.err()).isZero();
        assertThat(typed.out()).contains("Lengths in metres").doesNotContain(" yd");
        assertThat(Files.readString(metres)).isEqualTo(Files.readString(yards));
    }

    @Test
    void aFlightIsToldInBothUnits() {
        String flight = "flight --ball-speed 150 --launch 12 --spin 2700";
        double yards = carry(run(flight), "yd");
        double metres = carry(run(flight, "--units", "metres"), "m");
        // both are printed to a tenth
        assertThat(metres).isCloseTo(yards * Distance.METRES_PER_YARD, within(0.1));
    }

    private static double carry(Typed typed, String unit) {
        Matcher m = Pattern.compile("Carry (\\d+\\.\\d) " + unit + ",").matcher(typed.out());
        assertThat(m.find()).as(typed.out() + typed.err()).isTrue();
        return Double.parseDouble(m.group(1));
    }

    @Test
    void theWarmUpIsReadInTheUnitThatIsTold() throws IOException {
        double metres = seen("driver: R10/-20 R10/-20", "metres");
        double yards = seen("driver: R10.9/-21.9 R10.9/-21.9", "yards"); // 10 m and 20 m to a tenth of a yard
        assertThat(metres).isCloseTo(yards, within(0.1));
        assertThat(metres).isGreaterThan(seen("driver: R10/-20 R10/-20", "yards") + 0.5);
    }

    private double seen(String balls, String units) throws IOException {
        Path json = folder.resolve("today.json");
        Typed typed = run("plan " + ROUND, "--today", balls, "--units", units, "--json", json.toString());
        assertThat(typed.exitCode()).as(typed.err()).isZero();
        return new ObjectMapper()
                .readTree(json.toFile())
                .at("/today/balls/seenYards")
                .asDouble();
    }

    @Test
    void whatIsTypedIsRefusedInTheUnitItIsReadIn() {
        assertThat(run("plan " + ROUND, "--today", "driver: R8m").err())
                .contains("\"R8m\" is no ball")
                .contains("R8 (8 yd right)")
                .contains("the numbers are yards, without a unit");
        assertThat(run("plan " + ROUND, "--units", "metres", "--today", "driver: R8 yd")
                        .err())
                .contains("\"yd\" is no ball")
                .contains("R8 (8 m right)")
                .contains("the numbers are metres, without a unit");
        assertThat(run("tees " + ROUND, "--markers", "60").err()).contains("--markers 60 is too far; give 0 to 40 yd.");
        assertThat(run("tees " + ROUND, "--units", "metres", "--markers", "40").err())
                .contains("--markers 40 is too far; give 0 to 36 m.");
        assertThat(run("approach --course " + COURSE + " --player " + PLAYER, "--units", "metres", "--from", "290")
                        .err())
                .contains("--from 290 is no approach; give 19 to 274 m.");
        assertThat(run("approach --course " + COURSE + " --player " + PLAYER, "--units", "metres", "--from", "18")
                        .err())
                .contains("--from 18 is no approach; give 19 to 274 m.");
        assertThat(run("approach --course " + COURSE + " --player " + PLAYER, "--units", "metres", "--from", "19")
                        .exitCode())
                .as("what is told is accepted")
                .isZero();
        assertThat(run("bag " + ROUND, "--units", "metres", "--swap", "5-iron=7-wood 340 carry")
                        .err())
                .contains("a club carries 19 to 320 m.");
        assertThat(run("bag " + ROUND, "--units", "metres", "--swap", "5-iron=7-wood 360 yd carry")
                        .err())
                .contains("a club carries 20 to 350 yd.");
    }
}
