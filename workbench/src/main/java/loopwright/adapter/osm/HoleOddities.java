package loopwright.adapter.osm;

import java.util.Locale;
import java.util.Optional;
import loopwright.action.ImportRecord;

/** Records of what is odd about hole lines, their numbers and their par; one method a kind. */
final class HoleOddities {
    private HoleOddities() {}

    private static ImportRecord of(
            String kind, boolean warning, MapElement e, String found, String assumed, String mend) {
        return new ImportRecord(kind, warning, e.id(), Optional.of(e.shape().anchor()), found, assumed, mend);
    }

    static ImportRecord noLine(SiteElement e) {
        return of(
                "hole without a line",
                true,
                e.map(),
                "It is tagged golf=hole but draws no line from a tee to a green.",
                "It is left out.",
                "Draw golf=hole as a line from the tee to the hole.");
    }

    static ImportRecord noHole(SiteElement e, String ref, String why) {
        return of(
                "rejected hole",
                true,
                e.map(),
                "It is tagged golf=hole" + (ref.isEmpty() ? "" : ", ref=" + ref) + ", but " + why + ".",
                "It is not a hole of the course.",
                "Remove golf=hole from it, or give it the number and name of a hole.");
    }

    static ImportRecord turned(SiteElement e) {
        return of(
                "line drawn from the green",
                true,
                e.map(),
                "The line starts at a green or pin and ends at a tee.",
                "The line is turned round.",
                "Turn the line so that it runs from tee to green.");
    }

    static ImportRecord drawnAsArea(SiteElement e) {
        return of(
                "hole drawn as an area",
                true,
                e.map(),
                "The hole is an area, an obsolete way to draw it.",
                "A straight line from its furthest tee to its green stands for it.",
                "Draw golf=hole as a line from the tee to the hole, with the bends of the hole.");
    }

    static ImportRecord sameNumber(HoleDraft dropped, HoleDraft kept) {
        return of(
                "number used twice",
                true,
                dropped.element(),
                "Hole " + kept.getNumber() + " is drawn twice, here and as " + kept.id() + ".",
                "The longer line is the hole; this one is left out.",
                "Give one of the two its right ref, or name their courses by golf:course:name.");
    }

    static ImportRecord proposedNumber(HoleDraft draft, int number) {
        return of(
                "proposed number",
                true,
                draft.element(),
                "The line has no number (ref).",
                "It is taken as hole " + number + ", a proposal by the shortest walk from green to tee.",
                "Confirm the order and tag the line ref=" + number + ", or its right number.");
    }

    static ImportRecord parInName(HoleDraft hole) {
        return of(
                "par in the name",
                false,
                hole.element(),
                "There is no par tag; the name is \"" + hole.element().get("name") + "\".",
                "The par is taken from the name.",
                "Tag par=... on the line.");
    }

    static ImportRecord parByLength(HoleDraft hole, int par) {
        return of(
                "par by length",
                true,
                hole.element(),
                String.format(
                        Locale.ROOT,
                        "Hole %d has no par tag and none in its name; its line is %.0f m long.",
                        hole.getNumber(),
                        hole.line().lengthMetres()),
                "Par " + par + ", by the lengths of the Rules of Handicapping, Appendix F.",
                "Tag par=... on the line.");
    }

    static ImportRecord parByColour(HoleDraft hole, String key, int par) {
        return of(
                "par by colour",
                false,
                hole.element(),
                "Hole " + hole.getNumber() + " has no par tag, but " + key + "=" + par + ".",
                "Par " + par + " from all tees.",
                "Tag par=... on the line.");
    }

    static ImportRecord badNumber(HoleDraft hole, String key, String value, String wanted) {
        return of(
                "unreadable number",
                true,
                hole.element(),
                "Hole " + hole.getNumber() + " is tagged " + key + "=" + value + ".",
                "The tag is passed over.",
                "Write " + wanted + ".");
    }
}
