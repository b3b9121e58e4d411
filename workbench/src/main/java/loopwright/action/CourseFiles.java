package loopwright.action;

import java.nio.file.Path;
import java.util.List;
import loopwright.course.Course;

/** Port: reads courses from map files of any known format (told by their content) and writes them again. */
public interface CourseFiles {
    /**
     * Reads the chosen course and what had to be assumed about it.
     *
     * @throws UserFault if the file cannot be used, or holds several courses and the choice fits none or many
     */
    CourseImport read(Path file, CourseChoice choice);

    /** Reads the only course of a file. */
    default CourseImport read(Path file) {
        return read(file, CourseChoice.ONLY);
    }

    /** Courses found in a file, in the order in which they are numbered for {@link CourseChoice}. */
    List<CourseListing> listCourses(Path file);

    /** Writes a course as GeoJSON that reads back to the same course; the file appears whole or not at all. */
    void write(Course course, Path target);
}
