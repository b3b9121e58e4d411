package loopwright.adapter.osm;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import loopwright.action.UserFault;

/** The format of a map file, told by its content and never by its name. */
enum FileKind {
    OSM_XML,
    OSM_PBF,
    GEOJSON,
    OVERPASS_JSON;

    private static final int HEAD_BYTES = 65_536;

    static FileKind of(Path file) {
        byte[] head = head(file);
        if (head.length == 0) {
            throw new UserFault(file + " is empty; export or download the course again.");
        }
        if (OsmPbfSource.looksLike(head)) {
            return OSM_PBF;
        }
        String text =
                new String(head, StandardCharsets.UTF_8).replace("\uFEFF", "").stripLeading();
        if (text.startsWith("<")) {
            return OSM_XML;
        }
        if (text.startsWith("{")) {
            int features = text.indexOf("\"features\"");
            int elements = text.indexOf("\"elements\"");
            if (features >= 0 && (elements < 0 || features < elements)) {
                return GEOJSON;
            }
            if (elements >= 0) {
                return OVERPASS_JSON;
            }
            throw new UserFault(file + " is JSON but neither GeoJSON (a \"features\" list) nor Overpass JSON (an"
                    + " \"elements\" list); export the course in one of these.");
        }
        throw new UserFault(file + " is no map file that can be read; accepted are OSM XML, OSM PBF,"
                + " GeoJSON and Overpass JSON (unpack .gz, .bz2 or .zip first).");
    }

    private static byte[] head(Path file) {
        if (!Files.exists(file)) {
            throw new UserFault(file + " does not exist; check the path.");
        }
        if (!Files.isRegularFile(file)) {
            throw new UserFault(file + " is not a file; name the map file itself.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(HEAD_BYTES);
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read: " + e.getMessage() + ".", e);
        }
    }
}
