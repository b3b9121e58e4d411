package loopwright.ground;

/** The ground round a ball: how much higher it lies than the ball, metres, at a place along and right of the aim. */
@FunctionalInterface
public interface Rise {
    Rise LEVEL = (forward, right) -> 0;

    double at(double forwardMetres, double rightMetres);
}
