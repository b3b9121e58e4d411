package loopwright.adapter.osm;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.ImportRecord;
import loopwright.geo.LatLon;

/** Shapes of ways and of multipolygon relations; members that the file lacks are recorded and left out. */
final class RelationShapes {
    private final NodeStore nodes;
    private final Map<Long, long[]> ways;
    private final List<ImportRecord> records;

    RelationShapes(NodeStore nodes, Map<Long, long[]> ways, List<ImportRecord> records) {
        this.nodes = nodes;
        this.ways = ways;
        this.records = records;
    }

    /** The way as far as its nodes are in the file. */
    Optional<MapShape.Path> path(String id, long[] refs, boolean worthSaying) {
        List<LatLon> points = new ArrayList<>();
        int lost = 0;
        for (long ref : refs) {
            if (nodes.contains(ref)) {
                points.add(nodes.get(ref));
            } else {
                lost++;
            }
        }
        if (lost > 0 && worthSaying) {
            records.add(FileOddities.missingNodes(id, points, lost));
        }
        return points.size() < 2 ? Optional.empty() : Optional.of(new MapShape.Path(points));
    }

    Optional<MapShape.Polygons> polygons(String id, List<OsmVisitor.Member> members, boolean worthSaying) {
        List<List<LatLon>> outers = new ArrayList<>();
        List<List<LatLon>> inners = new ArrayList<>();
        int lost = 0;
        int used = 0;
        for (OsmVisitor.Member member : members) {
            if (!member.type().equals("way")) {
                continue;
            }
            long[] refs = ways.get(member.id());
            Optional<MapShape.Path> path = refs == null ? Optional.empty() : path(id, refs, false);
            if (path.isEmpty()) {
                lost++;
                continue;
            }
            used++;
            (member.role().equals("inner") ? inners : outers).add(path.get().points());
        }
        List<List<LatLon>> outerRings = rings(outers);
        if (used == 0 || outerRings.isEmpty()) {
            return Optional.empty();
        }
        if (lost > 0 && worthSaying) {
            records.add(FileOddities.missingMembers(id, outerRings.get(0).get(0), lost));
        }
        return Optional.of(new MapShape.Polygons(withHoles(outerRings, rings(inners))));
    }

    /** Joins pieces end to end; a chain that does not come back to its start is closed by a straight line. */
    static List<List<LatLon>> rings(List<List<LatLon>> pieces) {
        Deque<List<LatLon>> left = new ArrayDeque<>(pieces);
        List<List<LatLon>> rings = new ArrayList<>();
        while (!left.isEmpty()) {
            List<LatLon> ring = new ArrayList<>(left.removeFirst());
            while (!isClosed(ring) && extend(ring, left)) {
                // extend has joined one more piece
            }
            if (!isClosed(ring)) {
                ring.add(ring.get(0));
            }
            if (ring.size() >= 4) {
                rings.add(ring);
            }
        }
        return rings;
    }

    private static boolean isClosed(List<LatLon> ring) {
        return ring.size() >= 4 && ring.get(0).equals(ring.get(ring.size() - 1));
    }

    private static boolean extend(List<LatLon> ring, Deque<List<LatLon>> left) {
        LatLon end = ring.get(ring.size() - 1);
        for (List<LatLon> piece : left) {
            List<LatLon> next = new ArrayList<>(piece);
            if (next.get(next.size() - 1).equals(end)) {
                Collections.reverse(next);
            }
            if (next.get(0).equals(end)) {
                ring.addAll(next.subList(1, next.size()));
                left.remove(piece);
                return true;
            }
        }
        return false;
    }

    /** Each hole goes to the outer ring whose box holds its first point; there is mostly only one. */
    private static List<MapShape.Rings> withHoles(List<List<LatLon>> outers, List<List<LatLon>> inners) {
        List<List<List<LatLon>>> holes = new ArrayList<>();
        outers.forEach(o -> holes.add(new ArrayList<>()));
        for (List<LatLon> inner : inners) {
            for (int i = 0; i < outers.size(); i++) {
                if (boxHolds(outers.get(i), inner.get(0))) {
                    holes.get(i).add(inner);
                    break;
                }
            }
        }
        List<MapShape.Rings> out = new ArrayList<>();
        for (int i = 0; i < outers.size(); i++) {
            out.add(new MapShape.Rings(outers.get(i), holes.get(i)));
        }
        return out;
    }

    private static boolean boxHolds(List<LatLon> ring, LatLon p) {
        double minLat = ring.stream().mapToDouble(LatLon::latitudeDegrees).min().orElse(0);
        double maxLat = ring.stream().mapToDouble(LatLon::latitudeDegrees).max().orElse(0);
        double minLon =
                ring.stream().mapToDouble(LatLon::longitudeDegrees).min().orElse(0);
        double maxLon =
                ring.stream().mapToDouble(LatLon::longitudeDegrees).max().orElse(0);
        return p.latitudeDegrees() >= minLat
                && p.latitudeDegrees() <= maxLat
                && p.longitudeDegrees() >= minLon
                && p.longitudeDegrees() <= maxLon;
    }
}
