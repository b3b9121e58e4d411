package loopwright.flight;

/** How a swing launches the ball at a given ball speed: straight, with its usual launch angle and backspin. */
@FunctionalInterface
public interface LaunchStyle {
    Launch at(double ballSpeedMetresPerSecond);

    /** The style of one measured launch: its angle at any speed, its spin in proportion to the speed. */
    static LaunchStyle through(Launch measured) {
        double spinPerSpeed = measured.spinRadiansPerSecond() / measured.speedMetresPerSecond();
        return speed -> new Launch(speed, measured.launchRadians(), 0, spinPerSpeed * speed, 0);
    }
}
