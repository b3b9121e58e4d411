package loopwright.adapter.osm;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.action.CourseImport;
import org.jspecify.annotations.Nullable;

/**
 * The shared island map, enriched with pars, stroke indexes, tee colours, a lateral hazard and an out of bounds, all
 * invented: the clean map of which every quirk is a mutant. Synthetic, in memory only.
 */
final class IslandSketch {
    static final long BUNKER = 440119262;
    static final long FAIRWAY_1 = 440119248;
    static final long GREEN_1 = 440119249;
    static final long GREEN_12 = 440119416;
    static final long BORDER = 222586240;

    private static final int[] PARS = {4, 3, 5, 4, 3, 5, 4, 3, 5, 4, 5, 3, 4, 4, 5, 4, 3, 4};

    private static @Nullable MapSketch raw;
    private static @Nullable CourseImport clean;

    private IslandSketch() {}

    /** A fresh enriched map. */
    static MapSketch enriched() {
        MapSketch source = raw;
        if (source == null) {
            source = MapSketch.of(new OsmXmlSource(SharedFiles.course("island-18.osm")));
            raw = source;
        }
        MapSketch out = new MapSketch();
        source.nodes.forEach((id, n) -> out.node(id, n.latitudeE7, n.longitudeE7, n.tags));
        source.ways.forEach((id, w) ->
                out.way(id, w.nodes.stream().mapToLong(Long::longValue).toArray(), w.tags));
        for (int n = 1; n <= 18; n++) {
            Map<String, String> tags = out.hole(n).tags;
            tags.put("par", String.valueOf(PARS[n - 1]));
            tags.put("handicap", String.valueOf(n % 2 == 1 ? n / 2 + 1 : n / 2 + 9));
            tags.remove("name");
        }
        out.golf("tee").forEach(t -> t.tags.put("tee", "white"));
        square(out, 1, 4000, Map.of("golf", "lateral_water_hazard"));
        square(out, 1, -6000, Map.of("golf", "out_of_bounds"));
        return out;
    }

    /** Reads a map as a file of the folder. */
    static CourseImport read(MapSketch map, Path folder) throws IOException {
        return new OsmCourseFiles().read(Files.writeString(folder.resolve("map.osm"), map.toXml(false)));
    }

    /** The enriched map as it is read without any mutation. */
    static CourseImport clean(Path folder) throws IOException {
        CourseImport read = clean;
        if (read == null) {
            read = read(enriched(), folder);
            clean = read;
        }
        return read;
    }

    /** Draws the first fairway as a relation with its green cut out. */
    static void cutGreenOut(MapSketch map) {
        Map<String, String> tags = new TreeMap<>(map.way(FAIRWAY_1).tags);
        tags.put("type", "multipolygon");
        map.way(FAIRWAY_1).tags.clear();
        map.addRelation(
                List.of(
                        new OsmVisitor.Member("way", FAIRWAY_1, "outer"),
                        new OsmVisitor.Member("way", GREEN_1, "inner")),
                tags);
    }

    /** A square of some 22 m, 100 m on from a tee and this far east of there (1e-7 degrees). */
    private static void square(MapSketch map, int hole, int eastE7, Map<String, String> tags) {
        MapSketch.Thing line = map.hole(hole);
        MapSketch.Thing tee = map.node(line.nodes.get(0));
        MapSketch.Thing end = map.node(line.nodes.get(line.nodes.size() - 1));
        int north = (end.latitudeE7 - tee.latitudeE7) / 4;
        int east = (end.longitudeE7 - tee.longitudeE7) / 4 + eastE7;
        int[][] corners = {{0, 0}, {2000, 0}, {2000, 2000}, {0, 2000}, {0, 0}};
        for (int[] c : corners) {
            c[0] += north;
            c[1] += east;
        }
        map.closedWay(line.nodes.get(0), corners, tags);
    }
}
