package loopwright.action;

import java.util.List;
import java.util.Optional;

/**
 * What the book tells of a hole besides its plan: prepared answers to what may be otherwise on the day.
 *
 * @param lost chance that the tee shot is out of bounds or not found, 0 to 1
 * @param lostIn where, the likeliest first: "out of bounds", "woods"
 * @param teeMiss the side on which a tee shot that goes astray costs less; empty on a hole that is reached from the tee
 * @param winds the tee shot in wind, in the order of {@link WindSide}
 */
record HoleBriefing(double lost, List<String> lostIn, Optional<SideMiss> teeMiss, List<WindChoice> winds) {
    HoleBriefing {
        lostIn = List.copyOf(lostIn);
        winds = List.copyOf(winds);
    }

    /** Which side is the better one to miss on, and by how many strokes; a difference under a tenth is none. */
    record SideMiss(boolean right, double gain) {
        private static final double WORTH_TELLING = 0.1;

        boolean matters() {
            return gain >= WORTH_TELLING;
        }
    }

    /** Where the wind comes from, seen along the tee shot. */
    enum WindSide {
        HURTING("into it", 0),
        HELPING("with it", Math.PI),
        FROM_LEFT("from the left", -Math.PI / 2),
        FROM_RIGHT("from the right", Math.PI / 2);

        private final String words;
        private final double turn;

        WindSide(String words, double turn) {
            this.words = words;
            this.turn = turn;
        }

        String words() {
            return words;
        }

        /** Bearing it blows from, for a shot on a bearing. */
        double fromBearing(double shotBearing) {
            return shotBearing + turn;
        }
    }

    /**
     * The tee shot in a wind.
     *
     * @param asideMetres of its aim beside the plan's line, at the distance of the aim: + right
     */
    record WindChoice(WindSide side, String club, double asideMetres) {}
}
