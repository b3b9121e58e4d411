package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loopwright.action.ImportRecord;
import loopwright.course.Tree;
import loopwright.geo.Line;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;

/** Single trees and rows of trees; size from tags, else assumed (no source). */
final class TreeReading {
    private static final double CROWN_RADIUS_METRES = 4;
    private static final double HEIGHT_METRES = 12;
    private static final double ROW_STEP_METRES = 8;
    private static final int MOST_TREES_IN_A_ROW = 500;

    private TreeReading() {}

    static List<Tree> read(Site site, List<ImportRecord> records) {
        List<Tree> out = new ArrayList<>();
        site.treeElements.forEach(e -> out.addAll(read(e, site.frame, records)));
        return out;
    }

    static List<Tree> read(MapElement e, LocalFrame frame, List<ImportRecord> records) {
        List<Tree> out = new ArrayList<>();
        double radius = tagged(e, "diameter_crown", 1, 60).orElse(2 * CROWN_RADIUS_METRES) / 2;
        double height = tagged(e, "height", 0.5, 130).orElse(HEIGHT_METRES);
        if (tagged(e, "height", 0.5, 130).isEmpty()) {
            records.add(ShapeOddities.treeSize(e, radius, height));
        }
        double gap = tagged(e, SurveyTags.BRANCH_GAP, 0, height).orElse(Tree.assumedGapMetres(height));
        double density = tagged(e, SurveyTags.TREE_DENSITY, 0.1, 10).orElse(1);
        List<Place> places = places(e, frame);
        for (int i = 0; i < places.size(); i++) {
            String id = places.size() == 1 ? e.id() : e.id() + "#" + (i + 1);
            out.add(new Tree(id, places.get(i), radius, height, gap, density));
        }
        return out;
    }

    private static OptionalDouble tagged(MapElement e, String key, double least, double most) {
        OptionalDouble value = OsmNumbers.metres(e.get(key));
        return value.isPresent() && value.getAsDouble() >= least && value.getAsDouble() <= most
                ? value
                : OptionalDouble.empty();
    }

    private static List<Place> places(MapElement e, LocalFrame frame) {
        List<Place> points =
                MapPoints.of(e.shape()).stream().map(frame::toPlace).toList();
        if (points.size() < 2 || !e.has("natural", "tree_row")) {
            return points.subList(0, 1);
        }
        Line row = new Line(points);
        List<Place> out = new ArrayList<>();
        int count = (int) Math.min(MOST_TREES_IN_A_ROW, Math.floor(row.lengthMetres() / ROW_STEP_METRES));
        for (int i = 0; i <= count; i++) {
            out.add(row.placeAt(i * ROW_STEP_METRES));
        }
        return out;
    }
}
