package loopwright.player;

/**
 * What the usual solid strike of a swing becomes on the day, and what each part of the day adds to the length it plays:
 * + makes the shot play longer than it measures.
 *
 * @param finishMetres where it comes to rest, from the ball
 * @param driftRadians how far the wind takes its finish to the right of where still air would have it
 * @param airMetres what thicker or thinner air than the standard costs
 * @param windMetres what the wind costs
 * @param heightMetres what higher ground costs
 * @param groundMetres what softer ground than ordinary costs in run
 */
public record PlayingLength(
        double finishMetres,
        double driftRadians,
        double airMetres,
        double windMetres,
        double heightMetres,
        double groundMetres) {

    /** Length of the same strike in still standard air on ordinary level ground: what the shot plays. */
    public double playsMetres() {
        return finishMetres + airMetres + windMetres + heightMetres + groundMetres;
    }
}
