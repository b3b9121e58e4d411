package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import loopwright.action.ImportRecord;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.geo.Region;

/** Gives every mapped area its kind on this course, by what it is, how large it is and which hole uses it. */
final class AreaAssembly {
    /** A "bunker" larger than this is a sandy waste area: no rake, no Rule 12 (median bunkers have 70 to 110 m2). */
    private static final double LARGEST_BUNKER_SQUARE_METRES = 5_000;

    private final Site site;
    private final Collection<GreenFinder.Green> greens;
    private final Set<String> greensOfOthers;
    private final Set<String> readAsTees;
    private final List<ImportRecord> records;

    AreaAssembly(
            Site site,
            Collection<GreenFinder.Green> greens,
            Set<String> greensOfOthers,
            Set<String> readAsTees,
            List<ImportRecord> records) {
        this.site = site;
        this.greens = greens;
        this.greensOfOthers = greensOfOthers;
        this.readAsTees = readAsTees;
        this.records = records;
    }

    /** All areas in layer order, then by id. */
    List<Area> areas() {
        Set<String> played = greens.stream().map(GreenFinder.Green::areaId).collect(Collectors.toSet());
        played.addAll(greensOfOthers);
        played.addAll(greensOfOthers);
        List<Area> out = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (SiteElement e : site.areas) {
            if (e.region().isPresent() && ids.add(e.id())) {
                out.add(Area.of(e.id(), kind(e, played), e.getRegion()));
            }
        }
        for (GreenFinder.Green green : greens) {
            if (green.assumed() && ids.add(green.areaId())) {
                out.add(Area.of(green.areaId(), AreaKind.GREEN, green.region()));
            }
        }
        reportGreensInFairways(out);
        out.sort(java.util.Comparator.comparing(Area::kind).thenComparing(Area::id));
        return out;
    }

    private AreaKind kind(SiteElement e, Set<String> played) {
        AreaKind mapped = AreaReading.of(e.map()).kind().orElseThrow();
        if (mapped == AreaKind.GREEN && !played.contains(e.id())) {
            records.add(GreenOddities.noHole(e, e.getRegion().areaSquareMetres()));
            return AreaKind.PRACTICE;
        }
        if (mapped == AreaKind.BUNKER && e.getRegion().areaSquareMetres() > LARGEST_BUNKER_SQUARE_METRES) {
            records.add(ShapeOddities.wasteArea(e.map(), e.getRegion().areaSquareMetres()));
            return AreaKind.WASTE_AREA;
        }
        if (mapped == AreaKind.FAIRWAY && readAsTees.contains(e.id())) {
            return AreaKind.TEE;
        }
        if (!AreaReading.of(e.map()).isGolf() && mapped == AreaKind.RED_PENALTY_AREA) {
            records.add(ShapeOddities.waterWithoutColour(e.map()));
        }
        return mapped;
    }

    /** The layers decide, so this is harmless; it is said because a renderer may hide the green. */
    private void reportGreensInFairways(List<Area> areas) {
        for (Area green : areas) {
            if (green.kind() != AreaKind.GREEN) {
                continue;
            }
            for (Area fairway : areas) {
                if (fairway.kind() == AreaKind.FAIRWAY && inside(green.region(), fairway.region())) {
                    records.add(GreenOddities.insideFairway(green, fairway, site.frame));
                    break;
                }
            }
        }
    }

    private static boolean inside(Region green, Region fairway) {
        return fairway.box().intersects(green.box()) && fairway.contains(green.insidePlace());
    }
}
