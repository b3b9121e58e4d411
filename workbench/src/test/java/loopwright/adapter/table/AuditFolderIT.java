package loopwright.adapter.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.zip.GZIPInputStream;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.geo.Place;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reads the audit of a par 3 of the demo back and checks Bellman's equation with nothing but the files. */
class AuditFolderIT {
    @TempDir
    private static Path folder;

    private static Course course =
            new OsmCourseFiles().read(Path.of("..", "demo", "course.geojson")).course();
    private static Hole hole =
            course.holes().stream().filter(h -> h.par() == 3).findFirst().orElseThrow();

    @BeforeAll
    static void writeAnAudit() {
        Player player = PlayerPrior.of(90, Player.Hand.RIGHT).player("test");
        LevelGreenOdds odds = new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(3));
        Place tee = course.teeSets().get(0).getPlace(hole.number()).place();
        MeanSolution solution = MeanSolver.solve(
                new HoleProblem(
                        new CourseMap(course, hole),
                        tee,
                        new Ability(new StrikeModel(player), odds, 3),
                        SolverSettings.STANDARD,
                        ShotRules.FREE),
                Watch.NONE);
        new AuditFolder(folder).write(solution, solution.evaluate(Watch.NONE), 3);
    }

    private static void forEachRow(String table, Consumer<String[]> use) throws IOException {
        Path file = folder.resolve(String.format("hole-%02d-%s.csv.gz", hole.number(), table));
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.UTF_8))) {
            in.readLine();
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                use.accept(line.split(",", -1));
            }
        }
    }

    private static <T> T get(Map<Integer, T> map, String key) {
        return Objects.requireNonNull(map.get(Integer.parseInt(key)));
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }

    @Test
    void everyChosenOptionSolvesBellmansEquation() throws IOException {
        Map<Integer, double[]> cells = new HashMap<>();
        forEachRow("cells", r -> cells.put(Integer.parseInt(r[0]), new double[] {number(r[4]), number(r[5])}));
        Map<Integer, Double> relief = new HashMap<>();
        forEachRow("crossings", r -> {
            double least = Double.POSITIVE_INFINITY;
            for (String drop : r[4].isEmpty() ? new String[0] : r[4].split(";", -1)) {
                least = Math.min(least, get(cells, drop)[1]);
            }
            relief.put(Integer.parseInt(r[0]), 1 + least);
        });
        Map<Integer, Double> value = new HashMap<>();
        forEachRow("states", r -> {
            value.put(Integer.parseInt(r[0]), number(r[7]));
        });
        Map<Integer, Double> right = new HashMap<>();
        Map<Integer, Boolean> drop = new HashMap<>();
        forEachRow("options", r -> {
            if (r[1].equals("0")) {
                right.put(Integer.parseInt(r[0]), number(r[5]));
                drop.put(Integer.parseInt(r[0]), r[2].equals("unplayable"));
            }
        });
        forEachRow("outcomes", r -> {
            if (!r[1].equals("0")) {
                return;
            }
            int state = Integer.parseInt(r[0]);
            double v = get(value, r[0]);
            double[] cell = get(cells, r[2]);
            double replay = get(drop, r[0]) ? 0 : cell[0];
            double after =
                    r[3].equals("-1") ? (1 - replay) * cell[1] + replay * (1 + v) : Math.min(get(relief, r[3]), 1 + v);
            right.merge(state, number(r[4]) * after, Double::sum);
        });
        assertThat(value).hasSizeGreaterThan(100);
        // The evaluation is settled to 1e-7 per pass; a few passes' worth of change may still be outstanding.
        value.forEach((state, v) ->
                assertThat(Objects.requireNonNull(right.get(state))).isCloseTo(v, within(2e-6)));
    }

    @Test
    void theSurfacesAreThoseOfThePolygons() throws IOException {
        CourseMap map = new CourseMap(course, hole);
        AtomicInteger seen = new AtomicInteger();
        forEachRow("surfaces", r -> {
            seen.incrementAndGet();
            assertThat(map.surfaceAt(number(r[0]), number(r[1])).name()).isEqualTo(r[2]);
        });
        assertThat(seen).hasValue(20_000);
    }
}
