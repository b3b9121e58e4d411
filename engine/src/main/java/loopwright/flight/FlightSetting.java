package loopwright.flight;

/**
 * Everything a ball meets in the air besides its launch, boiled down to the constants of the equations of motion.
 *
 * @param air of the day
 * @param breeze as seen along the shot, at 10 m
 * @param ball as a body
 * @param aerodynamics drag and lift, calibrated
 * @param spinDecay in d omega / dt = - spinDecay (rho / 1.2) V omega / r; {@value #PUBLISHED_SPIN_DECAY} by Smits and
 *     Smith 1994 (wind tunnel), used alike by Penner 2001 and US Patent 6,186,002
 */
public record FlightSetting(Air air, Breeze breeze, GolfBall ball, Aerodynamics aerodynamics, double spinDecay) {
    public static final double PUBLISHED_SPIN_DECAY = 2.0e-5;

    public FlightSetting {
        if (!(spinDecay >= 0 && spinDecay <= 1e-3)) {
            throw new IllegalArgumentException("spin decay lies between 0 and 0.001, not " + spinDecay);
        }
    }

    /** A standard ball with the engine's aerodynamics. */
    public static FlightSetting of(Air air, Breeze breeze) {
        return new FlightSetting(air, breeze, GolfBall.STANDARD, new BlendedAerodynamics(), PUBLISHED_SPIN_DECAY);
    }

    /** Still air at 24 C, sea level, 50 % humidity: what patterns are stated in. */
    public static FlightSetting standard() {
        return of(Air.STANDARD, Breeze.NONE);
    }

    public FlightSetting withBreeze(Breeze newBreeze) {
        return new FlightSetting(air, newBreeze, ball, aerodynamics, spinDecay);
    }

    public FlightSetting calibrated(Calibration calibration) {
        return new FlightSetting(air, breeze, ball, aerodynamics.scaled(calibration), spinDecay);
    }
}
