package loopwright.player;

import java.util.Map;
import java.util.Optional;

/**
 * How a player plays without a plan.
 *
 * @param teeClubs name of the club he usually takes off the tee, by kind of hole; where none is named, his longest (on a par 3
 *     the club that fits the distance)
 * @param aim where he aims once the green is in reach; before that he plays along the middle of the hole
 * @param chip how he plays from just off the green
 * @param layUpMetres distance he likes to leave where the green is out of reach; 0: as far as he can hit it
 */
public record Habit(Map<HoleKind, String> teeClubs, Aim aim, ChipChoice chip, double layUpMetres) {
    /** Driver off the tee, at the flag, along the ground where it is clear, as far as he can: common practice, no source. */
    public static final Habit USUAL = new Habit(Map.of(), Aim.FLAG, ChipChoice.GROUND_WHERE_CLEAR, 0);

    /** Up to here a par 4 is short: a middle-length hitter reaches it with driver and wedge (assumed). */
    private static final double SHORT_PAR_FOUR_METRES = 300;

    /** Holes on which a player may have a tee club of his own. */
    public enum HoleKind {
        SHORT_PAR_FOUR,
        PAR_FOUR,
        PAR_FIVE;

        /** The kind of a hole; none for a par 3. */
        public static Optional<HoleKind> of(int par, double lengthMetres) {
            if (par <= 3) {
                return Optional.empty();
            }
            return Optional.of(par > 4 ? PAR_FIVE : lengthMetres < SHORT_PAR_FOUR_METRES ? SHORT_PAR_FOUR : PAR_FOUR);
        }
    }

    /** What a player aims at when the green is in reach. */
    public enum Aim {
        FLAG,
        MIDDLE_OF_GREEN
    }

    /** What a player does from just off the green. */
    public enum ChipChoice {
        /** A chip where it would land on the green, or just short of it on fairway, and run there; else a pitch. */
        GROUND_WHERE_CLEAR,
        ALWAYS_CHIP,
        ALWAYS_PITCH
    }

    public Habit {
        teeClubs = Map.copyOf(teeClubs);
        if (!(layUpMetres >= 0 && layUpMetres <= 250)) {
            throw new IllegalArgumentException(
                    "the distance a player likes to leave is 0 to 250 m, not " + layUpMetres + " m");
        }
    }
}
