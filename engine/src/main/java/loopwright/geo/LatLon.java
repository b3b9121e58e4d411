package loopwright.geo;

/** A point on the WGS 84 ellipsoid, degrees; latitude -90 to 90, longitude -180 to 180. */
public record LatLon(double latitudeDegrees, double longitudeDegrees) {
    public LatLon {
        if (!(latitudeDegrees >= -90 && latitudeDegrees <= 90)) {
            throw new IllegalArgumentException("a latitude lies between -90 and 90, not " + latitudeDegrees);
        }
        if (!(longitudeDegrees >= -180 && longitudeDegrees <= 180)) {
            throw new IllegalArgumentException("a longitude lies between -180 and 180, not " + longitudeDegrees);
        }
    }
}
