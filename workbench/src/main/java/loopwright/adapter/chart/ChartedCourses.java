package loopwright.adapter.chart;

import java.nio.file.Path;
import loopwright.action.CoursePictures;
import loopwright.action.LengthUnit;
import loopwright.course.Course;

/** Draws whole courses. */
public final class ChartedCourses implements CoursePictures {
    @Override
    public void drawCourse(Course course, LengthUnit lengths, Path target) {
        PictureFile.write(CourseChart.of(course, lengths), target);
    }
}
