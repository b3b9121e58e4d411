package loopwright.numerics;

/**
 * The band that holds 90 % of a quantity of which some draws are known. The law is taken as normal, with the mean and the
 * standard deviation of the draws, so that two dozen suffice: their standard deviation is good to a seventh.
 */
public record DrawnBand(double mean, double sd) {
    /** Standard deviations of a normal law that hold 90 % either side. */
    private static final double NINETY = 1.645;

    /** Of two draws or more. */
    public static DrawnBand of(double[] draws) {
        double mean = 0;
        for (double draw : draws) {
            mean += draw / draws.length;
        }
        double squares = 0;
        for (double draw : draws) {
            squares += (draw - mean) * (draw - mean);
        }
        return new DrawnBand(mean, Math.sqrt(squares / (draws.length - 1)));
    }

    public double low() {
        return mean - NINETY * sd;
    }

    public double high() {
        return mean + NINETY * sd;
    }
}
