package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import loopwright.action.ImportRecord;
import loopwright.course.AreaKind;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;

/** Finds the tees of each hole: mapped tee areas and points, small fairways that can only be tees, the line's start. */
final class TeeFinder {
    /** A tee further than this from every line of play belongs to no hole of the course. */
    private static final double REACH_METRES = 50;
    /** A tee this close to the start of a line is the tee that the line starts from. */
    private static final double START_METRES = 25;
    /**
     * "Fairways" up to this size near a line's start are read as forward tees. On the map they were seen in, the
     * largest such area has under 400 square metres, the smallest true fairway over 800.
     */
    private static final double SMALL_FAIRWAY_SQUARE_METRES = 400;

    private final Site site;
    private final List<HoleDraft> holes;
    /** These holes and those of other courses on the same ground, whose tees are not ours. */
    private final List<HoleDraft> all;

    private final List<ImportRecord> records;
    private final Map<HoleDraft, List<TeeSpot>> spots = new LinkedHashMap<>();
    private final Set<String> readAsTees = new HashSet<>();
    private final Set<String> pointIds = new HashSet<>();

    TeeFinder(Site site, List<HoleDraft> holes, List<HoleDraft> others, List<ImportRecord> records) {
        this.site = site;
        this.holes = holes;
        this.all = new ArrayList<>(holes);
        this.all.addAll(others);
        this.records = records;
        holes.forEach(h -> spots.put(h, new ArrayList<>()));
    }

    /** Tees by hole number, longest first; every hole has at least one. */
    Map<Integer, List<TeeSpot>> find() {
        List<SiteElement> tees = site.of(AreaKind.TEE);
        List<SiteElement> areas =
                tees.stream().filter(t -> t.region().isPresent()).toList();
        List<SiteElement> points = tees.stream().filter(SiteElement::isPoint).toList();
        for (SiteElement area : areas) {
            List<SiteElement> inside = points.stream()
                    .filter(p -> area.getRegion().distanceTo(p.anchor()) <= 1)
                    .toList();
            addMapped(area, area.getRegion(), inside);
        }
        points.stream()
                .filter(p -> areas.stream().noneMatch(a -> a.getRegion().distanceTo(p.anchor()) <= 1))
                .forEach(this::addPoint);
        site.of(AreaKind.FAIRWAY).forEach(this::addSmallFairway);
        holes.forEach(this::addStart);
        spots.replaceAll((hole, list) -> StatedLengths.withStated(hole, list, records));
        spots.values()
                .forEach(list -> list.sort(Comparator.comparingDouble(TeeSpot::lengthMetres)
                        .reversed()
                        .thenComparing(TeeSpot::id)));
        Map<Integer, List<TeeSpot>> out = new LinkedHashMap<>();
        spots.forEach((hole, list) -> out.put(hole.getNumber(), list));
        return out;
    }

    /** Ids of fairways that were read as forward tees. */
    Set<String> readAsTees() {
        return readAsTees;
    }

    private void addMapped(SiteElement tee, Region region, List<SiteElement> pointsInside) {
        Optional<HoleDraft> hole = holeOf(tee, region);
        if (hole.isEmpty()) {
            records.add(TeeOddities.noHole(tee));
            return;
        }
        Place start = hole.get().line().start();
        Place place = region.contains(start)
                ? start
                : pointsInside.stream().map(SiteElement::anchor).findFirst().orElseGet(() -> middle(region));
        Set<String> colours = new TreeSet<>(colours(tee));
        pointsInside.forEach(p -> colours.addAll(colours(p)));
        add(hole.get(), tee.id(), place, List.copyOf(colours));
    }

    private void addPoint(SiteElement tee) {
        pointIds.add(tee.id());
        Optional<HoleDraft> hole = holeOf(tee, null);
        if (hole.isEmpty()) {
            records.add(TeeOddities.noHole(tee));
        } else {
            add(hole.get(), tee.id(), tee.anchor(), colours(tee));
        }
    }

    private static Place middle(Region region) {
        Place centre = region.centre();
        return region.contains(centre) ? centre : region.insidePlace();
    }

    private void add(HoleDraft hole, String id, Place place, List<String> colours) {
        List<TeeSpot> list = spots.get(hole);
        if (list == null) {
            return;
        }
        list.add(new TeeSpot(id, place, colours, lengthFrom(hole.line(), place)));
    }

