package loopwright.flight;

/**
 * C_D = .2028 - .2159 S + 2.8466 S^2 + .0165 R, C_L = .0860 + .6463 S + 1.4789 S^2 - .0122 / R^2, with R = Re / 1e5.
 *
 * <p>Source: US Patent 6,186,002 B1 (Lieberman, Smits, Quintavalla, Thomas and Winfield, assigned to the USGA, 2001),
 * example fit "model 3" to balls launched in the indoor test range. Valid for 0.8 &lt; R &lt; 2.0 and 0.04 &lt; S &lt;
 * 0.22; outside, both arguments are held at the edge, except that lift falls in proportion to S below 0.04 (no spin, no
 * lift). Reproduces the patent's condition means within 0.002 (C_D) and 0.002 (C_L), see {@code docs/validation.md}.
 */
public final class UsgaRegression implements Aerodynamics {
    static final double LOWEST_RE5 = 0.8;
    static final double HIGHEST_RE5 = 2.0;
    static final double LOWEST_S = 0.04;
    static final double HIGHEST_S = 0.22;

    @Override
    public double drag(double reynolds, double spinRatio) {
        double r = heldReynolds(reynolds);
        double s = heldSpin(spinRatio);
        return 0.2028 - 0.2159 * s + 2.8466 * s * s + 0.0165 * r;
    }

    @Override
    public double lift(double reynolds, double spinRatio) {
        double r = heldReynolds(reynolds);
        double s = heldSpin(spinRatio);
        double inside = 0.0860 + 0.6463 * s + 1.4789 * s * s - 0.0122 / (r * r);
        return inside * Math.min(1, spinRatio / LOWEST_S);
    }

    private static double heldReynolds(double reynolds) {
        return Math.min(Math.max(reynolds / 1e5, LOWEST_RE5), HIGHEST_RE5);
    }

    /** A margin beyond the range lets the blend towards the table begin where the regression still behaves. */
    private static double heldSpin(double spinRatio) {
        return Math.min(Math.max(spinRatio, LOWEST_S), BlendedAerodynamics.BLENDED_OUT_S);
    }
}
