package loopwright.ground;

/**
 * A ball from its first touch of the ground to rest: bounces ({@link Bounce}) until a rebound stays under the turf's
 * lowest hop (5 mm on a green, Penner 2002, p. 935), then roll with a = (5/7) rho g cos b against the motion and (5/7)
 * g sin b down the slope (Penner 2002, "The physics of putting"; Cross 2024).
 *
 * <p>Each hop flies without drag over the plane through its take-off. Every touch reads the surface and slope of its
 * place, so a ball may run from fairway through rough into a bunker; where a penalty area or sand holds it, it stays.
 * Ground steeper than rolling friction keeps a ball moving until it flattens or {@value #LONGEST_SECONDS} s have
 * passed.
 */
public final class BounceAndRoll {
    private static final double BALL_RADIUS = 0.021335;
    private static final int MOST_BOUNCES = 400;
    private static final double ROLL_STEP_SECONDS = 0.02;
    private static final double LONGEST_SECONDS = 60;

    private final Firmness firmness;
    private final Turf[] turfs;

    /**
     * @param greenResistance rolling resistance of the day's greens (see {@code GreenSpeed})
     */
    public BounceAndRoll(Firmness firmness, double greenResistance) {
        this.firmness = firmness;
        turfs = new Turf[Surface.values().length];
        for (Surface surface : Surface.values()) {
            turfs[surface.ordinal()] = Turf.of(surface, firmness, greenResistance);
        }
    }

    public Firmness firmness() {
        return firmness;
    }

    public Turf turf(Surface surface) {
        return turfs[surface.ordinal()];
    }

    /**
     * Runs a ball out from a landing place.
     *
     * @param x where it comes down, in the terrain's metres east
     * @param y metres north
     * @param out receives how far it went from there
     */
    public void run(Touchdown touch, Terrain terrain, double x, double y, RunWorkspace out) {
        start(touch, out);
        boolean held = bounce(terrain, x, y, out);
        if (!held) {
            roll(terrain, x, y, out);
        }
    }

    /**
     * Signed run along the travel on one surface of one slope along it (rise per metre), metres; negative: the ball
     * came back.
     */
    public double planeRunMetres(Touchdown touch, Surface surface, double slopeAlong, RunWorkspace scratch) {
        start(
                new Touchdown(
                        touch.speedMetresPerSecond(), touch.descentRadians(), 0, touch.backspinRadiansPerSecond()),
                scratch);
        if (bounce(Terrain.plane(surface, 0, slopeAlong), 0, 0, scratch)) {
            return scratch.y;
        }
        double speed = 5.0 / 7 * scratch.vy - 2.0 / 7 * scratch.cy;
        double level = 1 / Math.sqrt(1 + slopeAlong * slopeAlong);
        double brake = turf(surface).deceleration() * level;
        double pull = Turf.ROLLING * Turf.GRAVITY * slopeAlong * level;
        if (brake <= Math.abs(pull)) {
            // steeper than friction holds: no closed form ends it
            roll(Terrain.plane(surface, 0, slopeAlong), 0, 0, scratch);
            return scratch.y;
        }
        double slowing = speed > 0 ? brake + pull : brake - pull;
        return scratch.y + speed * Math.abs(speed) / (2 * slowing);
    }

    private static void start(Touchdown touch, RunWorkspace ball) {
        double level = touch.speedMetresPerSecond() * Math.cos(touch.descentRadians());
        double sin = Math.sin(touch.bearingRadians());
        double cos = Math.cos(touch.bearingRadians());
        ball.x = 0;
        ball.y = 0;
        ball.vx = level * sin;
        ball.vy = level * cos;
        ball.vz = -touch.speedMetresPerSecond() * Math.sin(touch.descentRadians());
        ball.cx = BALL_RADIUS * touch.backspinRadiansPerSecond() * sin;
        ball.cy = BALL_RADIUS * touch.backspinRadiansPerSecond() * cos;
        ball.cz = 0;
        ball.bounces = 0;
    }

    /** Hops until the ball rolls; true if the ground holds it before that. */
    private boolean bounce(Terrain terrain, double x, double y, RunWorkspace ball) {
        while (ball.bounces < MOST_BOUNCES) {
            double px = x + ball.x;
            double py = y + ball.y;
            Surface surface = terrain.surfaceAt(px, py);
            double slopeEast = terrain.slopeEastAt(px, py);
            double slopeNorth = terrain.slopeNorthAt(px, py);
            ball.ground(slopeEast, slopeNorth);
            ball.bounces++;
            if (surface.isPenaltyArea()) {
                return true;
            }
            Bounce.off(turf(surface), ball);
            double away = ball.vz - slopeEast * ball.vx - slopeNorth * ball.vy;
            if (away * away / (2 * Turf.GRAVITY) < turf(surface).lowestHopMetres()) {
                return false;
            }
            double seconds = 2 * away / Turf.GRAVITY;
            ball.x += ball.vx * seconds;
            ball.y += ball.vy * seconds;
            ball.vz -= Turf.GRAVITY * seconds;
        }
        return false;
    }

    private void roll(Terrain terrain, double x, double y, RunWorkspace ball) {
        // what slip is left turns into roll at once: five sevenths of the speed less two of the spin's
        double vx = 5.0 / 7 * ball.vx - 2.0 / 7 * ball.cx;
        double vy = 5.0 / 7 * ball.vy - 2.0 / 7 * ball.cy;
        double h = ROLL_STEP_SECONDS;
        for (double t = 0; t < LONGEST_SECONDS; t += h) {
            double px = x + ball.x;
            double py = y + ball.y;
            Surface surface = terrain.surfaceAt(px, py);
            if (surface.isPenaltyArea()) {
                return;
            }
            double slopeEast = terrain.slopeEastAt(px, py);
            double slopeNorth = terrain.slopeNorthAt(px, py);
            double level = 1 / Math.sqrt(1 + slopeEast * slopeEast + slopeNorth * slopeNorth);
            double brake = turf(surface).deceleration() * level;
            double pullX = -Turf.ROLLING * Turf.GRAVITY * slopeEast * level;
            double pullY = -Turf.ROLLING * Turf.GRAVITY * slopeNorth * level;
            double speed = Math.hypot(vx, vy);
            double pull = Math.hypot(pullX, pullY);
            if (speed <= brake * h * 0.5 && pull <= brake) {
                return;
            }
            double brakeX = speed > 0 ? brake * vx / speed : 0;
            double brakeY = speed > 0 ? brake * vy / speed : 0;
            double ax = pullX - brakeX;
            double ay = pullY - brakeY;
            double step = stopsWithin(vx, vy, ax, ay, speed, pull, brake, h);
            ball.x += step * (vx + 0.5 * step * ax);
            ball.y += step * (vy + 0.5 * step * ay);
            vx += step * ax;
            vy += step * ay;
            if (step < h && pull <= brake) {
                return;
            }
        }
    }

    /** Seconds until the speed along the present motion is spent, or the whole step. */
    private static double stopsWithin(
            double vx, double vy, double ax, double ay, double speed, double pull, double brake, double h) {
        if (speed == 0) {
            return h;
        }
        double slowing = -(ax * vx + ay * vy) / speed;
        return slowing > 0 && pull <= brake ? Math.min(h, speed / slowing) : h;
    }
}
