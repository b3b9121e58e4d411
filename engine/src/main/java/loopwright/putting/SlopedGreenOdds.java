package loopwright.putting;

import java.util.ArrayList;
import java.util.List;

/**
 * The odds of one player on a green whose slope was measured, for one hole location: from every place the chance of one,
 * two, three and more putts, with several paces to choose from.
 *
 * <p>V(p) = min over paces of 1 + E[V(place of rest)] on {@link PolarNodes} round the hole, where each pace is {@link
 * PuttFrom}'s; between nodes values are linear in distance and bearing. Places of rest beyond the outermost ring (43 m)
 * count as there. The green is taken to go on as its surface says: a ball that rolls off it is putted from where it
 * stops.
 */
public final class SlopedGreenOdds implements GreenOdds {
    /** Strokes that nobody could tell apart. */
    private static final double SAME = 0.001;
    /** Shares that sum to one but for rounding. */
    private static final double WHOLE = 1 - 1e-9;

    private final GreenRoll roll;
    private final PuttingSkill skill;
    private final double holeX;
    private final double holeY;
    private final PolarNodes nodes;
    private final List<List<SlopedPace>> paces;
    private final PuttingOut solution;

    public SlopedGreenOdds(GreenSurface surface, GreenSpeed speed, PuttingSkill skill, double holeX, double holeY) {
        this.roll = new GreenRoll(surface, speed);
        this.skill = skill;
        this.holeX = holeX;
        this.holeY = holeY;
        this.nodes = new PolarNodes(holeX, holeY);
        this.paces = everyNode();
        this.solution = PuttingOut.of(paces);
    }

    private List<List<SlopedPace>> everyNode() {
        List<List<SlopedPace>> all = new ArrayList<>();
        for (int node = 0; node < nodes.count(); node++) {
            if (nodes.metres(node) <= Cup.RADIUS_METRES) {
                all.add(List.of(inTheHole()));
            } else {
                all.add(from(nodes.x(node), nodes.y(node)));
            }
        }
        return List.copyOf(all);
    }

    private SlopedPace inTheHole() {
        PolarLeaves none = new PolarLeaves(nodes);
        none.close();
        return new SlopedPace(new SlopedPace.Aim(0, 0, 0), 0, 1, none);
    }

    private List<SlopedPace> from(double x, double y) {
        return new PuttFrom(roll, skill, x, y, holeX, holeY).paces(nodes);
    }

    /** Shares of the player's spread of direction that the advice tries to either side of the line through the centre. */
    private static final double[] ASIDE = {-0.4, -0.2, 0, 0.2, 0.4};

    /** The nodes all leaves refer to. */
    public PolarNodes nodes() {
        return nodes;
    }

    /** The candidate paces from a node, softest first. */
    public List<SlopedPace> paces(int node) {
        return paces.get(node);
    }

    /** Expected putts from a node. */
    public double expectedPutts(int node) {
        return solution.expected()[node];
    }

    /** Expected putts from a place, between nodes. */
    @Override
    public double expectedPutts(double x, double y) {
        return at(x, y, solution.expected());
    }

    /** Probability of exactly this many putts from a place; the last count told apart holds all that need more. */
    @Override
    public double probability(double x, double y, int putts) {
        if (putts < 1) {
            throw new IllegalArgumentException("a number of putts is one or more, not " + putts);
        }
        return putts > LevelGreenOdds.MOST_PUTTS ? 0 : at(x, y, solution.probability(putts));
    }

    private double at(double x, double y, double[] values) {
        double[] sum = new double[1];
        nodes.share(x, y, (node, share) -> sum[0] += share * values[node]);
        return sum[0];
    }

    /**
     * One putt from an exact place, worked out afresh: every pace with what follows it, and the best line for the best
     * pace. What nobody could tell apart goes to the softer pace and to the line through the centre.
     */
    public PuttAdvice advice(double x, double y) {
        if (Math.hypot(x - holeX, y - holeY) <= Cup.RADIUS_METRES) {
            return advice(inTheHole(), List.of(inTheHole()));
        }
        PuttFrom from = new PuttFrom(roll, skill, x, y, holeX, holeY);
        List<SlopedPace> choices = from.paces(nodes);
        SlopedPace pace = softest(choices);
        List<SlopedPace> lines = new ArrayList<>();
        for (double share : ASIDE) {
            lines.add(from.aside(pace, share, nodes));
        }
        SlopedPace line = best(lines);
        return advice(expectedPutts(pace) - expectedPutts(line) < SAME ? pace : line, choices);
    }

    /** The best pace; of those that cost less than a thousandth of a stroke more, the softest that reaches the hole. */
    private SlopedPace softest(List<SlopedPace> choices) {
        SlopedPace best = best(choices);
        double most = expectedPutts(best) + SAME;
        return choices.stream()
                .filter(pace -> pace.overshootMetres() > 0 && expectedPutts(pace) <= most)
                .findFirst()
                .orElse(best);
    }

    private SlopedPace best(List<SlopedPace> choices) {
        return java.util.Collections.min(choices, java.util.Comparator.comparingDouble(this::expectedPutts));
    }

    /** Expected putts, this one included, if a pace of this green is played. */
    public double expectedPutts(SlopedPace pace) {
        return 1 + pace.expectedOverLeaves(solution.expected());
    }

    private PuttAdvice advice(SlopedPace best, List<SlopedPace> choices) {
        double two = best.expectedOverLeaves(solution.probability(1));
        return new PuttAdvice(best, choices, best.holed(), two, 1 - best.holed() - two, expectedPutts(best));
    }

    /** A stroke meant: start direction from the line ball to hole, + right, and rolling speed at the start, m/s. */
    public record Stroke(double startRadians, double startSpeed) {}

    /**
     * The best pace's stroke from any place: of the nearest node's best pace, direction and energy straight between the
     * nodes about it. A good player's aim, for play putt by putt; {@link #advice} is exact and a thousand times dearer.
     */
    public Stroke stroke(double x, double y) {
        double metres = Math.hypot(x - holeX, y - holeY);
        double out = Math.max(1, PolarNodes.NEAREST_METRES / Math.max(1e-6, metres));
        double fromX = holeX + out * (x - holeX);
        double fromY = holeY + out * (y - holeY);
        int[] nearest = {0};
        double[] most = {-1};
        nodes.share(fromX, fromY, (node, share) -> {
            if (share > most[0]) {
                most[0] = share;
                nearest[0] = node;
            }
        });
        double past = best(paces(nearest[0])).overshootMetres();
        double[] sum = new double[3];
        nodes.share(
                fromX,
                fromY,
                (node, share) -> paces(node).stream()
                        .filter(pace -> pace.overshootMetres() == past)
                        .forEach(pace -> {
                            sum[0] += share;
                            sum[1] += share * pace.startRadians();
                            sum[2] += share * pace.startSpeed() * pace.startSpeed();
                        }));
        return sum[0] > WHOLE ? new Stroke(sum[1], Math.sqrt(sum[2])) : exactly(x, y);
    }

    /** Where the nodes about a place do not share a pace. */
    private Stroke exactly(double x, double y) {
        SlopedPace pace = best(from(x, y));
        return new Stroke(pace.startRadians(), pace.startSpeed());
    }

    /** The roll on this green, to trace a putt. */
    public GreenRoll roll() {
        return roll;
    }
}
