package loopwright.adapter.osm;

import java.util.Locale;
import java.util.Optional;
import loopwright.action.ImportRecord;

/** Records of what is odd about tees; one method a kind. */
final class TeeOddities {
    private TeeOddities() {}

    static ImportRecord noHole(SiteElement tee) {
        return new ImportRecord(
                "tee of no hole",
                false,
                tee.id(),
                Optional.of(tee.where()),
                "It lies near the start of no hole line.",
                "It is drawn but no hole starts from it.",
                "Draw the hole line that starts here, or tag the tee ref=...");
    }

    static ImportRecord misnumbered(SiteElement tee, int ref, int hole) {
        return new ImportRecord(
                "misnumbered tee",
                true,
                tee.id(),
                Optional.of(tee.where()),
                "It is tagged ref=" + ref + " but lies beside the line of hole " + hole + ", not of hole " + ref + ".",
                "It is a tee of hole " + hole + ".",
                "Tag it ref=" + hole + ", or move it.");
    }

    static ImportRecord smallFairway(SiteElement fairway, int hole, double squareMetres) {
        return new ImportRecord(
                "fairway read as forward tee",
                true,
                fairway.id(),
                Optional.of(fairway.where()),
                String.format(
                        Locale.ROOT,
                        "A \"fairway\" of %.0f m2 near the start of hole %d looks like a tee.",
                        squareMetres,
                        hole),
                "It is a forward tee of hole " + hole + ".",
                "Tag it golf=tee, or draw the whole fairway.");
    }

    static ImportRecord noTeeAtStart(HoleDraft hole, double nearestMetres) {
        String nearest = nearestMetres < 1000
                ? String.format(Locale.ROOT, "; the nearest tee area is %.0f m away", nearestMetres)
                : "";
        return new ImportRecord(
                "missing tee area",
                true,
                hole.id() + "#start",
                Optional.of(hole.where()),
                "No tee of hole " + hole.getNumber() + " is mapped where its line starts" + nearest + ".",
                "The start of the line is its back tee.",
                "Draw the tee as an area tagged golf=tee.");
    }

    static ImportRecord lengthDiffers(HoleDraft hole, String dist, double lineMetres) {
        return new ImportRecord(
                "length differs from the line",
                true,
                hole.id(),
                Optional.of(hole.where()),
                String.format(
                        Locale.ROOT,
                        "Hole %d is tagged dist=%s, but its line is %.0f m long.",
                        hole.getNumber(),
                        dist,
                        lineMetres),
                "The line counts.",
                "Check the line and the number; dist is in metres unless its unit is written out.");
    }

    static ImportRecord placedByLength(HoleDraft hole, String colour, double metres) {
        return new ImportRecord(
                "tee placed by its length",
                true,
                hole.id(),
                Optional.of(hole.where()),
                String.format(
                        Locale.ROOT,
                        "Hole %d is tagged dist:%s, and no tee of that name is mapped.",
                        hole.getNumber(),
                        colour),
                String.format(Locale.ROOT, "The tee is %.0f m from the hole along the line.", metres),
                "Draw the tee as an area tagged golf=tee and tee=" + colour + ".");
    }

    static ImportRecord standsIn(String set, int hole, String standIn, TeeSpot spot) {
        return new ImportRecord(
                "tee stands in",
                false,
                spot.id(),
                Optional.empty(),
                "Hole " + hole + " has no tee of the set \"" + set + "\".",
                "\"" + standIn + "\" stands in, the nearest in length.",
                "Draw the missing tee, or mix the sets in the survey.");
    }
}
