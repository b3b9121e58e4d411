package loopwright.putting;

/** The odds of holing out on a green for one player, as the solvers and the referee read them. */
public interface PuttingOdds {
    /** Expected putts from a distance in metres (0 or more); 1 or more. */
    double expectedPutts(double metres);

    /** Probability that exactly {@code putts} (1 or more) are needed from a distance in metres. */
    double probability(double metres, int putts);
}
