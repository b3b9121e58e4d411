package loopwright.putting;

import java.util.ArrayList;
import java.util.List;

/**
 * Every way to play one putt from one place of a sloped green: for several paces the start line that rolls through the
 * hole, how often the player holes it, and where his misses stop.
 *
 * <p>The player's errors are normal: direction with his start line's spread and his reading's share of the angle between
 * aim and hole, added as independent; energy (square of the start speed, to which a level roll is proportional) with his
 * pace spread. What drops is decided as in {@link LevelPutt}. {@link HoleLines} gives the lines, {@link DropRegion} what
 * drops, {@link RestGrid} the places of rest.
 */
public final class PuttFrom {
    private static final double DEVIATIONS = SlopedIntegral.DEVIATIONS;
    private static final double FASTEST = Cup.CENTRE_SPEED_METRES_PER_SECOND;

    /** Overshoots in metres tried on every putt. */
    private static final double[] OVERSHOOTS = {-0.5, -0.15, 0.05, 0.2, 0.35, 0.5, 0.75, 1.1};

    private final PuttingSkill skill;
    private final double holeX;
    private final double holeY;
    private final double metres;
    private final double towards;
    private final HoleLines lines;
    private final RestGrid rests;
    private final DropRegion region;
    private final double brake;

    public PuttFrom(GreenRoll roll, PuttingSkill skill, double ballX, double ballY, double holeX, double holeY) {
        this.skill = skill;
        this.holeX = holeX;
        this.holeY = holeY;
        this.metres = Math.hypot(holeX - ballX, holeY - ballY);
        this.towards = Math.atan2(holeX - ballX, holeY - ballY);
        if (!(metres > Cup.RADIUS_METRES)) {
            throw new IllegalArgumentException("a putt starts outside the hole, not " + metres + " m from its centre");
        }
        this.lines = new HoleLines(roll, ballX, ballY, holeX, holeY);
        this.region = new DropRegion(lines);
        this.brake = roll.decelerationTowards(holeX, holeY, Math.sin(towards), Math.cos(towards));
        this.rests = new RestGrid(roll, ballX, ballY, span());
    }

    private RestGrid.Span span() {
        double least = lines.leastStart();
        double most = lines.mostStart();
        double wide = DEVIATIONS * directionSd(Math.max(Math.abs(least), Math.abs(most)));
        double softest = softer(OVERSHOOTS[0]) * (1 - DEVIATIONS * skill.paceSd());
        double firmest = lines.energyAt(FASTEST) * (1 + DEVIATIONS * skill.paceSd());
        return new RestGrid.Span(
                towards + least - wide,
                towards + most + wide,
                Math.max(0.1 * lines.energyAt(HoleLines.SLOWEST), softest),
                firmest);
    }

    /** Energy of a ball that dies {@code -past} metres short of the hole. */
    private double softer(double past) {
        double lacking = 2 * brake * past * lines.energyPerSquare(1);
        return Math.max(0.3 * lines.energyAt(HoleLines.SLOWEST), lines.energyAt(HoleLines.SLOWEST) + lacking);
    }

    /** Start line and reading together at an angle between aim and hole. */
    private double directionSd(double aim) {
        return Math.hypot(skill.startLineSdRadians(), skill.readingSd() * aim);
    }

    /** The paces, softest first; those too firm to drop at all are left out. */
    public List<SlopedPace> paces(PolarNodes nodes) {
        List<SlopedPace> paces = new ArrayList<>();
        for (double past : OVERSHOOTS) {
            if (past < 0 && metres + past > metres / 2) {
                paces.add(pace(past, softer(past), lines.startAt(HoleLines.SLOWEST), nodes));
            } else if (past > 0 && past < pastAt(FASTEST)) {
                double speed = speedFor(past);
                paces.add(pace(past, lines.energyAt(speed), lines.startAt(speed), nodes));
            }
        }
        return List.copyOf(paces);
    }

    /** How far past the hole a ball stops that rolls through its centre with a speed. */
    private double pastAt(double speed) {
        double energy = lines.energyAt(speed);
        double bearing = towards + lines.startAt(speed);
        return Math.hypot(rests.x(bearing, energy) - holeX, rests.y(bearing, energy) - holeY);
    }

    private double speedFor(double past) {
        double low = HoleLines.SLOWEST;
        double high = FASTEST;
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            if (pastAt(middle) < past) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private SlopedPace pace(double past, double energy, double start, PolarNodes nodes) {
        return struck(new SlopedPace.Aim(past, start, start), energy, nodes);
    }

    /**
     * The same pace aimed to one side of the line through the centre: shares of the player's own spread of direction, +
     * right.
     */
    SlopedPace aside(SlopedPace pace, double share, PolarNodes nodes) {
        double centre = pace.throughCentreRadians();
        double start = centre + share * directionSd(centre);
        double energy = pace.startSpeed() * pace.startSpeed();
        return struck(new SlopedPace.Aim(pace.overshootMetres(), start, centre), energy, nodes);
    }

    private SlopedPace struck(SlopedPace.Aim aim, double energy, PolarNodes nodes) {
        double start = aim.startRadians();
        SlopedIntegral integral = new SlopedIntegral(
                new SlopedIntegral.Stroke(
                        start, directionSd(aim.throughCentreRadians()), energy, skill.paceSd() * energy),
                region);
        PolarLeaves leaves = new PolarLeaves(nodes);
        integral.misses(rests, towards, leaves);
        return new SlopedPace(aim, Math.sqrt(energy), integral.holed(), leaves);
    }
}
