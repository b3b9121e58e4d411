package loopwright.action;

import java.nio.file.Path;
import loopwright.course.Course;

/** Port: draws a whole course in the drawing language of the project. */
public interface CoursePictures {
    /** Writes a PNG, SVG or PDF by the ending of the name; the file appears whole or not at all. */
    void drawCourse(Course course, LengthUnit lengths, Path target);
}
