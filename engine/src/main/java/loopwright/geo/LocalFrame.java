package loopwright.geo;

import org.locationtech.proj4j.BasicCoordinateTransform;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateReferenceSystem;
import org.locationtech.proj4j.ProjCoordinate;

/**
 * The metric frame of one course: azimuthal equidistant projection of the WGS 84 ellipsoid, centred on the course.
 *
 * <p>Distances from the centre are exact; between two other places within 3 km of it the scale error stays under
 * 1 part in 20 million times the squared distance in kilometres (s = 1 + c^2 / 6R^2, R = 6371 km), less than a
 * millimetre on a golf shot. Not for places further than 100 km from the centre.
 */
public final class LocalFrame {
    private final LatLon origin;
    private final BasicCoordinateTransform forward;
    private final BasicCoordinateTransform back;

    public LocalFrame(LatLon origin) {
        this.origin = origin;
        CRSFactory factory = new CRSFactory();
        CoordinateReferenceSystem geographic =
                factory.createFromParameters("geographic", "+proj=longlat +datum=WGS84 +no_defs");
        CoordinateReferenceSystem local = factory.createFromParameters(
                "local",
                "+proj=aeqd +lat_0=" + origin.latitudeDegrees() + " +lon_0=" + origin.longitudeDegrees()
                        + " +x_0=0 +y_0=0 +datum=WGS84 +units=m +no_defs");
        forward = new BasicCoordinateTransform(geographic, local);
        back = new BasicCoordinateTransform(local, geographic);
    }

    public LatLon origin() {
        return origin;
    }

    public Place toPlace(LatLon point) {
        ProjCoordinate out = new ProjCoordinate();
        synchronized (forward) {
            forward.transform(new ProjCoordinate(point.longitudeDegrees(), point.latitudeDegrees()), out);
        }
        return new Place(out.x, out.y);
    }

    public LatLon toLatLon(Place place) {
        ProjCoordinate out = new ProjCoordinate();
        synchronized (back) {
            back.transform(new ProjCoordinate(place.x(), place.y()), out);
        }
        return new LatLon(out.y, out.x);
    }
}
