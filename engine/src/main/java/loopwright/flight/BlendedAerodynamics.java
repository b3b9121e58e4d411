package loopwright.flight;

/**
 * The engine's drag and lift: the USGA regression where it is valid, the Bearman and Harvey table for slower and faster
 * spinning balls, and between them a cubic ramp 3 t^2 - 2 t^3 so that neither coefficient nor slope jumps.
 *
 * <p>The ramp runs from R = 0.8 down to 0.6 and from S = 0.22 up to 0.30. Above R = 2.0 the regression is held rather
 * than left for the table, whose columns of 80 m/s and more are flat extrapolations themselves. Below R = 0.7 published
 * balls disagree about where the drag crisis lies; the values there are finite and continuous, no more is claimed.
 */
public final class BlendedAerodynamics implements Aerodynamics {
    static final double BLENDED_OUT_S = 0.30;
    private static final double BLENDED_OUT_RE5 = 0.6;

    private final Aerodynamics inside = new UsgaRegression();
    private final Aerodynamics outside = new BearmanHarvey();

    @Override
    public double drag(double reynolds, double spinRatio) {
        double w = weight(reynolds, spinRatio);
        return w * inside.drag(reynolds, spinRatio) + (1 - w) * outside.drag(reynolds, spinRatio);
    }

    @Override
    public double lift(double reynolds, double spinRatio) {
        double w = weight(reynolds, spinRatio);
        return w * inside.lift(reynolds, spinRatio) + (1 - w) * outside.lift(reynolds, spinRatio);
    }

    private static double weight(double reynolds, double spinRatio) {
        double fastEnough = ramp((reynolds / 1e5 - BLENDED_OUT_RE5) / (UsgaRegression.LOWEST_RE5 - BLENDED_OUT_RE5));
        double slowSpin = ramp((BLENDED_OUT_S - spinRatio) / (BLENDED_OUT_S - UsgaRegression.HIGHEST_S));
        return fastEnough * slowSpin;
    }

    private static double ramp(double t) {
        double held = Math.min(Math.max(t, 0), 1);
        return held * held * (3 - 2 * held);
    }
}
