package loopwright.action;

import java.util.List;
import loopwright.player.Club;
import loopwright.player.Swing;

/**
 * What is left into the greens of the par 4s, as shares that sum to 1: the shortest full club that reaches. Driver, woods,
 * hybrids and irons up to the 4 are long clubs, 5 to 7 middle, 8 and 9 short (hybrids by their number too).
 *
 * @param outOfReach no club reaches
 */
public record ApproachClubs(double longClub, double middleIron, double shortIron, double wedge, double outOfReach) {
    static final ApproachClubs NONE = new ApproachClubs(0, 0, 0, 0, 0);

    /** Share of approaches with a middle iron or less: what the right tees leave into most par 4s. */
    public double middleIronOrLess() {
        return middleIron + shortIron + wedge;
    }

    ApproachClubs plus(ApproachClubs o, double weight) {
        return new ApproachClubs(
                longClub + weight * o.longClub,
                middleIron + weight * o.middleIron,
                shortIron + weight * o.shortIron,
                wedge + weight * o.wedge,
                outOfReach + weight * o.outOfReach);
    }

    /** Share of approaches that would have to change for two players to have like clubs: 0 the same, 1 nothing alike. */
    public double differenceTo(ApproachClubs o) {
        return (Math.abs(longClub - o.longClub)
                        + Math.abs(middleIron - o.middleIron)
                        + Math.abs(shortIron - o.shortIron)
                        + Math.abs(wedge - o.wedge)
                        + Math.abs(outOfReach - o.outOfReach))
                / 2;
    }

    /** One approach of this length. */
    static ApproachClubs of(double metres, List<Swing> swings) {
        Swing fits = null;
        for (Swing s : swings) {
            boolean reaches = s.isFull()
                    && s.club().family() != Club.Family.DRIVER
                    && s.pattern().totalMetres() >= metres;
            if (reaches
                    && (fits == null
                            || s.pattern().totalMetres() < fits.pattern().totalMetres())) {
                fits = s;
            }
        }
        if (fits == null) {
            return new ApproachClubs(0, 0, 0, 0, 1);
        }
        if (fits.club().family() == Club.Family.WEDGE) {
            return new ApproachClubs(0, 0, 0, 1, 0);
        }
        boolean numbered =
                fits.club().family() == Club.Family.IRON || fits.club().family() == Club.Family.HYBRID;
        int number = numbered ? fits.club().name().charAt(0) - '0' : 0;
        return number >= 8
                ? new ApproachClubs(0, 0, 1, 0, 0)
                : number >= 5 ? new ApproachClubs(0, 1, 0, 0, 0) : new ApproachClubs(1, 0, 0, 0, 0);
    }
}
