package loopwright.player;

import java.util.List;
import loopwright.ground.Situation;
import loopwright.ground.Surface;

/**
 * How often a ball that comes to rest on a surface lies in each situation. All shares are assumed: no published
 * table of lies was found. What the shares of rough and sand come to together with {@link LieTable} was set on published
 * strokes from those lies; shares and effects cannot be told apart by them.
 */
public final class SituationTable {

    /** A situation and its probability. */
    public record Chance(Situation situation, double probability) {}

    private static final List<Chance> ALWAYS_ORDINARY = List.of(new Chance(Situation.ORDINARY, 1));

    /** A lie chosen by hand: like sitting up, the best the surface has. */
    private static final List<Chance> PREFERRED = List.of(new Chance(Situation.SITTING_UP, 1));

    private SituationTable() {}

    /** The same where preferred lies (Model Local Rule E-3) are in force: in the fairway the ball is placed. */
    public static List<Chance> of(Surface surface, boolean preferredLies) {
        return preferredLies && surface == Surface.FAIRWAY ? PREFERRED : of(surface);
    }

    /** Situations of a surface, probabilities summing to 1. */
    public static List<Chance> of(Surface surface) {
        return switch (surface) {
            case ROUGH ->
                List.of(
                        new Chance(Situation.ORDINARY, 0.5),
                        new Chance(Situation.SITTING_UP, 0.25),
                        new Chance(Situation.DOWN, 0.25));
            case DEEP_ROUGH -> List.of(new Chance(Situation.ORDINARY, 0.4), new Chance(Situation.DOWN, 0.6));
            case BUNKER -> List.of(new Chance(Situation.ORDINARY, 0.93), new Chance(Situation.PLUGGED, 0.07));
            case WOODS ->
                List.of(
                        new Chance(Situation.CLEAR, 0.3),
                        new Chance(Situation.WINDOW, 0.4),
                        new Chance(Situation.SIDEWAYS_ONLY, 0.3));
            default -> ALWAYS_ORDINARY;
        };
    }
}
