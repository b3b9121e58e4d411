package loopwright.player;

import java.util.List;

/**
 * A short shot whose length the player chooses: putt from off the green, chip, pitch, lob, bunker shot or punch.
 *
 * <p>For an intended total distance d (landing plus run) the solid ball finishes at distance N(d, (a + b d)^2) in
 * direction N(0, sd^2); {@code runShare} of it is run on a green. Mishits scale d by their carry factor.
 *
 * @param minMetres shortest intended distance
 * @param maxMetres longest intended distance
 * @param distanceSdFloorMetres a, 0 or more
 * @param distanceSdShare b, 0 or more
 * @param directionSdRadians spread of direction
 * @param runShare 0 to 1
 */
public record TouchShot(
        Kind kind,
        double minMetres,
        double maxMetres,
        double distanceSdFloorMetres,
        double distanceSdShare,
        double directionSdRadians,
        double runShare,
        List<Mishit> mishits,
        Evidence evidence) {

    /**
     * The trade's short shots. A bunker shot is played from sand only, a putt from off the green only where the grass is mown
     * short, a punch under branches, the others from anywhere but sand.
     */
    public enum Kind {
        CHIP,
        PITCH,
        BUNKER_SHOT,
        PUNCH,
        FRINGE_PUTT,
        LOB
    }

    public TouchShot {
        mishits = List.copyOf(mishits);
        if (!(minMetres > 0 && maxMetres > minMetres)) {
            throw new IllegalArgumentException("a short shot needs 0 < shortest < longest distance");
        }
        if (!(distanceSdFloorMetres >= 0 && distanceSdShare >= 0 && distanceSdFloorMetres + distanceSdShare > 0)
                || !(directionSdRadians > 0)
                || !(runShare >= 0 && runShare <= 1)) {
            throw new IllegalArgumentException("a short shot needs spreads above zero and a run share of 0 to 1");
        }
        if (!(mishits.stream().mapToDouble(Mishit::rate).sum() < 1)) {
            throw new IllegalArgumentException("the mishit rates of a short shot must sum to less than 1");
        }
    }

    /** The intended distance as far as the shot can be meant: held between its shortest and longest. */
    public double possibleMetres(double intendedMetres) {
        return Math.max(minMetres, Math.min(maxMetres, intendedMetres));
    }

    public double distanceSdMetres(double intendedMetres) {
        return distanceSdFloorMetres + distanceSdShare * intendedMetres;
    }

    /** The shot with its spread (length and direction) multiplied, as on a good or bad day. */
    public TouchShot withSpread(double factor) {
        return new TouchShot(
                kind,
                minMetres,
                maxMetres,
                distanceSdFloorMetres * factor,
                distanceSdShare * factor,
                directionSdRadians * factor,
                runShare,
                mishits,
                evidence);
    }

    /** What the spread may be as well: factors that hold it with 90 %, 1 being what is planned with. */
    public Interval spreadRange() {
        double prior = Math.hypot(PriorTable.TOUCH_SHARED_LOG_SPREAD_SD, PriorTable.TOUCH_OWN_LOG_SPREAD_SD);
        double half = 1.645 * prior * Math.sqrt(evidence.assumedShare());
        return new Interval(1, Math.exp(-half), Math.exp(half));
    }

    /** The shot with all rates of mishits multiplied. */
    public TouchShot withMishitsTimes(double factor) {
        return new TouchShot(
                kind,
                minMetres,
                maxMetres,
                distanceSdFloorMetres,
                distanceSdShare,
                directionSdRadians,
                runShare,
                mishits.stream().map(m -> m.withRate(m.rate() * factor)).toList(),
                evidence);
    }

    /** The shot with what it now rests on. */
    TouchShot resting(Evidence newEvidence) {
        return new TouchShot(
                kind,
                minMetres,
                maxMetres,
                distanceSdFloorMetres,
                distanceSdShare,
                directionSdRadians,
                runShare,
                mishits,
                newEvidence);
    }
}