    /** Colour words of tee=..., split at semicolons and commas. */
    static List<String> colours(SiteElement tee) {
        String value = tee.map().find("tee").or(() -> tee.map().find("colour")).orElse("");
        List<String> out = new ArrayList<>();
        for (String word : value.toLowerCase(Locale.ROOT).split("[;,/|]", -1)) {
            if (!word.isBlank() && !word.strip().equals("yes")) {
                out.add(word.strip());
            }
        }
        return out;
    }

    /** By its number, unless that hole is far away; else by the start it holds, else by the nearest line of play. */
    private Optional<HoleDraft> holeOf(SiteElement tee, @org.jspecify.annotations.Nullable Region region) {
        Place at = region == null ? tee.anchor() : middle(region);
        Optional<HoleDraft> nearest = all.stream()
                .filter(h -> distance(h, region, at) <= REACH_METRES)
                .min(Comparator.comparingDouble(h -> distance(h, region, at)));
        OptionalInt ref = HolesFromAreas.number(tee);
        if (ref.isEmpty()) {
            return nearest;
        }
        Optional<HoleDraft> named = all.stream()
                .filter(h -> h.number().equals(ref) && distance(h, region, at) <= REACH_METRES)
                .min(Comparator.comparingDouble(h -> distance(h, region, at)));
        if (named.isPresent()) {
            return named;
        }
        nearest.filter(spots::containsKey)
                .ifPresent(h -> records.add(TeeOddities.misnumbered(tee, ref.getAsInt(), h.getNumber())));
        return nearest;
    }

    /** Distance of a tee from the part of a line where tees stand: its first half and what lies behind its start. */
    private static double distance(HoleDraft hole, @org.jspecify.annotations.Nullable Region region, Place at) {
        Line line = hole.line();
        if (region != null && region.contains(line.start())) {
            return -1;
        }
        double along = line.along(at);
        if (along > line.lengthMetres() * 0.55) {
            return Double.POSITIVE_INFINITY;
        }
        return line.distanceTo(at);
    }

    private void addSmallFairway(SiteElement fairway) {
        if (fairway.region().isEmpty() || fairway.getRegion().areaSquareMetres() >= SMALL_FAIRWAY_SQUARE_METRES) {
            return;
        }
        Region region = fairway.getRegion();
        Place at = middle(region);
        all.stream()
                .filter(h -> distance(h, region, at) <= REACH_METRES)
                .min(Comparator.comparingDouble(h -> distance(h, region, at)))
                .filter(spots::containsKey)
                .ifPresent(h -> {
                    readAsTees.add(fairway.id());
                    records.add(TeeOddities.smallFairway(fairway, h.getNumber(), region.areaSquareMetres()));
                    add(h, fairway.id(), at, List.of());
                });
    }

    /**
     * The line starts from the back tee; where no tee is mapped at its start, the start itself is one. A tee mapped
     * there as a point only is said too, if the map draws tees as areas elsewhere.
     */
    private void addStart(HoleDraft hole) {
        Place start = hole.line().start();
        List<TeeSpot> list = spots.getOrDefault(hole, List.of());
        List<TeeSpot> here = list.stream()
                .filter(s -> s.place().distanceTo(start) <= START_METRES && !readAsTees.contains(s.id()))
                .toList();
        boolean furtherBack =
                list.stream().anyMatch(s -> s.lengthMetres() > hole.line().lengthMetres() + START_METRES);
        if (here.isEmpty() && !furtherBack) {
            records.add(TeeOddities.noTeeAtStart(hole, nearestTeeArea(start)));
            add(hole, hole.id() + "#start", start, List.of());
        } else if (here.stream().allMatch(s -> pointIds.contains(s.id())) && !here.isEmpty()) {
            double nearest = nearestTeeArea(start);
            if (Double.isFinite(nearest)) {
                records.add(TeeOddities.noTeeAtStart(hole, nearest));
            }
        }
    }

    private double nearestTeeArea(Place start) {
        return site.of(AreaKind.TEE).stream()
                .filter(t -> t.region().isPresent())
                .mapToDouble(t -> t.distanceTo(start))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Length of a hole from a place: to the line ahead of it and along the rest of its bends. */
    static double lengthFrom(Line line, Place tee) {
        double start = line.along(tee);
        double length = 0;
        Place from = tee;
        double passed = 0;
        for (int i = 1; i < line.places().size(); i++) {
            Place bend = line.places().get(i);
            passed += line.places().get(i - 1).distanceTo(bend);
            if (passed > start + 1 || i == line.places().size() - 1) {
                length += from.distanceTo(bend);
                from = bend;
            }
        }
        return length;
    }
}
