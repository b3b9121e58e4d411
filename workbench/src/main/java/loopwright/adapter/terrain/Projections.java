package loopwright.adapter.terrain;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.geo.LatLon;

/**
 * Projections that elevation rasters come in. Datums other than WGS 84 (ETRS89, NAD83, SIRGAS 2000) differ from it by
 * less than 2 m on the ground and are taken as WGS 84.
 */
final class Projections {
    private static final Pattern ZONE = Pattern.compile("(?i).*UTM[ _]zone[ _](\\d{1,2})\\s?([NS]).*", Pattern.DOTALL);

    private Projections() {}

    /** Parameters for the EPSG code of a projected system, or empty if it is not one of those known here. */
    static Optional<String> ofEpsg(int code) {
        if (code >= 32601 && code <= 32660) {
            return Optional.of(utm(code - 32600, false));
        }
        if (code >= 32701 && code <= 32760) {
            return Optional.of(utm(code - 32700, true));
        }
        if (code >= 25828 && code <= 25838) {
            return Optional.of(utm(code - 25800, false));
        }
        if (code >= 26901 && code <= 26923) {
            return Optional.of(utm(code - 26900, false));
        }
        if (code >= 31978 && code <= 31985) {
            return Optional.of(utm(code - 31960, true));
        }
        return code == 3857
                ? Optional.of(
                        "+proj=merc +a=6378137 +b=6378137 +lat_ts=0 +lon_0=0 +x_0=0 +y_0=0 +k=1 +units=m +no_defs")
                : Optional.empty();
    }

    /** The UTM zone named in the text of a .prj file. */
    static Optional<String> ofText(String prj) {
        Matcher m = ZONE.matcher(prj);
        if (!m.matches()) {
            return Optional.empty();
        }
        int zone = Integer.parseInt(m.group(1));
        return zone >= 1 && zone <= 60 ? Optional.of(utm(zone, m.group(2).equalsIgnoreCase("S"))) : Optional.empty();
    }

    static String utmOf(LatLon at) {
        return utm(utmZone(at), at.latitudeDegrees() < 0);
    }

    static int utmZone(LatLon at) {
        return Math.min(60, (int) Math.floor((at.longitudeDegrees() + 180) / 6) + 1);
    }

    private static String utm(int zone, boolean south) {
        return String.format(
                Locale.ROOT, "+proj=utm +zone=%d %s+datum=WGS84 +units=m +no_defs", zone, south ? "+south " : "");
    }
}
