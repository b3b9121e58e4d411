package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;
import loopwright.putting.LevelGreenOdds;
import loopwright.putting.LevelPace;

/**
 * Putting for the target on a level green. From a distance node, with U the chance of the target and k the lane:
 * U(k) = max over paces of P(holed) H(k - 1) + sum over leaves of P(leave) U(leave, k - 1). The odds are integrals, so
 * nothing is chosen on chance. The first field to solve a lane chooses; other days follow its choice.
 */
final class PaceLanes implements GreenLanes {
    /** Below this gain the pace that needs fewest putts is kept. */
    private static final double GAIN = 1e-6;

    private final GreenCells green;
    private final LevelGreenOdds odds;
    private final HandOver after;
    private final PaceChoice choice;
    private final List<double[]> ofNode = new ArrayList<>();
    private final int nodes;

    PaceLanes(GreenCells green, LevelGreenOdds odds, HandOver after, PaceChoice choice) {
        this.green = green;
        this.odds = odds;
        this.after = after;
        this.choice = choice;
        nodes = odds.nodeCount();
    }

    @Override
    public void solve(Lane lane) {
        while (ofNode.size() <= lane.number) {
            ofNode.add(new double[nodes]);
        }
        double[] out = ofNode.get(lane.number);
        if (lane.settled()) {
            java.util.Arrays.fill(out, after.at(lane.inHand));
            return;
        }
        Lane next = lane.after(1);
        double holed = after.at(next.inHand);
        double[] left = ofNode.get(next.number);
        if (!choice.has(lane)) {
            choice.set(lane, choose(holed, left));
        }
        for (int node = 0; node < nodes; node++) {
            out[node] = chance(odds.paces(node).get(choice.at(lane, node)), holed, left);
        }
    }

    private byte[] choose(double holed, double[] left) {
        byte[] pace = new byte[nodes];
        for (int node = 0; node < nodes; node++) {
            List<LevelPace> paces = odds.paces(node);
            int best = odds.bestPaceIndex(node);
            double most = chance(paces.get(best), holed, left) + GAIN;
            for (int i = 0; i < paces.size(); i++) {
                double c = chance(paces.get(i), holed, left);
                if (c > most) {
                    most = c;
                    best = i;
                }
            }
            pace[node] = (byte) best;
        }
        return pace;
    }

    private static double chance(LevelPace pace, double holed, double[] left) {
        return pace.holed() * holed + pace.expectedOverLeaves(left);
    }

    @Override
    public void read(Lane lane, double[] cells) {
        double[] values = ofNode.get(lane.number);
        double holed = after.at(lane.inHand);
        for (int i = 0; i < green.cells.length; i++) {
            cells[green.cells[i]] = green.mean(i, holed, values);
        }
    }
}
