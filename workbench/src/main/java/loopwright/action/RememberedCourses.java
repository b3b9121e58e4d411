package loopwright.action;

import java.nio.file.Path;
import java.util.List;
import loopwright.course.Course;

/** Courses from files that never change (see {@link Workroom}): each is read once while it is in use. */
public final class RememberedCourses implements CourseFiles {
    private static final int KEPT = 6;

    private final CourseFiles files;
    private final Remembered<Path, CourseImport> kept = new Remembered<>(KEPT);

    public RememberedCourses(CourseFiles files) {
        this.files = files;
    }

    @Override
    public CourseImport read(Path file, CourseChoice choice) {
        return choice.equals(CourseChoice.ONLY)
                ? kept.get(file, () -> files.read(file, choice))
                : files.read(file, choice);
    }

    @Override
    public List<CourseListing> listCourses(Path file) {
        return files.listCourses(file);
    }

    @Override
    public void write(Course course, Path target) {
        files.write(course, target);
    }
}
