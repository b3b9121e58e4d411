package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.CourseImport;
import loopwright.action.ImportRecord;
import loopwright.action.TerrainFiles.Terrain;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.terrain.RasterTerrain;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.ground.HeightField;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real map of 17 unnumbered hole lines without any area, on real hills of 31 m cells. */
class HillsideCourseIT {
    @Test
    void has17HolesInAProposedOrderOnAssumedGreens() {
        CourseImport found = new OsmCourseFiles().read(shared("hillside-17-no-refs.osm"));
        assertThat(found.course().holes()).hasSize(17).allMatch(Hole::greenAssumed);
        assertThat(found.records().stream()
                        .filter(r -> r.kind().equals("proposed number"))
                        .toList())
                .hasSize(17)
                .allMatch(ImportRecord::warning);
        assertThat(found.records().stream().map(ImportRecord::kind))
                .contains("no boundary", "green missing", "par by length");
    }

    @Test
    void bothRastersGiveHeightsWithinAMetreOfEveryCell() throws IOException {
        Course course =
                new OsmCourseFiles().read(shared("hillside-17-no-refs.osm")).course();
        List<double[]> cells = cells();
        for (String raster : List.of("hillside-elevation.tif", "hillside-elevation.asc")) {
            HeightField field = new RasterTerrain().read(shared(raster), course).heights();
            LocalFrame frame = new LocalFrame(course.origin());
            int compared = 0;
            for (double[] cell : cells) {
                Place at = frame.toPlace(new LatLon(cell[0], cell[1]));
                if (field.covers(at)) {
                    assertThat(Math.abs(field.heightMetres(at) - cell[2])).isLessThan(1);
                    compared++;
                }
            }
            assertThat(compared).isGreaterThan(2000);
            assertThat(field.showsGreens()).isFalse();
        }
    }

    @Test
    void heightsInTheWrittenCourseReadBackExactly(@TempDir Path folder) {
        OsmCourseFiles files = new OsmCourseFiles();
        Course course = files.read(shared("hillside-17-no-refs.osm")).course();
        Terrain terrain = new RasterTerrain().read(shared("hillside-elevation.tif"), course);
        Path out = folder.resolve("course.geojson");
        files.write(course.withHeights(terrain.heights()), out);
        assertThat(files.read(out).course().heights()).contains(terrain.heights());
    }

    /** Latitude, longitude and height of every cell of the text grid, read here by itself. */
    private static List<double[]> cells() throws IOException {
        List<String> lines = Files.readAllLines(shared("hillside-elevation.asc"));
        double west = number(lines.get(2));
        double south = number(lines.get(3));
        double step = number(lines.get(4));
        int rows = (int) number(lines.get(1));
        List<double[]> out = new ArrayList<>();
        for (int r = 0; r < rows; r++) {
            String[] words = lines.get(6 + r).strip().split(" +", -1);
            for (int c = 0; c < words.length; c++) {
                double lat = south + (rows - r - 0.5) * step;
                out.add(new double[] {lat, west + (c + 0.5) * step, Double.parseDouble(words[c])});
            }
        }
        return out;
    }

    private static double number(String line) {
        return Double.parseDouble(line.split(" +", -1)[1]);
    }

    private static Path shared(String name) {
        Optional<Path> file = Optional.empty();
        for (Path f = Path.of("").toAbsolutePath(); f != null && file.isEmpty(); f = f.getParent()) {
            file = Optional.of(f.resolve("shared/courses").resolve(name)).filter(Files::exists);
        }
        Assumptions.assumeTrue(file.isPresent(), "the shared file " + name + " is not here; test skipped");
        return file.orElseThrow();
    }
}
