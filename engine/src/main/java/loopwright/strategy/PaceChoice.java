package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;

/** The pace to putt at from every distance node, by lane; where none was chosen, the one that needs fewest putts. */
final class PaceChoice {
    private static final byte[] USUAL = {};

    private final List<byte[]> paceOfNode = new ArrayList<>();

    void set(Lane lane, byte[] pace) {
        while (paceOfNode.size() <= lane.number) {
            paceOfNode.add(USUAL);
        }
        paceOfNode.set(lane.number, pace);
    }

    boolean has(Lane lane) {
        return lane.number < paceOfNode.size() && paceOfNode.get(lane.number).length > 0;
    }

    int at(Lane lane, int node) {
        return paceOfNode.get(lane.number)[node];
    }
}
