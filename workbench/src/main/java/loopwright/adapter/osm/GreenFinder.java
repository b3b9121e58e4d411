package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.ImportRecord;
import loopwright.course.AreaKind;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.units.Distance;

/** Finds the green of each hole, or lets a circle stand in. */
final class GreenFinder {
    /** Half of 12 yd, the width of the circle that stands for an unmapped green. */
    static final double ASSUMED_RADIUS_METRES = 6 * Distance.METRES_PER_YARD;

    /** A line that ends this far beside a green still means it. */
    private static final double BESIDE_METRES = 30;

    private GreenFinder() {}

    /**
     * A hole's green and where the hole is cut.
     *
     * @param areaId id of the green's area in the course
     */
    record Green(String areaId, Region region, boolean assumed, Place holeLocation) {}

    static Map<HoleDraft, Green> find(List<HoleDraft> holes, Site site, List<ImportRecord> records) {
        Map<HoleDraft, Green> out = new LinkedHashMap<>();
        Map<String, List<HoleDraft>> users = new LinkedHashMap<>();
        for (HoleDraft hole : holes) {
            Green green = find(hole, site, records);
            out.put(hole, green);
            users.computeIfAbsent(green.areaId(), k -> new ArrayList<>()).add(hole);
        }
        users.forEach((id, list) -> {
            if (list.size() > 1) {
                records.add(GreenOddities.doubleGreen(
                        id, site.frame.toLatLon(list.get(0).line().end()), list));
            }
        });
        return out;
    }

    /** The mapped green at the end of a line: the smallest that holds it, else the nearest beside it. */
    static Optional<SiteElement> findMapped(HoleDraft hole, Site site) {
        Place end = hole.line().end();
        List<SiteElement> greens = site.of(AreaKind.GREEN);
        Optional<SiteElement> here = greens.stream()
                .filter(g -> g.getRegion().contains(end))
                .min(Comparator.comparingDouble(g -> g.getRegion().areaSquareMetres()));
        return here.or(() -> greens.stream()
                .filter(g -> g.getRegion().distanceTo(end) <= BESIDE_METRES)
                .min(Comparator.comparingDouble(g -> g.getRegion().distanceTo(end))));
    }

    private static Green find(HoleDraft hole, Site site, List<ImportRecord> records) {
        Place end = hole.line().end();
        Optional<SiteElement> beside = findMapped(hole, site);
        if (beside.isEmpty()) {
            records.add(GreenOddities.noGreen(hole, site.frame.toLatLon(end)));
            Region circle = Region.circle(end, ASSUMED_RADIUS_METRES);
            return new Green("assumed/green-" + hole.getNumber(), circle, true, end);
        }
        SiteElement green = beside.get();
        if (!green.getRegion().contains(end)) {
            records.add(GreenOddities.endsBeside(hole, green, green.getRegion().distanceTo(end)));
        }
        return new Green(green.id(), green.getRegion(), false, holeLocation(hole, green.getRegion(), site, records));
    }

    /** The mapped pin on the green that carries the hole's number or ends its line, else the end of the line. */
    private static Place holeLocation(HoleDraft hole, Region green, Site site, List<ImportRecord> records) {
        Place end = hole.line().end();
        List<SiteElement> own = site.pins.stream()
                .filter(p -> green.contains(p.anchor()))
                .filter(p -> p.anchor().distanceTo(end) < 0.5
                        || OsmNumbers.holeNumber(p.map().get("ref")).orElse(-1) == hole.getNumber())
                .toList();
        if (own.size() > 1) {
            records.add(GreenOddities.severalPins(hole, own));
        }
        Place wanted = own.isEmpty()
                ? end
                : own.stream()
                        .map(SiteElement::anchor)
                        .min(Comparator.comparingDouble(p -> p.distanceTo(end)))
                        .orElse(end);
        return green.contains(wanted) ? wanted : green.insidePlace();
    }
}
