package loopwright.putting;

/**
 * One putt on a level green, exact and continuous: where a given stroke leaves the ball.
 *
 * <p>A ball struck towards the hole from distance d with start direction error e and a level roll L passes the hole's centre
 * at offset b = d sin e after d cos e. It meets the rim at r = d cos e - sqrt(R^2 - b^2), if it gets there, with speed
 * sqrt(2 a (L - r)), and drops as {@link Cup} says; otherwise it comes to rest at L. The stroke: e is normal with the
 * player's direction spread, L is normal about d + overshoot with a spread of paceSd (d + overshoot), never below 0.
 *
 * @param directionSdRadians spread of the start direction, above 0
 * @param paceSd spread of the roll as a share of the intended roll, above 0
 * @param deceleration of the rolling ball, m/s2, above 0
 */
public record LevelPutt(double directionSdRadians, double paceSd, double deceleration) {
    public LevelPutt {
        if (!(directionSdRadians > 0) || !(paceSd > 0) || !(deceleration > 0)) {
            throw new IllegalArgumentException("a putt needs spreads and a deceleration above zero");
        }
    }

    /** The putt of a player on a green whose slope nobody measured: reading is part of the direction spread. */
    public static LevelPutt on(GreenSpeed speed, PuttingSkill skill) {
        return new LevelPutt(skill.directionSdRadians(), skill.paceSd(), speed.deceleration());
    }

    /**
     * Plays one putt.
     *
     * @param metres distance to the centre of the hole
     * @param overshootMetres how far past the hole the player means the ball to roll
     * @param lineNormal a standard normal draw for the start direction
     * @param paceNormal a standard normal draw for the pace
     * @return 0 if holed, else the distance left to the centre of the hole
     */
    public double play(double metres, double overshootMetres, double lineNormal, double paceNormal) {
        if (metres <= Cup.RADIUS_METRES) {
            return 0;
        }
        double roll = Math.max(0, (metres + overshootMetres) * (1 + paceSd * paceNormal));
        double angle = directionSdRadians * lineNormal;
        return drops(metres, angle, roll) ? 0 : leftMetres(metres, angle, roll);
    }

    boolean drops(double metres, double angle, double roll) {
        double offset = Math.abs(metres * Math.sin(angle));
        if (offset >= Cup.RADIUS_METRES || Math.cos(angle) <= 0) {
            return false;
        }
        double past = roll - rimMetres(metres, angle);
        double most = Cup.maxSpeedMetresPerSecond(offset);
        return past >= 0 && 2 * deceleration * past <= most * most;
    }

    /** Length of the path up to the rim; up to the nearest point where it misses the hole. */
    public static double rimMetres(double metres, double angle) {
        return metres * Math.cos(angle) - Cup.halfChordMetres(metres * Math.sin(angle));
    }

    /** How much longer than the way to the rim a roll may be and still drop; 0 where the path misses the hole. */
    public double windowMetres(double metres, double angle) {
        double most = Cup.maxSpeedMetresPerSecond(metres * Math.sin(angle));
        return most * most / (2 * deceleration);
    }

    static double leftMetres(double metres, double angle, double roll) {
        double forward = metres - roll * Math.cos(angle);
        return Math.hypot(forward, roll * Math.sin(angle));
    }
}
