package loopwright.player;

import loopwright.ground.Situation;
import loopwright.ground.Surface;

/**
 * What a lie does to a swing: multipliers of the pattern from a good lie. None is published; rough and sand were set such
 * that a player of the tour's level needs as many strokes from them as Broadie's Table 9 (Interfaces 42(2), 2012) says, 10
 * to 220 yd from the hole ({@code AnchorReferenceTest}); deep rough, waste areas and the forest floor are assumed beside
 * them. A tee is a good lie and no better: the driver's pattern is one from the tee, and the same table has the tour need no
 * fewer strokes from a tee than from the fairway, 100 to 180 yd away. A poor lie costs long clubs more: the loss of carry and
 * the extra mishits grow with the club's carry relative to 130 m.
 */
public final class LieTable {
    private static final double REFERENCE_CARRY_METRES = 130;

    /** A ball placed in the fairway: a tenth fewer mishits, assumed. */
    private static final LieEffect PLACED = new LieEffect(1, 1, 1, 0.9, 1);

    private static final LieEffect SITTING_UP = new LieEffect(1, 1.25, 1.15, 1, 1.2);
    private static final LieEffect ROUGH = new LieEffect(0.97, 1.6, 1.35, 1.25, 1.1);
    private static final LieEffect DOWN = new LieEffect(0.88, 2.2, 1.6, 1.8, 1.1);
    private static final LieEffect DEEP = new LieEffect(0.84, 2, 1.6, 2.2, 1);
    private static final LieEffect DEEP_DOWN = new LieEffect(0.7, 2.6, 1.9, 3, 1);
    private static final LieEffect SAND = new LieEffect(0.93, 1.5, 1.2, 1.8, 1);
    private static final LieEffect WASTE = new LieEffect(0.97, 1.25, 1.1, 1.4, 1);
    private static final LieEffect FOREST_FLOOR = new LieEffect(0.95, 1.3, 1.2, 1.5, 1.1);
    private static final LieEffect PLUGGED_BLAST = new LieEffect(0.8, 1.8, 1.5, 2, 1.5);

    private LieTable() {}

    /** The effect on a full or partial swing with a club of this carry. */
    public static LieEffect onSwing(Surface surface, Situation situation, double carryMetres) {
        return scaled(effect(surface, situation), carryMetres / REFERENCE_CARRY_METRES);
    }

    /** The effect on a chip, pitch, punch or bunker shot, whose patterns from a good lie of their own are the measure. */
    public static LieEffect onTouchShot(Surface surface, Situation situation) {
        if (surface == Surface.BUNKER) {
            return situation == Situation.PLUGGED ? PLUGGED_BLAST : LieEffect.NONE;
        }
        LieEffect effect = effect(surface, situation);
        // The player chooses the length with the lie in view: what is lost is precision, not carry.
        return new LieEffect(1, effect.distanceSpread(), effect.directionSpread(), effect.mishits(), effect.run());
    }

    private static LieEffect effect(Surface surface, Situation situation) {
        return switch (surface) {
            case FAIRWAY -> situation == Situation.SITTING_UP ? PLACED : LieEffect.NONE;
            case ROUGH ->
                switch (situation) {
                    case SITTING_UP -> SITTING_UP;
                    case DOWN -> DOWN;
                    default -> ROUGH;
                };
            case DEEP_ROUGH -> situation == Situation.DOWN ? DEEP_DOWN : DEEP;
            case BUNKER -> SAND;
            case WASTE_AREA -> WASTE;
            case WOODS -> FOREST_FLOOR;
            default -> LieEffect.NONE;
        };
    }

    private static LieEffect scaled(LieEffect e, double length) {
        double factor = Math.min(1.6, Math.max(0.5, length));
        return new LieEffect(
                1 - (1 - e.carry()) * factor,
                e.distanceSpread(),
                e.directionSpread(),
                e.mishits() <= 1 ? e.mishits() : 1 + (e.mishits() - 1) * factor,
                e.run());
    }
}
