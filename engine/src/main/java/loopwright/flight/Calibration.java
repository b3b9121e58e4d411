package loopwright.flight;

/**
 * The two numbers by which one make of ball may differ from the published coefficients; nothing else is ever tuned.
 * Ball to ball, measured drag differs by less than 0.05 in 0.25 above Re 1e5 (Lyu, Kensrud, Smith and Tosaya 2018),
 * hence the limits.
 *
 * @param drag multiplies every drag coefficient, 0.8 to 1.2
 * @param lift multiplies every lift coefficient, 0.8 to 1.2
 */
public record Calibration(double drag, double lift) {
    public static final Calibration NONE = new Calibration(1, 1);

    public Calibration {
        if (!(drag >= 0.8 && drag <= 1.2) || !(lift >= 0.8 && lift <= 1.2)) {
            throw new IllegalArgumentException(
                    "calibration multipliers lie between 0.8 and 1.2, not " + drag + " and " + lift);
        }
    }
}
