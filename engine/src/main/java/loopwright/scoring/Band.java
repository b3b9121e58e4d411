package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import loopwright.units.Distance;

/**
 * A row of a review: a part of the game, and for approaches and putts the distances it covers.
 *
 * <p>The limits are ours. Around the green is drawn at 40 yd of the hole, because only the distance to the hole is
 * recorded; the literature draws it at 30 yd of the green's edge (from memory).
 *
 * @param from the shortest distance that belongs to it
 * @param below all distances shorter than this belong to it
 */
public record Band(PartOfGame part, Distance from, Distance below) {
    private static final double FAR = 1e6;
    private static final Distance AROUND_THE_GREEN = Distance.ofYards(40);

    /** Longest par 3 there is, in round numbers, for a tee shot on a hole of unknown par. */
    private static final Distance LONGEST_PAR_3 = Distance.ofYards(260);

    private static final List<Band> APPROACHES = bands(PartOfGame.APPROACH, Distance.ofYards(1), 0, 75, 125, 175, 225);
    private static final List<Band> PUTTS = bands(PartOfGame.PUTTING, Distance.ofFeet(1), 0, 4, 8, 15, 30);

    /** A part that is not divided by distance. */
    public static Band whole(PartOfGame part) {
        return new Band(part, Distance.ofMetres(0), Distance.ofMetres(FAR));
    }

    /** The row a stroke belongs to. */
    public static Band of(Stroke stroke, OptionalInt par) {
        if (stroke.lie() == Lie.GREEN) {
            return find(PUTTS, stroke.toHole());
        }
        boolean longHole =
                par.isPresent() ? par.getAsInt() > 3 : stroke.toHole().compareTo(LONGEST_PAR_3) > 0;
        if (stroke.lie() == Lie.TEE && longHole) {
            return whole(PartOfGame.TEE_SHOTS);
        }
        return stroke.toHole().compareTo(AROUND_THE_GREEN) <= 0
                ? whole(PartOfGame.AROUND_THE_GREEN)
                : find(APPROACHES, stroke.toHole());
    }

    /** True if it has no upper limit. */
    public boolean isOpen() {
        return below.metres() >= FAR;
    }

    private static Band find(List<Band> bands, Distance distance) {
        // A distance typed as the limit itself must not fall below it by the rounding of yards to metres.
        double metres = distance.metres() + 1e-9;
        return bands.stream()
                .filter(b -> metres >= b.from.metres() && metres < b.below.metres())
                .findFirst()
                .orElseThrow();
    }

    private static List<Band> bands(PartOfGame part, Distance unit, int... limits) {
        List<Band> out = new ArrayList<>();
        for (int i = 0; i < limits.length; i++) {
            double to = i + 1 < limits.length ? limits[i + 1] * unit.metres() : FAR;
            out.add(new Band(part, Distance.ofMetres(limits[i] * unit.metres()), Distance.ofMetres(to)));
        }
        return out;
    }
}
