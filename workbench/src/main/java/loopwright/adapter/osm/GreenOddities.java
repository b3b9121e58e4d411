package loopwright.adapter.osm;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.action.ImportRecord;
import loopwright.course.Area;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;

/** Records of what is odd about greens and pins; one method a kind. */
final class GreenOddities {
    private GreenOddities() {}

    static ImportRecord doubleGreen(String id, LatLon where, List<HoleDraft> holes) {
        String numbers = holes.stream().map(h -> String.valueOf(h.getNumber())).collect(Collectors.joining(" and "));
        return new ImportRecord(
                "double green",
                true,
                id,
                Optional.of(where),
                "Holes " + numbers + " end on the same green.",
                "It is the green of each of them.",
                "Nothing, if the course has a double green; else draw the second green.");
    }

    static ImportRecord noGreen(HoleDraft hole, LatLon where) {
        return new ImportRecord(
                "green missing",
                true,
                hole.id(),
                Optional.of(where),
                "No green is mapped at the end of hole " + hole.getNumber() + ".",
                "A circle 11 m (12 yd) across at the end of its line stands in.",
                "Draw the green as an area tagged golf=green.");
    }

    static ImportRecord endsBeside(HoleDraft hole, SiteElement green, double metres) {
        return new ImportRecord(
                "line ends beside the green",
                false,
                hole.id(),
                Optional.of(green.where()),
                String.format(Locale.ROOT, "Hole %d ends %.1f m outside %s.", hole.getNumber(), metres, green.id()),
                "That green is the hole's green.",
                "Let the line end on the green.");
    }

    static ImportRecord severalPins(HoleDraft hole, List<SiteElement> pins) {
        return new ImportRecord(
                "several pins",
                false,
                hole.id(),
                Optional.of(pins.get(0).where()),
                "Hole " + hole.getNumber() + " has " + pins.size() + " pins.",
                "The one nearest the end of the line is today's hole location.",
                "Keep one golf=pin on each green.");
    }

    static ImportRecord noHole(SiteElement green, double squareMetres) {
        return new ImportRecord(
                "green of no hole",
                false,
                green.id(),
                Optional.of(green.where()),
                String.format(Locale.ROOT, "No hole ends on this green (%.0f m2).", squareMetres),
                "It is a practice green: a wrong green, never played to.",
                "If a hole ends here, draw its golf=hole line to it.");
    }

    static ImportRecord insideFairway(Area green, Area fairway, LocalFrame frame) {
        return new ImportRecord(
                "green inside a fairway",
                false,
                green.id(),
                Optional.of(frame.toLatLon(green.region().insidePlace())),
                "It lies inside the fairway " + fairway.id() + ", not cut out of it.",
                "The green lies on top.",
                "Nothing need be done; a multipolygon with the green as inner would say it in full.");
    }
}
