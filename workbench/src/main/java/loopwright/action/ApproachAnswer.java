package loopwright.action;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loopwright.geo.Place;
import loopwright.ground.Surface;

/** How to approach the greens of a course: target, favoured miss, short side, and what attacking costs. */
public record ApproachAnswer(String course, String tees, String player, List<HoleApproach> holes) {
    public ApproachAnswer {
        holes = List.copyOf(holes);
    }

    /** The sides of a green, seen along the line of play. */
    public enum Side {
        SHORT,
        LONG,
        LEFT,
        RIGHT
    }

    /**
     * A green.
     *
     * @param from where the approach is played from
     * @param metres from there to the middle of the green
     * @param locations the one on the pin sheet, or the nine zones
     */
    public record HoleApproach(
            int number, int par, Place from, Surface lie, double metres, boolean measured, List<Location> locations) {
        public HoleApproach {
            locations = List.copyOf(locations);
        }
    }

    /**
     * A hole location.
     *
     * @param name "front left", or "hole location" of the sheet
     * @param toHoleMetres from the ball
     * @param target where to aim; the target is {@code beyondMetres} past (short of: negative) the hole and {@code
     *     rightMetres} right of it
     * @param onGreen chance that the shot finishes on the green
     * @param attackCost strokes that aiming at the hole costs beside the target; below twice its error "the same for you"
     * @param shortSide where the least green lies between the hole and its edge
     * @param favoured the side from which fewest strokes are expected
     * @param strokes to hole out from 6 yd off that side of the green; left out where no ball can be played there
     * @param edgeMetres from the hole to the nearest edge
     * @param slope rise over run at the hole, where the green was measured
     * @param warnings about the hole location
     */
    public record Location(
            String name,
            Place place,
            double toHoleMetres,
            String club,
            Place target,
            double beyondMetres,
            double rightMetres,
            double expected,
            double onGreen,
            double attackCost,
            double attackError,
            Side shortSide,
            Side favoured,
            Map<Side, Double> strokes,
            double edgeMetres,
            OptionalDouble slope,
            List<String> warnings) {
        public Location {
            strokes = Map.copyOf(strokes);
            warnings = List.copyOf(warnings);
        }

        public boolean attackIsFree() {
            return attackCost < 2 * attackError;
        }
    }
}
