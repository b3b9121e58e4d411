package loopwright.flight;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A ball's flight in three dimensions: m dv/dt = - rho A V (C_D u - C_L u x a) / 2 - m g, u being the velocity relative
 * to the air, V its size and a the spin axis, which keeps its direction; spin decays as in {@link FlightSetting} and is
 * integrated to the same order as the motion.
 *
 * <p>Axes: forward along the aim, right, up; the cross product is taken by components of these, so that an axis
 * pointing right lifts. Lift uses the spin's full ratio S and the sine of the angle between axis and path, exact for a
 * path square to the axis and off by a few percent of a small side force late in the flight of a strongly tilted spin.
 *
 * <p>Classical Runge-Kutta of fourth order with the fixed step {@value #STEP_SECONDS} s. The step was chosen by
 * measurement: carry and side stay within 0.05 m of the converged solution for every launch from a chip to a long
 * drive, also in strong wind ({@code BallFlightPropertyTest}). The landing is found on the cubic through the ends of
 * the last step.
 */
public final class BallFlight {
    public static final double STEP_SECONDS = 0.25;

    /** No golf shot lasts this long; a setting in which one does is a fault of ours. */
    static final double LONGEST_SECONDS = 60;

    private final FlightSetting setting;
    private final FlightEquations equations;
    private final double stepSeconds;

    public BallFlight(FlightSetting setting) {
        this(setting, STEP_SECONDS);
    }

    public BallFlight(FlightSetting setting, double stepSeconds) {
        if (!(stepSeconds > 0 && stepSeconds <= 1)) {
            throw new IllegalArgumentException("a step lies between 0 and 1 s, not " + stepSeconds);
        }
        this.setting = setting;
        this.equations = new FlightEquations(setting);
        this.stepSeconds = stepSeconds;
    }

    public FlightSetting setting() {
        return setting;
    }

    /** Flies one ball to a landing place {@code landingMetres} above the strike (negative: below). */
    public Flight fly(Launch launch, double landingMetres) {
        return fly(launch, landingMetres, null);
    }

    /** Flies the first {@code count} launches of a workspace, many at once, with the same results to the last bit. */
    public void fly(FlightWorkspace balls, int count, double landingMetres) {
        balls.block.fly(equations, balls, count, stepSeconds, landingMetres);
    }

    /** The points of a flight, one per step, from the strike to the landing. */
    public List<FlightPoint> trace(Launch launch, double landingMetres) {
        List<FlightPoint> points = new ArrayList<>();
        Flight flight = fly(launch, landingMetres, points);
        double landed = flight.reached() ? landingMetres : flight.apexMetres();
        points.add(new FlightPoint(flight.seconds(), flight.forwardMetres(), flight.rightMetres(), landed));
        return List.copyOf(points);
    }

    private Flight fly(Launch launch, double landingMetres, @Nullable List<FlightPoint> trace) {
        double[] now = new double[FlightEquations.SIZE];
        double[] next = new double[FlightEquations.SIZE];
        double[] axis = new double[3];
        FlightEquations.Scratch scratch = new FlightEquations.Scratch();
        FlightEquations.launch(
                launch.speedMetresPerSecond(),
                launch.launchRadians(),
                launch.startRadians(),
                launch.spinRadiansPerSecond(),
                launch.axisRadians(),
                now,
                axis);
        double apex = 0;
        for (int i = 0; i * stepSeconds < LONGEST_SECONDS; i++) {
            if (trace != null) {
                trace.add(new FlightPoint(i * stepSeconds, now[0], now[1], now[FlightEquations.Z]));
            }
            equations.step(now, axis, stepSeconds, next, scratch);
            if (next[FlightEquations.VZ] < 0) {
                if (now[FlightEquations.VZ] > 0) {
                    apex = LastStep.apexMetres(now, next, stepSeconds);
                }
                if (next[FlightEquations.Z] <= landingMetres) {
                    return LastStep.land(now, next, i * stepSeconds, stepSeconds, landingMetres, apex);
                }
            }
            double[] swap = now;
            now = next;
            next = swap;
        }
        throw new IllegalStateException("a ball did not come down within " + LONGEST_SECONDS + " s: " + launch);
    }
}
