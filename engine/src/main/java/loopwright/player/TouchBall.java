package loopwright.player;

import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.ground.Surface;

/**
 * One chip, pitch or bunker shot of a player's record, played to stop at the hole.
 *
 * @param kind chip, pitch or bunker shot
 * @param toHoleMetres where it was played from, 0.5 to 100 m from the hole
 * @param surface it lay on
 * @param leaveMetres how far from the hole it stopped, where noted; nothing if it was holed
 * @param mishit what went wrong, where noted: one of the kinds the shot has
 */
public record TouchBall(
        TouchShot.Kind kind,
        double toHoleMetres,
        Surface surface,
        boolean holed,
        OptionalDouble leaveMetres,
        Optional<Mishit.Kind> mishit) {
    public static final double SHORTEST_METRES = 0.5;
    public static final double LONGEST_METRES = 100;

    public TouchBall {
        if (!(toHoleMetres >= SHORTEST_METRES && toHoleMetres <= LONGEST_METRES)) {
            throw new IllegalArgumentException("a short shot is 0.5 to 100 m from the hole, not " + toHoleMetres);
        }
        if (holed && (leaveMetres.isPresent() || mishit.isPresent())) {
            throw new IllegalArgumentException("a holed shot has no leave and no mishit");
        }
        if (leaveMetres.isPresent() && !(leaveMetres.getAsDouble() >= 0 && leaveMetres.getAsDouble() <= 300)) {
            throw new IllegalArgumentException("a leave is 0 to 300 m, not " + leaveMetres.getAsDouble());
        }
    }

    /** True if it says anything: holed, a leave, or what went wrong. */
    public boolean isTelling() {
        return holed || leaveMetres.isPresent() || mishit.isPresent();
    }
}
