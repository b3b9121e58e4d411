package loopwright.flight;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The baseline: the same equations under a general integrator with adaptive step, stopped by an event at the ground.
 */
final class AdaptiveFlight implements OrdinaryDifferentialEquation, ODEEventDetector {
    private static final double LONGEST_SECONDS = 30;
    private static final double LARGEST_STEP = 5;

    private final FlightEquations equations;
    private final DormandPrince853Integrator integrator;
    private final BracketedUnivariateSolver<UnivariateFunction> solver = new BracketingNthOrderBrentSolver(1e-4, 5);
    private final double[] axis = new double[3];

    /** The tolerance holds for each step, in metres, metres a second and radians a second alike. */
    AdaptiveFlight(FlightSetting setting, double tolerance) {
        equations = new FlightEquations(setting);
        integrator = new DormandPrince853Integrator(1e-4, LARGEST_STEP, tolerance, 0);
        integrator.addEventDetector(this);
    }

    /** Forward and right of the landing place. */
    double[] land(Launch launch) {
        double[] y = new double[FlightEquations.SIZE];
        FlightEquations.launch(
                launch.speedMetresPerSecond(),
                launch.launchRadians(),
                launch.startRadians(),
                launch.spinRadiansPerSecond(),
                launch.axisRadians(),
                y,
                axis);
        return integrator.integrate(this, new ODEState(0, y), LONGEST_SECONDS).getPrimaryState();
    }

    @Override
    public int getDimension() {
        return FlightEquations.SIZE;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
        double[] out = new double[FlightEquations.SIZE];
        equations.derive(y, axis, out);
        return out;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return (state, forward) -> LARGEST_STEP;
    }

    @Override
    public int getMaxIterationCount() {
        return 50;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
        return solver;
    }

    @Override
    public ODEEventHandler getHandler() {
        return (state, detector, increasing) -> increasing ? Action.CONTINUE : Action.STOP;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        return state.getPrimaryState()[FlightEquations.Z];
    }
}
