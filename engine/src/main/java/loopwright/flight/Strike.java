package loopwright.flight;

/** Where and how one strike comes down on the day; a mutable result that hot loops reuse. */
public final class Strike {
    /** Along the aim, metres. */
    public double forwardMetres;
    /** To the right of the aim, metres. */
    public double rightMetres;
    /** Greatest height of the flight, metres. */
    public double apexMetres;
    /** Descent below the horizontal. */
    public double descentRadians;
    /** Horizontal direction of travel at landing, relative to the aim, + right. */
    public double headingRadians;
    /** Speed at landing, m/s. */
    public double landingSpeed;
    /**
     * Bounce and roll on a level fairway of the day's firmness, metres; as the model has it, before a player's own gap.
     */
    public double fairwayRunMetres;
    /** The same on a level green of the day's speed; negative: it comes back. */
    public double greenRunMetres;

    /** Moves the landing to ground higher (or, negative, lower) than where the ball was struck: see {@link Descent}. */
    public void shiftToHeight(double riseMetres) {
        float bend = Descent.bend(landingSpeed, descentRadians);
        double back = Descent.back((float) riseMetres, 0, Descent.steepness(descentRadians), bend);
        forwardMetres -= back * Math.cos(headingRadians);
        rightMetres -= back * Math.sin(headingRadians);
    }
}
