package loopwright.adapter.terrain;

import loopwright.geo.LatLon;
import org.jspecify.annotations.Nullable;
import org.locationtech.proj4j.BasicCoordinateTransform;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateReferenceSystem;
import org.locationtech.proj4j.ProjCoordinate;

/**
 * Where the centres of a raster's cells lie: x = x0 + xc column + xr row, y = y0 + yc column + yr row, in degrees
 * (longitude, latitude) or in the metres of a projection.
 */
final class RasterFrame {
    private final double x0;
    private final double xc;
    private final double xr;
    private final double y0;
    private final double yc;
    private final double yr;
    private final @Nullable BasicCoordinateTransform toDegrees;
    private final @Nullable BasicCoordinateTransform toMetres;

    /**
     * @param projection parameters of the projection, or null for degrees
     */
    RasterFrame(double x0, double xc, double xr, double y0, double yc, double yr, @Nullable String projection) {
        if (!(Math.abs(xc * yr - xr * yc) > 0) || !Double.isFinite(x0 + y0 + xc + xr + yc + yr)) {
            throw new IllegalArgumentException("its cells have no size");
        }
        this.x0 = x0;
        this.xc = xc;
        this.xr = xr;
        this.y0 = y0;
        this.yc = yc;
        this.yr = yr;
        if (projection == null) {
            toDegrees = null;
            toMetres = null;
        } else {
            CRSFactory factory = new CRSFactory();
            CoordinateReferenceSystem degrees =
                    factory.createFromParameters("degrees", "+proj=longlat +datum=WGS84 +no_defs");
            CoordinateReferenceSystem metres = factory.createFromParameters("metres", projection);
            toDegrees = new BasicCoordinateTransform(metres, degrees);
            toMetres = new BasicCoordinateTransform(degrees, metres);
        }
    }

    /** Longitude and latitude of a cell's centre, degrees; may lie beyond what the earth has. */
    double[] degrees(double column, double row) {
        double x = x0 + xc * column + xr * row;
        double y = y0 + yc * column + yr * row;
        if (toDegrees == null) {
            return new double[] {x, y};
        }
        ProjCoordinate out = new ProjCoordinate();
        toDegrees.transform(new ProjCoordinate(x, y), out);
        return new double[] {out.x, out.y};
    }

    /** Column and row of a place, with fractions, inside the raster or not. */
    double[] columnAndRow(LatLon at) {
        double x = at.longitudeDegrees();
        double y = at.latitudeDegrees();
        if (toMetres != null) {
            ProjCoordinate out = new ProjCoordinate();
            toMetres.transform(new ProjCoordinate(x, y), out);
            x = out.x;
            y = out.y;
        }
        double determinant = xc * yr - xr * yc;
        return new double[] {
            ((x - x0) * yr - (y - y0) * xr) / determinant, ((y - y0) * xc - (x - x0) * yc) / determinant
        };
    }
}
