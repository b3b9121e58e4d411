package loopwright.action;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Box;
import loopwright.geo.Place;

/**
 * Everything the picture of one hole shows. The picture computes nothing about golf: places lie in the course's frame,
 * sentences and numbers stand as given.
 *
 * @param tees name of the set played
 * @param tee where it starts today
 * @param lengthMetres along the line of play
 * @param expected expected score with its doubt, as it is to be printed: "4.6 (4.4 to 4.9)"; empty: no plan, ground only
 * @param shots the plan from the tee on, in playing order
 * @param troubles what must not happen, marked on the ground
 * @param strokes strokes to hole out over the ground, for contour lines
 * @param notes plain sentences under the picture, most important first
 */
public record HolePicture(
        Course course,
        Hole hole,
        String tees,
        Place tee,
        double lengthMetres,
        String expected,
        List<Shot> shots,
        List<Trouble> troubles,
        Optional<StrokesField> strokes,
        List<String> notes) {
    public HolePicture {
        shots = List.copyOf(shots);
        troubles = List.copyOf(troubles);
        notes = List.copyOf(notes);
    }

    /** The hole without a plan. */
    public static HolePicture ofGround(Course course, Hole hole, String tees, Place tee) {
        double length = hole.lineFrom(tee).lengthMetres();
        return new HolePicture(course, hole, tees, tee, length, "", List.of(), List.of(), Optional.empty(), List.of());
    }

    /** The same with contours of the strokes to hole out. */
    public HolePicture withStrokes(StrokesField field) {
        return new HolePicture(
                course, hole, tees, tee, lengthMetres, expected, shots, troubles, Optional.of(field), notes);
    }

    /** True if trees, out of bounds or penalty areas of the hole were never looked at; every picture says so. */
    public boolean unsurveyed() {
        return !hole.survey().complete();
    }

    /**
     * One planned shot.
     *
     * @param from where the ball lies
     * @param aim where it is aimed (not where it finishes)
     * @param club as printed: "driver", "56-wedge half"
     * @param landmark what is aimed at, as printed: "right edge of the left bunker"; may be empty
     * @param finishes a sample of where the ball comes to rest, for the 50 and 80 % outlines; may be empty
     * @param room room between the troubles at the landing distance
     * @param alternatives the next best choices
     */
    public record Shot(
            Place from,
            Place aim,
            String club,
            String landmark,
            List<Place> finishes,
            Optional<Room> room,
            List<Alternative> alternatives) {
        public Shot {
            finishes = List.copyOf(finishes);
            alternatives = List.copyOf(alternatives);
        }
    }

    /** Another choice and what it costs, as printed: "+0.12" or "the same for you". */
    public record Alternative(Place aim, String club, String cost) {}

    /**
     * Room square to the line at the landing distance, from the trouble on the left to that on the right, and how wide
     * the player's own shots spread there.
     *
     * @param left edge of the trouble on the left; {@code leftName} what it is ("woods", "penalty area")
     * @param eightInTenMetres width that holds 8 of 10 of the player's shots
     * @param nineteenInTwentyMetres width that holds 19 of 20
     */
    public record Room(
            Place left,
            String leftName,
            Place right,
            String rightName,
            double eightInTenMetres,
            double nineteenInTwentyMetres) {}

    /** A place to keep away from, with the reason as printed: "penalty area 9 %". */
    public record Trouble(Place place, String words) {}

    /**
     * Strokes to hole out over the ground, read on a square grid.
     *
     * @param box ground on which it is known
     * @param cellMetres how far apart it is worth reading
     * @param strokes from a place; NaN where there is none
     */
    public record StrokesField(Box box, double cellMetres, ToDoubleFunction<Place> strokes) {
        public StrokesField {
            if (!(cellMetres > 0)) {
                throw new IllegalArgumentException("a field needs a cell above zero");
            }
        }
    }
}
