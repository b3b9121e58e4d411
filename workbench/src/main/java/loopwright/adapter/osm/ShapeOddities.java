package loopwright.adapter.osm;

import java.util.Locale;
import java.util.Optional;
import loopwright.action.ImportRecord;

/** Records of what is odd about areas, borders, water and trees; one method a kind. */
final class ShapeOddities {
    private ShapeOddities() {}

    private static ImportRecord of(
            String kind, boolean warning, MapElement e, String found, String assumed, String mend) {
        return new ImportRecord(kind, warning, e.id(), Optional.of(e.shape().anchor()), found, assumed, mend);
    }

    private static String what(MapElement e) {
        return e.golf() ? "golf=" + e.get("golf") : "leisure=golf_course";
    }

    static ImportRecord noArea(MapElement e) {
        return of(
                "shape without area",
                true,
                e,
                "This " + what(e) + " encloses no area.",
                "It is left out.",
                "Draw it again as a ring of three points or more.");
    }

    static ImportRecord crossingRing(MapElement e) {
        return of(
                "crossing ring",
                true,
                e,
                "The edge of this " + what(e) + " crosses or touches itself.",
                "The area is what its loops enclose.",
                "Draw the edge so that it does not cross itself.");
    }

    static ImportRecord openRing(MapElement e) {
        return of(
                "open ring",
                true,
                e,
                "The edge of this " + what(e) + " does not come back to its start.",
                "It is closed by a straight line.",
                "Close the way.");
    }

    static ImportRecord tooLarge(MapElement e, double squareMetres) {
        return of(
                "area too large",
                true,
                e,
                String.format(Locale.ROOT, "This %s covers %.0f hectares.", what(e), squareMetres / 1e4),
                "It is left out.",
                "Mend the points that lie far from the course.");
    }

    static ImportRecord lineForArea(MapElement e, double widthMetres) {
        return of(
                "line where an area is expected",
                true,
                e,
                "This " + what(e) + " is a line.",
                String.format(Locale.ROOT, "It is a strip %.1f m wide.", widthMetres),
                "Draw its edge as an area, or tag its width.");
    }

    static ImportRecord pointForArea(MapElement e, double radiusMetres) {
        return of(
                "point where an area is expected",
                true,
                e,
                "This " + what(e) + " is a single point.",
                String.format(Locale.ROOT, "It is a circle %.0f m across.", 2 * radiusMetres),
                "Draw its edge as an area.");
    }

    static ImportRecord wasteArea(MapElement e, double squareMetres) {
        return of(
                "bunker read as waste area",
                true,
                e,
                String.format(Locale.ROOT, "A \"bunker\" of %.0f m2.", squareMetres),
                "It is a sandy waste area, part of the general area.",
                "Tag it natural=sand without golf=bunker, or draw the bunkers one by one.");
    }

    static ImportRecord waterWithoutColour(MapElement e) {
        return of(
                "water without a golf tag",
                false,
                e,
                "Water inside reach of the course has no golf tag.",
                "It is a red penalty area: so the Rules treat one whose colour is not marked.",
                "Tag it golf=water_hazard (yellow) or golf=lateral_water_hazard (red).");
    }

    static ImportRecord treeSize(MapElement e, double radiusMetres, double heightMetres) {
        return of(
                "tree without a size",
                false,
                e,
                "The tree has no height.",
                String.format(
                        Locale.ROOT, "It is %.0f m high with a crown %.0f m across.", heightMetres, 2 * radiusMetres),
                "Tag height=... and diameter_crown=... in metres.");
    }

    static ImportRecord outOfBoundsLine(MapElement e, double widthMetres) {
        return of(
                "out of bounds as a line",
                true,
                e,
                "This golf=out_of_bounds is a line; which side of it is out of bounds is not said.",
                String.format(
                        Locale.ROOT, "A band of %.0f m on the side away from the nearest hole is out.", widthMetres),
                "Draw the border of the course as one closed way, or the part out of bounds as an area.");
    }

    static ImportRecord noBoundary(CourseCandidate candidate) {
        return new ImportRecord(
                "no boundary",
                true,
                candidate.element(),
                Optional.of(candidate.centre()),
                "The file has no border (leisure=golf_course) for this course.",
                "There is no out of bounds.",
                "Draw the border of the course, tagged leisure=golf_course.");
    }

    static ImportRecord boundaryGuessed(CourseCandidate candidate) {
        return new ImportRecord(
                "out of bounds by the border",
                true,
                candidate.element(),
                candidate.boundary().map(b -> b.shape().anchor()),
                "Out of bounds is not mapped by itself.",
                "Everything beyond the mapped border of the property is out of bounds: a guess.",
                "Compare with the scorecard and the stakes, and confirm it in the survey.");
    }
}
