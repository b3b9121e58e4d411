package loopwright.action;

import java.nio.file.Path;
import java.util.Optional;
import loopwright.course.Course;

/** Port: reads images of the ground. */
public interface GroundImages {
    /**
     * Reads a GeoTIFF, which says itself where it lies, or a PNG or JPEG with the corners that somebody states, and cuts
     * it to the course and its surroundings.
     *
     * @param label what the file is called, for sentences and to be shown
     * @param corners outer corners of an image that does not say where it lies
     * @throws UserFault if the file is no such image, does not say where it lies, or shows nothing of the course
     */
    CourseImage read(Path file, String label, Optional<CourseImage.Corners> corners, Course course);
}
