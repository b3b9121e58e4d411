package loopwright.adapter.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.CourseImage;
import loopwright.action.CourseImage.Corners;
import org.jdbi.v3.core.Handle;

/** Images under courses: rows of the database, and what an export says of them beside the PNG itself. */
final class SqlImages {
    static final String FILE = "image.csv";
    static final String PNG = "image.png";
    /** Name, time and six numbers of the corners. */
    static final int COLUMNS = 8;

    private SqlImages() {}

    static Optional<CourseImage> find(Handle h, String course) {
        return h.createQuery("SELECT name, upper_left_latitude, upper_left_longitude, upper_right_latitude,"
                        + " upper_right_longitude, lower_left_latitude, lower_left_longitude, added, png"
                        + " FROM course_image WHERE course = ?")
                .bind(0, course)
                .map((r, c) -> new CourseImage(
                        r.getString(1),
                        Corners.ofDegrees(
                                r.getDouble(2),
                                r.getDouble(3),
                                r.getDouble(4),
                                r.getDouble(5),
                                r.getDouble(6),
                                r.getDouble(7)),
                        Instant.ofEpochMilli(r.getLong(8)),
                        r.getBytes(9)))
                .findOne();
    }

    static void insert(Handle h, String course, CourseImage image) {
        double[] d = image.corners().degrees();
        h.execute(
                "INSERT INTO course_image VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                course,
                image.name(),
                d[0],
                d[1],
                d[2],
                d[3],
                d[4],
                d[5],
                image.at().toEpochMilli(),
                image.png());
    }

    static void erase(Handle h, String course) {
        h.execute("DELETE FROM course_image WHERE course = ?", course);
    }

    static List<String> row(CourseImage image) {
        List<String> out =
                new ArrayList<>(List.of(image.name(), Long.toString(image.at().toEpochMilli())));
        for (double degrees : image.corners().degrees()) {
            out.add(Double.toString(degrees));
        }
        return out;
    }

    /**
     * @throws IllegalArgumentException if a number of the row is none, or no place on earth
     */
    static CourseImage of(List<String> row, byte[] png) {
        double[] d = row.subList(2, COLUMNS).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
        return new CourseImage(row.get(0), Corners.ofDegrees(d), Instant.ofEpochMilli(Long.parseLong(row.get(1))), png);
    }
}
