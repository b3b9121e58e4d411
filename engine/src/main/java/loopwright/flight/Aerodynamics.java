package loopwright.flight;

/**
 * Drag and lift coefficients of a ball as functions of Reynolds number Re = V D / nu and spin ratio S = r omega / V, V
 * being the speed relative to the air: F_D = rho A C_D V^2 / 2 against the relative wind, F_L = rho A C_L V^2 / 2
 * across it.
 */
public interface Aerodynamics {
    double drag(double reynolds, double spinRatio);

    double lift(double reynolds, double spinRatio);

    /** This with both coefficients multiplied. */
    default Aerodynamics scaled(Calibration calibration) {
        Aerodynamics plain = this;
        return new Aerodynamics() {
            @Override
            public double drag(double reynolds, double spinRatio) {
                return calibration.drag() * plain.drag(reynolds, spinRatio);
            }

            @Override
            public double lift(double reynolds, double spinRatio) {
                return calibration.lift() * plain.lift(reynolds, spinRatio);
            }
        };
    }
}
