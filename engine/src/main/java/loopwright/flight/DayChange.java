package loopwright.flight;

/**
 * What a day makes of one strike, beside what still standard air and ordinary level ground make of it; a mutable result
 * that hot loops reuse.
 */
public final class DayChange {
    /** Keeps a run of nearly nothing from multiplying what a day does to it, metres. */
    public static final double RUN_OFFSET_METRES = 3;

    /** Landing place: how much further along the aim, metres. */
    public double forwardMetres;
    /** How much further to the right of the aim, metres. */
    public double rightMetres;
    /** Multiplies the greatest height of the flight. */
    public double apexFactor;
    /** Descent on the day, below the horizontal. */
    public double descentRadians;
    /** Speed at landing on the day, m/s. */
    public double landingSpeed;
    /** How much further right the ball travels at landing. */
    public double turnRadians;
    /** Multiplies run + {@value #RUN_OFFSET_METRES} m on a level fairway. */
    public double fairwayRunFactor;
    /** The same on a level green. */
    public double greenRunFactor;

    /** Sets everything from a strike of the day and the same strike of the usual day, on level ground. */
    public void beside(Strike day, Strike usual) {
        forwardMetres = day.forwardMetres - usual.forwardMetres;
        rightMetres = day.rightMetres - usual.rightMetres;
        compare(day, usual);
    }

    /** Sets what does not depend on how the landing was found: heights, headings and runs of the day and the usual day. */
    void compare(Strike day, Strike usual) {
        apexFactor = usual.apexMetres > 0 ? day.apexMetres / usual.apexMetres : 1;
        descentRadians = day.descentRadians;
        landingSpeed = day.landingSpeed;
        turnRadians = day.headingRadians - usual.headingRadians;
        fairwayRunFactor = factor(day.fairwayRunMetres, usual.fairwayRunMetres);
        greenRunFactor = factor(day.greenRunMetres, usual.greenRunMetres);
    }

    /** A ball that comes back counts as one that stays. */
    private static double factor(double day, double usual) {
        return (Math.max(0, day) + RUN_OFFSET_METRES) / (Math.max(0, usual) + RUN_OFFSET_METRES);
    }
}
