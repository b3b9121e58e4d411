package loopwright.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import loopwright.adapter.osm.OsmCourseFiles;

/** Writes the invented files of the folder {@code demo}. */
final class DemoFiles {
    private DemoFiles() {}

    static void writeAll(Path folder) throws IOException {
        new OsmCourseFiles().write(DemoCourse.create(), folder.resolve("course.geojson"));
        write(folder.resolve("shots.csv"), DemoShots.lines(DemoCourse.SEED));
        write(folder.resolve("putts.csv"), DemoPutts.lines(DemoCourse.SEED));
    }

    private static void write(Path file, List<String> lines) throws IOException {
        Files.writeString(file, String.join("\n", lines) + "\n");
    }

    /** The committed folder: tests run in the module's folder or in the root of the project. */
    static Path committed() {
        Path here = Path.of("demo");
        return Files.isDirectory(here) ? here : Path.of("..", "demo");
    }
}
