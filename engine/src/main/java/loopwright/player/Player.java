package loopwright.player;

import java.util.List;
import loopwright.putting.PuttingSkill;

/**
 * A player as numbers.
 *
 * @param level average 18-hole score the priors were read at, 60 to 130
 * @param swings full and partial swings, longest first, at least one
 * @param touchShots chip, pitch and bunker shot
 * @param lostBallsPerRound what the player says or the record shows; negative: unknown
 */
public record Player(
        String name,
        Hand hand,
        double level,
        List<Swing> swings,
        List<TouchShot> touchShots,
        PuttingSkill putting,
        double lostBallsPerRound) {

    /** Which hand leads the trade's word for the player. */
    public enum Hand {
        RIGHT,
        LEFT
    }

    public Player {
        swings = List.copyOf(swings);
        touchShots = List.copyOf(touchShots);
        if (!(level >= 60 && level <= 130)) {
            throw new IllegalArgumentException("a level is an average score between 60 and 130, not " + level);
        }
        if (swings.isEmpty()) {
            throw new IllegalArgumentException("a player needs at least one club");
        }
    }

    /** Distinct clubs of the bag, longest first. */
    public List<Club> clubs() {
        return swings.stream().map(Swing::club).distinct().toList();
    }

    /** The player as he is on a day; putting and the rates of mishits stay. */
    public Player on(RoundDay day) {
        return new Player(
                name,
                hand,
                level,
                swings.stream().map(s -> s.on(day)).toList(),
                touchShots.stream().map(t -> t.withSpread(day.spread())).toList(),
                putting,
                lostBallsPerRound);
    }
}
