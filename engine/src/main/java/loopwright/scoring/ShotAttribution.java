package loopwright.scoring;

import java.util.OptionalDouble;

/**
 * Strokes one shot lost against the best the player could expect, split into decision, execution and luck; the three add
 * up to {@link #lost} exactly.
 *
 * @param hole number of the hole
 * @param shot number of the stroke on the hole, from 1
 * @param club as written down, or empty text
 * @param decision expected strokes of the choice less those of the best choice
 * @param execution strokes to hole out from where the ball finished, averaged over how it may lie there, with this stroke and
 *     its penalty, less what was expected of the choice
 * @param luck how the ball was found to lie, less the average; 0 where that was not noted. What a bounce did is part of
 *     execution, since no landing is recorded
 * @param doubt standard deviation of the decision: of the solver, and of the aim where it was inferred
 * @param fartherMisses share of this shot's finishes that lie farther from their middle than this one; none where the shot
 *     or the finish is not known
 */
public record ShotAttribution(
        int hole,
        int shot,
        String club,
        Knowledge knowledge,
        double decision,
        double execution,
        double luck,
        double doubt,
        OptionalDouble fartherMisses) {
    /** How much was known of the choice. */
    public enum Knowledge {
        /** Club and aim were noted: three parts. */
        NOTED,
        /** The club was noted, the aim inferred from the finish: three parts, the first inferred. */
        INFERRED,
        /** The club was noted, the aim was not: two parts only, the club and all the rest; the aim is in the rest. */
        TWO_PARTS,
        /** Neither was noted: the whole loss stands in execution, undivided. */
        UNDIVIDED,
        /** On the green, where pace and line are not noted: undivided. */
        PUTT
    }

    public double lost() {
        return decision + execution + luck;
    }
}
