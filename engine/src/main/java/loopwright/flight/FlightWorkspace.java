package loopwright.flight;

/**
 * Launches and the flights they became, as parallel arrays, for clouds of balls. Mutable and reused; one per thread.
 */
public final class FlightWorkspace {
    final double[] speed;
    final double[] launch;
    final double[] start;
    final double[] spin;
    final double[] axis;

    final double[] forward;
    final double[] right;
    final double[] apex;
    final double[] seconds;
    final double[] landingSpeed;
    final double[] descent;
    final double[] heading;
    final double[] landingSpin;
    final boolean[] reached;

    final FlightBlock block = new FlightBlock();

    public FlightWorkspace(int capacity) {
        speed = new double[capacity];
        launch = new double[capacity];
        start = new double[capacity];
        spin = new double[capacity];
        axis = new double[capacity];
        forward = new double[capacity];
        right = new double[capacity];
        apex = new double[capacity];
        seconds = new double[capacity];
        landingSpeed = new double[capacity];
        descent = new double[capacity];
        heading = new double[capacity];
        landingSpin = new double[capacity];
        reached = new boolean[capacity];
    }

    public int capacity() {
        return speed.length;
    }

    public void put(int i, Launch ball) {
        speed[i] = ball.speedMetresPerSecond();
        launch[i] = ball.launchRadians();
        start[i] = ball.startRadians();
        spin[i] = ball.spinRadiansPerSecond();
        axis[i] = ball.axisRadians();
    }

    /** What became of launch {@code i}; valid after {@link BallFlight#fly(FlightWorkspace, int, double)}. */
    public Flight flight(int i) {
        return new Flight(
                forward[i],
                right[i],
                apex[i],
                seconds[i],
                landingSpeed[i],
                descent[i],
                heading[i],
                landingSpin[i],
                reached[i]);
    }

    public double forwardMetres(int i) {
        return forward[i];
    }

    public double rightMetres(int i) {
        return right[i];
    }

    void keep(int i, Flight flight) {
        forward[i] = flight.forwardMetres();
        right[i] = flight.rightMetres();
        apex[i] = flight.apexMetres();
        seconds[i] = flight.seconds();
        landingSpeed[i] = flight.speedMetresPerSecond();
        descent[i] = flight.descentRadians();
        heading[i] = flight.headingRadians();
        landingSpin[i] = flight.spinRadiansPerSecond();
        reached[i] = flight.reached();
    }
}
