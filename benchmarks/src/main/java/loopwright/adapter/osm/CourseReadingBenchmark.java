package loopwright.adapter.osm;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import loopwright.action.CourseChoice;
import loopwright.action.CourseListing;
import loopwright.course.Course;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Whether reading grows in step with the file: towns with one, two, four and eight times the golf and the houses. Twice the
 * file should take twice the time; the ratios stand in docs/validation.md.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CourseReadingBenchmark {
    private static final int HOUSES = 4000;

    @Param({"1", "2", "4", "8"})
    public int times;

    private Path file;
    private final OsmCourseFiles files = new OsmCourseFiles();

    @Setup(Level.Trial)
    public void write() throws IOException {
        file = Files.createTempFile("town", ".osm");
        SyntheticTown.write(file, times, HOUSES * times);
    }

    @TearDown(Level.Trial)
    public void delete() throws IOException {
        Files.delete(file);
    }

    @Benchmark
    public List<CourseListing> list() {
        return files.listCourses(file);
    }

    @Benchmark
    public Course readTheFirst() {
        return files.read(file, CourseChoice.numbered(1)).course();
    }
}
