package loopwright.adapter.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.BenchStore;
import loopwright.action.CourseImage;
import loopwright.action.CourseImage.Corners;
import loopwright.action.KeptImage;
import loopwright.action.UserFault;
import org.jdbi.v3.core.Handle;

/** Images under courses: rows of the database, and what an export says of them beside the PNG itself. */
final class SqlImages {
    static final String FILE = "image.csv";
    /** Of an export before several images were kept. */
    static final String OLD_PNG = "image.png";
    /** Name, time and six numbers of the corners. */
    static final int OLD_COLUMNS = 8;
    /** Number and whether it is shown before those. */
    static final int COLUMNS = 2 + OLD_COLUMNS;

    private SqlImages() {}

    /** What an export calls the PNG of an image. */
    static String png(String number) {
        return "image-" + number + ".png";
    }

    static Optional<CourseImage> findShown(Handle h, String course) {
        return h.createQuery("SELECT number FROM kept_image WHERE course = ? AND shown = 1")
                .bind(0, course)
                .mapTo(Integer.class)
                .findOne()
                .map(number -> get(h, course, number));
    }

    static CourseImage get(Handle h, String course, int number) {
        return h.createQuery("SELECT name, upper_left_latitude, upper_left_longitude, upper_right_latitude,"
                        + " upper_right_longitude, lower_left_latitude, lower_left_longitude, added, png"
                        + " FROM kept_image WHERE course = ? AND number = ?")
                .bind(0, course)
                .bind(1, number)
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
                .one();
    }

    static List<KeptImage> list(Handle h, String course) {
        return h.createQuery("SELECT number, shown, name, added, length(png) FROM kept_image WHERE course = ?"
                        + " ORDER BY number DESC")
                .bind(0, course)
                .map((r, c) -> new KeptImage(
                        r.getInt(1),
                        r.getInt(2) == 1,
                        r.getString(3),
                        Instant.ofEpochMilli(r.getLong(4)),
                        r.getLong(5)))
                .list();
    }

    static void add(Handle h, String course, CourseImage image) {
        List<KeptImage> before = list(h, course);
        before.stream().skip(BenchStore.MOST_IMAGES - 1L).forEach(old -> erase(h, course, old.number()));
        hide(h, course);
        insert(h, course, before.isEmpty() ? 1 : before.get(0).number() + 1, true, image);
    }

    static void insert(Handle h, String course, int number, boolean shown, CourseImage image) {
        double[] d = image.corners().degrees();
        h.execute(
                "INSERT INTO kept_image VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                course,
                number,
                shown ? 1 : 0,
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

    static void show(Handle h, String course, int number) {
        hide(h, course);
        if (number != 0
                && h.execute("UPDATE kept_image SET shown = 1 WHERE course = ? AND number = ?", course, number) == 0) {
            throw new UserFault("The course (" + course + ") has no image " + number
                    + " any more; load its page again and choose one that is listed.");
        }
    }

    private static void hide(Handle h, String course) {
        h.execute("UPDATE kept_image SET shown = 0 WHERE course = ?", course);
    }

    static void erase(Handle h, String course, int number) {
        h.execute("DELETE FROM kept_image WHERE course = ? AND number = ?", course, number);
    }

    static void eraseAll(Handle h, String course) {
        h.execute("DELETE FROM kept_image WHERE course = ?", course);
    }

    /** What an export says of an image, the number first. */
    static List<String> row(KeptImage kept, CourseImage image) {
        List<String> out = new ArrayList<>(List.of(
                Integer.toString(kept.number()),
                kept.shown() ? "shown" : "",
                image.name(),
                Long.toString(image.at().toEpochMilli())));
        for (double degrees : image.corners().degrees()) {
            out.add(Double.toString(degrees));
        }
        return out;
    }

    /**
     * Of a row from the name on.
     *
     * @throws IllegalArgumentException if a number of the row is none, or no place on earth
     */
    static CourseImage of(List<String> row, byte[] png) {
        double[] d = row.subList(2, OLD_COLUMNS).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
        return new CourseImage(row.get(0), Corners.ofDegrees(d), Instant.ofEpochMilli(Long.parseLong(row.get(1))), png);
    }
}
