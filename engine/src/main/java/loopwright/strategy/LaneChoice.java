package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;

/** Which of a state's options is played in which lane; 0, the mean-best one, where nothing else was chosen. */
final class LaneChoice {
    private static final byte[] MEAN = {};

    private final List<byte[]> ofLane = new ArrayList<>();

    /** The choices of all states, or of the first few. */
    void set(Lane lane, byte[] choices) {
        while (ofLane.size() <= lane.number) {
            ofLane.add(MEAN);
        }
        ofLane.set(lane.number, choices);
    }

    int option(Lane lane, int state) {
        if (lane.number >= ofLane.size() || state >= ofLane.get(lane.number).length) {
            return 0;
        }
        return ofLane.get(lane.number)[state];
    }

    /** By option, whether any lane plays it in this state. */
    boolean[] played(int state, int options) {
        boolean[] played = new boolean[options];
        for (byte[] lane : ofLane) {
            if (state < lane.length) {
                played[lane[state]] = true;
            }
        }
        return played;
    }
}
