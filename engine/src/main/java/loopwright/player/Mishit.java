package loopwright.player;

/**
 * One way in which a swing goes wrong.
 *
 * @param rate share of all swings, 0 to 1
 * @param carryFactor carry as a share of the solid carry (mean), 0 to 2
 * @param carryFactorSd its standard deviation, 0 or more
 * @param directionRadians mean direction relative to the solid mean, + right
 * @param directionSdRadians its standard deviation
 * @param low true if the ball flies low, under branches and not over hazards' lips
 */
public record Mishit(
        Kind kind,
        double rate,
        double carryFactor,
        double carryFactorSd,
        double directionRadians,
        double directionSdRadians,
        boolean low) {

    /** The trade's names of bad strikes. */
    public enum Kind {
        THIN,
        FAT,
        HEEL,
        TOE,
        TOPPED,
        LEFT_IN_SAND,
        BLADED
    }

    public Mishit {
        if (!(rate >= 0 && rate <= 1)) {
            throw new IllegalArgumentException("a mishit rate lies between 0 and 1, not " + rate);
        }
        if (!(carryFactor >= 0 && carryFactor <= 5) || !(carryFactorSd >= 0) || !(directionSdRadians >= 0)) {
            throw new IllegalArgumentException("a mishit needs carry factor 0 to 5 and spreads of zero or more");
        }
    }

    public Mishit withRate(double newRate) {
        return new Mishit(kind, newRate, carryFactor, carryFactorSd, directionRadians, directionSdRadians, low);
    }
}
