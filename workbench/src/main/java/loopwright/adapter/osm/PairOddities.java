package loopwright.adapter.osm;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.action.ImportRecord;

/** Records of holes that were made from areas; one method a kind. */
final class PairOddities {
    private PairOddities() {}

    private static String hole(OptionalInt number) {
        return number.isPresent() ? "hole " + number.getAsInt() : "a hole without a number";
    }

    static ImportRecord proposedHole(SiteElement green, SiteElement tee, OptionalInt number, int tees) {
        double length = tee.anchor().distanceTo(green.anchor());
        return new ImportRecord(
                "proposed hole",
                true,
                green.id(),
                Optional.of(green.where()),
                "No line is drawn to this green.",
                String.format(
                        Locale.ROOT,
                        "It is the green of %s, played from %s, some %.0f m away (%d %s in all): a proposal.",
                        hole(number),
                        tee.id(),
                        length,
                        tees,
                        tees == 1 ? "tee" : "tees"),
                "Draw the hole as a line from tee to green, tagged golf=hole and ref=...");
    }

    static ImportRecord greenWithoutTee(SiteElement green, OptionalInt number) {
        return new ImportRecord(
                "green without a tee",
                true,
                green.id(),
                Optional.of(green.where()),
                "No line is drawn to this green of " + hole(number) + ", and no tee fits it.",
                "No hole is made of it.",
                "Draw the hole as a line from tee to green, tagged golf=hole and ref=...");
    }
}
