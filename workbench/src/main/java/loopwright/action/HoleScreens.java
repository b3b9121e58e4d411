package loopwright.action;

import loopwright.course.Course;
import loopwright.geo.Place;

/** Port: draws a hole or a course for a screen, ground and plan apart, so that the plan can change over ground that stays. */
public interface HoleScreens {
    /** How the ground of a hole lies on the screen; {@code shots} of the picture are kept in view, lengths
     * are written in the reader's unit. */
    Screen screen(HolePicture picture, LengthUnit lengths);

    /** The whole course, north up. */
    Ground whole(Course course);

    /** Ground in units of its own, y down. */
    interface Ground {
        double width();

        double height();

        /** SVG elements of the ground. */
        String ground();

        /** A place on the screen, x then y. */
        double[] at(Place place);

        /** The place under a point of the screen. */
        Place placeAt(double x, double y);
    }

    /** The ground of a hole, and what may be laid over it. */
    interface Screen extends Ground {
        /** SVG elements of everything laid over the ground; the picture is of the same hole. */
        String over(HolePicture picture);

        /** SVG elements of the lines of equal strokes to hole out, each with its number. */
        String contours(HolePicture.StrokesField strokes);

        /** SVG elements of the lines of equal expected strokes over the aims from a spot. */
        String aims(AimField field);
    }
}
