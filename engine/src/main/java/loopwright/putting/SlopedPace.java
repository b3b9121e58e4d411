package loopwright.putting;

/** One pace of one putt on a sloped green: its line, how often it is holed, and where the misses stop. */
public final class SlopedPace implements CandidatePace {
    private final double overshootMetres;
    private final double startRadians;
    private final double throughCentreRadians;
    private final double startSpeed;
    private final double holed;
    private final PolarLeaves leaves;

    SlopedPace(Aim aim, double startSpeed, double holed, PolarLeaves leaves) {
        this.overshootMetres = aim.overshootMetres();
        this.startRadians = aim.startRadians();
        this.throughCentreRadians = aim.throughCentreRadians();
        this.startSpeed = startSpeed;
        this.holed = holed;
        this.leaves = leaves;
    }

    /** Pace and line meant. */
    record Aim(double overshootMetres, double startRadians, double throughCentreRadians) {}

    /** How far past the hole it would stop if the hole were covered; negative: short. */
    @Override
    public double overshootMetres() {
        return overshootMetres;
    }

    /** Start direction aimed at, from the line ball to hole, + right. */
    public double startRadians() {
        return startRadians;
    }

    /** Start direction that rolls through the centre of the hole at this pace: the whole break. */
    public double throughCentreRadians() {
        return throughCentreRadians;
    }

    /** Rolling speed at the start, m/s. */
    public double startSpeed() {
        return startSpeed;
    }

    @Override
    public double holed() {
        return holed;
    }

    @Override
    public double expectedOverLeaves(double[] nodeValues) {
        return leaves.expected(nodeValues);
    }

    /** Where the misses stop, on the polar nodes of {@link SlopedGreenOdds}. */
    public PolarLeaves leaves() {
        return leaves;
    }
}
