package loopwright.adapter.terrain;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.UserFault;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Box;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** The part of a raster that a course and its surroundings take up. */
final class CourseWindow {
    private static final double SURROUNDINGS_METRES = 300;

    private CourseWindow() {}

    /** Ground that holes and border take up. */
    static Box extent(Course course) {
        List<Place> places = new ArrayList<>();
        for (Hole hole : course.holes()) {
            places.addAll(hole.line().places());
        }
        Box box = Box.around(places);
        return course.boundary().map(Region::box).map(box::union).orElse(box);
    }

    /** The cells that the course and its surroundings touch; fails with a sentence if there are none. */
    static Raster.Window of(RasterFrame raster, int columns, int rows, Course course, Path file) {
        LocalFrame frame = new LocalFrame(course.origin());
        Box box = extent(course).grown(SURROUNDINGS_METRES);
        double minColumn = Double.POSITIVE_INFINITY;
        double maxColumn = Double.NEGATIVE_INFINITY;
        double minRow = Double.POSITIVE_INFINITY;
        double maxRow = Double.NEGATIVE_INFINITY;
        for (double x : new double[] {box.minX(), 0, box.maxX()}) {
            for (double y : new double[] {box.minY(), 0, box.maxY()}) {
                double[] at = raster.columnAndRow(frame.toLatLon(new Place(x, y)));
                minColumn = Math.min(minColumn, at[0]);
                maxColumn = Math.max(maxColumn, at[0]);
                minRow = Math.min(minRow, at[1]);
                maxRow = Math.max(maxRow, at[1]);
            }
        }
        int column = (int) Math.max(0, Math.floor(minColumn));
        int row = (int) Math.max(0, Math.floor(minRow));
        long wide = (long) Math.min(columns - 1, Math.ceil(maxColumn)) - column + 1;
        long high = (long) Math.min(rows - 1, Math.ceil(maxRow)) - row + 1;
        if (!(wide >= 2 && high >= 2)) {
            throw notCovered(raster, columns, rows, course, file);
        }
        return new Raster.Window(column, row, (int) wide, (int) high);
    }

    private static UserFault notCovered(RasterFrame raster, int columns, int rows, Course course, Path file) {
        double[] first = raster.degrees(0, 0);
        double[] last = raster.degrees(columns - 1, rows - 1);
        return new UserFault(String.format(
                Locale.ROOT,
                "%s does not cover the course: it reaches from %.4f, %.4f to %.4f, %.4f (latitude, longitude) and the"
                        + " course lies at %.4f, %.4f; choose a raster of that region.",
                file,
                first[1],
                first[0],
                last[1],
                last[0],
                course.origin().latitudeDegrees(),
                course.origin().longitudeDegrees()));
    }
}
