package loopwright.player;

import loopwright.ground.Situation;
import loopwright.ground.Surface;

/**
 * What a lie does to a swing. The published anchor is the tour's rough penalty of about 0.2 strokes between 50 and
 * 150 yd (Broadie 2012); the single multipliers are assumed. A poor lie costs long clubs more: the loss of carry and
 * the extra mishits grow with the club's carry relative to 130 m.
 */
public final class LieTable {
    private static final double REFERENCE_CARRY_METRES = 130;

    private static final LieEffect TEE = new LieEffect(1, 1, 1, 0.8, 1);
    /** A ball placed in the fairway: between a tee and an ordinary lie there, assumed. */
    private static final LieEffect PLACED = new LieEffect(1, 1, 1, 0.9, 1);

    private static final LieEffect SITTING_UP = new LieEffect(1, 1.15, 1.05, 1, 1.2);
    private static final LieEffect ROUGH = new LieEffect(0.97, 1.25, 1.15, 1.25, 1.1);
    private static final LieEffect DOWN = new LieEffect(0.88, 1.6, 1.35, 1.8, 1.1);
    private static final LieEffect DEEP = new LieEffect(0.84, 1.7, 1.45, 2.2, 1);
    private static final LieEffect DEEP_DOWN = new LieEffect(0.7, 2, 1.7, 3, 1);
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
            case TEE -> TEE;
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
