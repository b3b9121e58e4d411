package loopwright.flight;

/** Where a ball is, some time after the strike. */
public record FlightPoint(double seconds, double forwardMetres, double rightMetres, double heightMetres) {}
