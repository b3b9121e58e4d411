package loopwright.putting;

/**
 * One putt on a sloped green, exact and continuous: the ball is rolled and either drops or stops. The referee's
 * counterpart to {@link SlopedGreenOdds}; it shares the roll and the hole with it, and no table.
 */
public final class SlopedPutt {
    private final GreenRoll roll;
    private final PuttingSkill skill;
    private final double holeX;
    private final double holeY;

    /** Where a putt ended: in the hole, or at a place. */
    public record Finish(boolean holed, double x, double y) {}

    public SlopedPutt(GreenSurface surface, GreenSpeed speed, PuttingSkill skill, double holeX, double holeY) {
        this.roll = new GreenRoll(surface, speed);
        this.skill = skill;
        this.holeX = holeX;
        this.holeY = holeY;
    }

    /**
     * Plays one putt.
     *
     * @param startRadians intended start direction from the line ball to hole, + right; the player's reading is off by a
     *     share of it
     * @param startSpeed intended rolling speed at the start, m/s
     * @param lineNormal a standard normal draw for the direction
     * @param paceNormal a standard normal draw for the energy
     */
    public Finish play(
            double x, double y, double startRadians, double startSpeed, double lineNormal, double paceNormal) {
        double directionSd = Math.hypot(skill.startLineSdRadians(), skill.readingSd() * startRadians);
        double bearing = Math.atan2(holeX - x, holeY - y) + startRadians + directionSd * lineNormal;
        double speed = startSpeed * Math.sqrt(Math.max(0, 1 + skill.paceSd() * paceNormal));
        RollWorkspace ball = new RollWorkspace(holeX, holeY);
        roll.roll(x, y, speed * Math.sin(bearing), speed * Math.cos(bearing), ball);
        boolean holed = Cup.drops(ball.speedSquared, ball.deceleration, Math.abs(ball.offset));
        return holed ? new Finish(true, holeX, holeY) : new Finish(false, ball.x, ball.y);
    }
}
