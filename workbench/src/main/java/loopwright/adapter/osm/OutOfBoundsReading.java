package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.action.ImportRecord;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/**
 * Out of bounds as mapped: a ring round the holes is the course's true border; any other ring is an area out of
 * bounds; an open line has its far side, seen from the nearest hole, out of bounds.
 */
final class OutOfBoundsReading {
    /** Width of the band beyond an open line; a ball that crosses it rarely comes to rest further away. */
    private static final double BAND_METRES = 40;

    private OutOfBoundsReading() {}

    /** The mapped ring that holds most of the holes, if there is one. */
    static Optional<SiteElement> findBorder(Site site, List<HoleDraft> holes) {
        return site.of(AreaKind.OUT_OF_BOUNDS).stream()
                .filter(e -> e.region().isPresent())
                .filter(e -> holes.stream()
                                .filter(h -> e.getRegion().contains(h.line().end()))
                                .count()
                        > holes.size() / 2)
                .max(Comparator.comparingDouble(e -> e.getRegion().areaSquareMetres()));
    }

    static List<Area> bands(Site site, List<HoleDraft> holes, List<ImportRecord> records) {
        List<Area> out = new ArrayList<>();
        for (SiteElement e : site.outOfBoundsLines) {
            Line line = e.line().orElseThrow();
            try {
                Region band = band(line, holes);
                out.add(Area.of(e.id(), AreaKind.OUT_OF_BOUNDS, band));
                records.add(ShapeOddities.outOfBoundsLine(e.map(), BAND_METRES));
            } catch (IllegalArgumentException x) {
                records.add(ShapeOddities.noArea(e.map()));
            }
        }
        return out;
    }

    private static Region band(Line line, List<HoleDraft> holes) {
        List<Place> near = line.places();
        Place middle = line.placeAt(line.lengthMetres() / 2);
        Place hole = holes.stream()
                .map(h -> h.line().placeAt(h.line().along(middle)))
                .min(Comparator.comparingDouble(middle::distanceTo))
                .orElseThrow();
        double along = line.placeAt(line.lengthMetres() / 2 - 1).bearingTo(line.placeAt(line.lengthMetres() / 2 + 1));
        double toHole = middle.bearingTo(hole);
        double side = Math.sin(toHole - along) > 0 ? -BAND_METRES : BAND_METRES;
        List<Place> ring = new ArrayList<>(near);
        for (int i = near.size() - 1; i >= 0; i--) {
            Place before = near.get(Math.max(0, i - 1));
            Place after = near.get(Math.min(near.size() - 1, i + 1));
            ring.add(near.get(i).offset(before.bearingTo(after), 0, side));
        }
        return Region.of(ring);
    }
}
