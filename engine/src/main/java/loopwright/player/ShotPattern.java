package loopwright.player;

import java.util.List;

/**
 * Where one club, swung with one effort from a good lie, lands in still standard air on level ground: a mixture of
 * a solid component and mishits.
 *
 * <p>Solid: carry C and finish direction D are jointly normal; the ball lands at (C cos D, C sin D) forward and right of
 * the player along his aim. A mishit draws its carry factor and direction independently; its carry is the factor times
 * the solid mean.
 *
 * @param carryMetres mean solid carry, above 0
 * @param carrySdMetres standard deviation of the solid carry, above 0
 * @param directionRadians mean finish direction relative to the aim, + right
 * @param directionSdRadians its standard deviation
 * @param correlation between carry and direction, -1 to 1
 * @param runMetres mean bounce and roll of a solid shot on a level fairway of ordinary firmness, 0 or more
 * @param apexMetres greatest height of the solid flight
 * @param descentRadians angle of descent below the horizontal, 0 to pi/2
 * @param mishits rates sum to less than 1
 */
public record ShotPattern(
        double carryMetres,
        double carrySdMetres,
        double directionRadians,
        double directionSdRadians,
        double correlation,
        double runMetres,
        double apexMetres,
        double descentRadians,
        List<Mishit> mishits) {
    public ShotPattern {
        mishits = List.copyOf(mishits);
        if (!(carryMetres > 0) || !(carrySdMetres > 0) || !(directionSdRadians > 0)) {
            throw new IllegalArgumentException("a pattern needs carry and spreads above zero");
        }
        if (!(correlation > -1 && correlation < 1)) {
            throw new IllegalArgumentException("a correlation lies between -1 and 1, not " + correlation);
        }
        if (!(runMetres >= 0) || !(apexMetres >= 0) || !(descentRadians >= 0 && descentRadians <= Math.PI / 2)) {
            throw new IllegalArgumentException("run, apex and descent must be zero or more");
        }
        if (!(mishits.stream().mapToDouble(Mishit::rate).sum() < 1)) {
            throw new IllegalArgumentException("the mishit rates of a pattern must sum to less than 1");
        }
    }

    public double mishitRate() {
        return mishits.stream().mapToDouble(Mishit::rate).sum();
    }

    /** Standard deviation of the directions of all balls, mishits included, radians. */
    public double wholeDirectionSdRadians() {
        double mean = 0;
        double second = (1 - mishitRate()) * directionSdRadians * directionSdRadians;
        for (Mishit m : mishits) {
            mean += m.rate() * m.directionRadians();
            second += m.rate()
                    * (m.directionRadians() * m.directionRadians() + m.directionSdRadians() * m.directionSdRadians());
        }
        return Math.sqrt(second - mean * mean);
    }

    public double totalMetres() {
        return carryMetres + runMetres;
    }

    /** The pattern with its spread (carry and direction) multiplied, as on a good or bad day. */
    public ShotPattern withSpread(double factor) {
        return new ShotPattern(
                carryMetres,
                carrySdMetres * factor,
                directionRadians,
                directionSdRadians * factor,
                correlation,
                runMetres,
                apexMetres,
                descentRadians,
                mishits);
    }

    /** The pattern with its spread of direction alone multiplied. */
    public ShotPattern withDirectionSpread(double factor) {
        return new ShotPattern(
                carryMetres,
                carrySdMetres,
                directionRadians,
                directionSdRadians * factor,
                correlation,
                runMetres,
                apexMetres,
                descentRadians,
                mishits);
    }

    /** The pattern with its mean direction turned, as on a day with a bias. */
    public ShotPattern turned(double radians) {
        return new ShotPattern(
                carryMetres,
                carrySdMetres,
                directionRadians + radians,
                directionSdRadians,
                correlation,
                runMetres,
                apexMetres,
                descentRadians,
                mishits);
    }

    /** The pattern with carry and run multiplied; spreads stay the same share of the carry. */
    public ShotPattern longer(double factor) {
        return new ShotPattern(
                carryMetres * factor,
                carrySdMetres * factor,
                directionRadians,
                directionSdRadians,
                correlation,
                runMetres * factor,
                apexMetres * factor,
                descentRadians,
                mishits);
    }

    /** The pattern with all rates of mishits multiplied. */
    public ShotPattern withMishitsTimes(double factor) {
        return new ShotPattern(
                carryMetres,
                carrySdMetres,
                directionRadians,
                directionSdRadians,
                correlation,
                runMetres,
                apexMetres,
                descentRadians,
                mishits.stream().map(m -> m.withRate(m.rate() * factor)).toList());
    }
}
