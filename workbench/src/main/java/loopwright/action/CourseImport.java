package loopwright.action;

import java.util.List;
import loopwright.course.Course;

/** A course as read, with one record for everything odd in the file, in a fixed order. */
public record CourseImport(Course course, List<ImportRecord> records) {
    public CourseImport {
        records = List.copyOf(records);
    }

    public List<ImportRecord> warnings() {
        return records.stream().filter(ImportRecord::warning).toList();
    }
}
