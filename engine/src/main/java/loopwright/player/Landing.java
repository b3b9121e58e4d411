package loopwright.player;

/** Where and how one strike comes down, in the player's own frame; a mutable result that hot loops reuse. */
public final class Landing {
    /** Metres along the aim. */
    public double forwardMetres;
    /** Metres to the right of the aim. */
    public double rightMetres;
    /** Run after landing, metres of level fairway. */
    public double runMetres;
    /** Greatest height of the flight, metres. */
    public double apexMetres;
}
