package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import loopwright.action.ImportRecord;
import loopwright.course.AreaKind;
import loopwright.geo.Line;
import loopwright.geo.Place;

/** Reads golf=hole elements: refuses what is no hole, turns lines drawn from the green, draws lines into areas. */
final class HoleLines {
    /** How a hole element is read: as drawn, closed ways as the obsolete area of a whole hole. */
    static final AreaReading HOLE = new AreaReading(Optional.of(AreaKind.ROUGH), false, true);

    private static final Pattern NO_HOLE =
            Pattern.compile("(?i).*\\b(driving[ _-]?range|range|practi[cs]e|putting|chipping|pitching)\\b.*");
    /** An end this close to a tee starts there. */
    private static final double TEE_METRES = 30;
    /** Shorter than any hole that is played with this bench. */
    private static final double SHORTEST_METRES = 20;

    private HoleLines() {}

    static List<HoleDraft> read(Site site, List<ImportRecord> records) {
        List<HoleDraft> out = new ArrayList<>();
        for (SiteElement e : site.holeElements) {
            String number = e.map().get("ref");
            Optional<Line> line = e.region().isPresent() ? lineOfArea(e, site, records) : e.line();
            if (line.isEmpty() || line.get().lengthMetres() < SHORTEST_METRES) {
                records.add(HoleOddities.noLine(e));
            } else if (isNoHole(e, line.get(), site)) {
                records.add(HoleOddities.noHole(e, number, whyNoHole(e, line.get(), site)));
            } else {
                OptionalInt known = OsmNumbers.holeNumber(number);
                out.add(new HoleDraft(e.map(), known, turned(e, line.get(), site, records)));
            }
        }
        return out;
    }

    private static boolean isNoHole(SiteElement e, Line line, Site site) {
        return !whyNoHole(e, line, site).isEmpty();
    }

    private static String whyNoHole(SiteElement e, Line line, Site site) {
        List<String> reasons = new ArrayList<>();
        String ref = e.map().get("ref");
        if (OsmNumbers.holeNumber(ref).orElse(1) == 0) {
            reasons.add("ref=" + ref + " is no number of a hole");
        }
        if (NO_HOLE.matcher(e.map().get("name")).matches()) {
            reasons.add("it is named \"" + e.map().get("name") + "\"");
        }
        boolean numbered = OsmNumbers.holeNumber(ref).orElse(0) > 0;
        boolean inRange = site.of(AreaKind.PRACTICE).stream()
                .anyMatch(p -> p.region().isPresent()
                        && p.getRegion().contains(line.start())
                        && p.getRegion().contains(line.end()));
        if (!numbered && inRange) {
            reasons.add("it lies inside a practice area");
        }
        boolean practice = !reasons.isEmpty();
        if (practice && onGreen(line.start(), site) && onGreen(line.end(), site)) {
            reasons.add("it starts and ends on greens");
        }
        return String.join("; ", reasons);
    }

    private static boolean onGreen(Place place, Site site) {
        return site.of(AreaKind.GREEN).stream().anyMatch(g -> g.distanceTo(place) <= 1);
    }

    /** A line is turned when its start lies where holes end and its end lies where holes start. */
    private static Line turned(SiteElement e, Line line, Site site, List<ImportRecord> records) {
        boolean startsAtEnd = isEnd(line.start(), site) && !isEnd(line.end(), site);
        boolean endsAtTee = isTee(line.end(), site) && !isTee(line.start(), site);
        boolean backwards = startsAtEnd && (endsAtTee || onGreen(line.start(), site)) && !isTee(line.start(), site);
        if (!backwards) {
            return line;
        }
        records.add(HoleOddities.turned(e));
        return line.reversed();
    }

    private static boolean isEnd(Place place, Site site) {
        return onGreen(place, site) || site.pins.stream().anyMatch(p -> p.distanceTo(place) <= 1);
    }

    private static boolean isTee(Place place, Site site) {
        return site.of(AreaKind.TEE).stream().anyMatch(t -> t.distanceTo(place) <= TEE_METRES);
    }

    /** The obsolete drawing of a hole as one area: the line is drawn from its furthest tee to its green. */
    private static Optional<Line> lineOfArea(SiteElement e, Site site, List<ImportRecord> records) {
        Optional<Place> green = site.of(AreaKind.GREEN).stream()
                .map(g -> g.getRegion().insidePlace())
                .filter(p -> e.getRegion().contains(p))
                .findFirst();
        Optional<Place> tee = green.flatMap(g -> site.of(AreaKind.TEE).stream()
                .map(t -> t.region().isPresent() ? t.getRegion().insidePlace() : t.anchor())
                .filter(p -> e.getRegion().contains(p))
                .max(java.util.Comparator.comparingDouble(p -> p.distanceTo(g))));
        if (tee.isPresent()) {
            records.add(HoleOddities.drawnAsArea(e));
        }
        return tee.map(t -> new Line(List.of(t, green.get())));
    }
}
