package loopwright.action;

import java.time.Instant;
import loopwright.geo.LatLon;

/** An image of the ground, as a coach supplied it, to be seen under the areas of his course; always a PNG here. */
public final class CourseImage {
    private final String name;
    private final Corners corners;
    private final Instant at;
    private final byte[] png;

    /** {@code name} is what the file was called, {@code at} when it was taken in. */
    public CourseImage(String name, Corners corners, Instant at, byte[] png) {
        this.name = name;
        this.corners = corners;
        this.at = at;
        this.png = png.clone();
    }

    public String name() {
        return name;
    }

    public Corners corners() {
        return corners;
    }

    public Instant at() {
        return at;
    }

    public byte[] png() {
        return png.clone();
    }

    /** Where three outer corners of an image lie; the fourth follows, as the image is a parallelogram. */
    public record Corners(LatLon upperLeft, LatLon upperRight, LatLon lowerLeft) {
        /** Of six numbers as {@link #degrees} gives them; fails if they are no places on earth. */
        public static Corners ofDegrees(double... d) {
            return new Corners(new LatLon(d[0], d[1]), new LatLon(d[2], d[3]), new LatLon(d[4], d[5]));
        }

        /** Latitude and longitude of upper left, upper right and lower left. */
        public double[] degrees() {
            return new double[] {
                upperLeft.latitudeDegrees(), upperLeft.longitudeDegrees(),
                upperRight.latitudeDegrees(), upperRight.longitudeDegrees(),
                lowerLeft.latitudeDegrees(), lowerLeft.longitudeDegrees()
            };
        }

        /** Of an image whose upper edge runs due east; fails if the corners were exchanged. */
        public static Corners northUp(LatLon upperLeft, LatLon lowerRight) {
            if (!(upperLeft.latitudeDegrees() > lowerRight.latitudeDegrees()
                    && upperLeft.longitudeDegrees() < lowerRight.longitudeDegrees())) {
                throw new IllegalArgumentException(
                        "with north up, the upper left corner lies north-west of the lower right one");
            }
            return new Corners(
                    upperLeft,
                    new LatLon(upperLeft.latitudeDegrees(), lowerRight.longitudeDegrees()),
                    new LatLon(lowerRight.latitudeDegrees(), upperLeft.longitudeDegrees()));
        }

        /** Of an image that lies turned. */
        public static Corners turned(LatLon upperLeft, LatLon upperRight, LatLon lowerRight) {
            return new Corners(
                    upperLeft,
                    upperRight,
                    new LatLon(
                            upperLeft.latitudeDegrees() + lowerRight.latitudeDegrees() - upperRight.latitudeDegrees(),
                            upperLeft.longitudeDegrees()
                                    + lowerRight.longitudeDegrees()
                                    - upperRight.longitudeDegrees()));
        }
    }
}
