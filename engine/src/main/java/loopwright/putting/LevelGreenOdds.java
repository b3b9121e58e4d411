package loopwright.putting;

import java.util.List;

/**
 * The odds of one player on a level green: of every distance the chance of one, two, three and more putts, with several
 * paces to choose from, solved together.
 *
 * <p>V(d) = min over paces of 1 + E[V(distance left)], V = 1 inside the hole's radius, where one putt is what {@link
 * LevelPutt} plays. The distances are nodes (5 cm apart to 3 m, then 4 % apart to 61 m); each pace's misses are
 * integrated over the two normal errors once ({@link LevelPace}) and shared between nodes; the fixed point is reached by
 * sweeps in ascending distance. A fine table (2 cm) answers in a few nanoseconds. Beyond 61 m the last interval is drawn
 * on.
 *
 * <p>On a green whose slope nobody measured this stands in for the real green: no break is claimed, and what reading
 * costs on average is part of the player's direction spread ({@link PuttingSkill#directionSdRadians}).
 */
public final class LevelGreenOdds implements PuttingOdds {
    /** Putts are told apart up to this many; the last one holds "this many or more". */
    public static final int MOST_PUTTS = 8;

    private static final double STEP_METRES = 0.02;

    private final LevelPutt putt;
    private final double[] nodes;
    private final List<List<LevelPace>> paces;
    private final double[] expectedAtNodes;
    private final FineTable expected;
    private final FineTable overshoot;
    private final FineTable[] probability;

    public LevelGreenOdds(PuttingSkill skill, GreenSpeed speed) {
        this(LevelPutt.on(speed, skill));
    }

    public LevelGreenOdds(LevelPutt putt) {
        this.putt = putt;
        nodes = LevelNodes.metres();
        paces = LevelNodes.paces(nodes, putt);
        PuttingOut solution = PuttingOut.of(paces);
        expectedAtNodes = solution.expected();
        expected = FineTable.of(nodes, expectedAtNodes, STEP_METRES);
        overshoot = FineTable.of(nodes, solution.overshoot(), STEP_METRES);
        probability = new FineTable[MOST_PUTTS];
        for (int k = 0; k < MOST_PUTTS; k++) {
            probability[k] = FineTable.of(nodes, solution.probability(k + 1), STEP_METRES);
        }
    }

    @Override
    public double expectedPutts(double metres) {
        return expected.at(metres);
    }

    /** The last count told apart, {@link #MOST_PUTTS}, holds all that need more. */
    @Override
    public double probability(double metres, int putts) {
        if (putts < 1) {
            throw new IllegalArgumentException("a number of putts is one or more, not " + putts);
        }
        if (putts > MOST_PUTTS) {
            return 0;
        }
        return Math.max(0, Math.min(1, probability[putts - 1].at(metres)));
    }

    /** How far past the hole the best pace means to roll from a distance; negative: short of it. */
    public double bestOvershootMetres(double metres) {
        return overshoot.at(metres);
    }

    /** The putt these odds are made of, for a referee that plays it with fresh draws. */
    public LevelPutt putt() {
        return putt;
    }

    /** Distances in metres, ascending from 0, that the leave distributions of the paces refer to. */
    public double[] nodes() {
        return nodes.clone();
    }

    /** The candidate paces from a node: what a player who needs one putt, or must not need three, chooses among. */
    public List<LevelPace> paces(int node) {
        return paces.get(node);
    }

    /** Expected putts after this one if a pace is played: the sum over its leaves. */
    public double expectedAfter(LevelPace pace) {
        return pace.expectedOverLeaves(expectedAtNodes);
    }

    public int nodeCount() {
        return nodes.length;
    }

    /** The pace from a node that leads to fewest putts. */
    public LevelPace bestPace(int node) {
        return paces.get(node).get(bestPaceIndex(node));
    }

    /** Its place among the paces. */
    public int bestPaceIndex(int node) {
        List<LevelPace> all = paces.get(node);
        int best = 0;
        for (int i = 1; i < all.size(); i++) {
            if (expectedAfter(all.get(i)) < expectedAfter(all.get(best))) {
                best = i;
            }
        }
        return best;
    }

    /** The node nearest to a distance. */
    public int nearestNode(double metres) {
        return LevelNodes.nearest(nodes, metres);
    }
}
