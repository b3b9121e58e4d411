package loopwright.putting;

import java.util.ArrayList;
import java.util.List;

/**
 * Rolls a ball over a sloped green, past or into reach of the hole, until it stops.
 *
 * <p>Rolling without slipping on a slope s = (s_x, s_y): dv/dt = -A v / |v| - (5/7) g s / (1 + |s|^2), A = a / sqrt(1 +
 * |s|^2) with a the {@link GreenSpeed}'s deceleration; 5/7 is the solid sphere's share (Penner, Can. J. Phys. 80 (2002)
 * 83-96; Cross, Eur. J. Phys. 45 (2024) 035002). Distances are taken in plan; on 4 % of slope that shortens a roll by
 * 0.08 %. The push with which a ball starts skidding is part of the speed: the speed here is that of a ball rolling.
 *
 * <p>Runge-Kutta 4 with steps of {@code stepSeconds}, shorter towards the end (at most a third of the time to stop);
 * below 0.05 m/s the rest (about 3 mm) is drawn straight. Steps of 0.15 s are within 3 mm of steps of 0.01 s (see
 * GreenRollPropertyTest). Where the slope would hold a ball no longer ((5/7) g s at least A) it is taken as 0.92 of the
 * slope that just does, so that every ball stops.
 */
public final class GreenRoll {
    static final double STEP_SECONDS = 0.15;
    private static final double SLOW = 0.05;
    private static final double LONGEST_SECONDS = 60;
    private static final double FARTHEST_METRES = 100;
    private static final double STEEPEST_SHARE = 0.92;
    private static final double ROLLING = 5.0 / 7 * GreenSpeed.GRAVITY;

    private final GreenSurface surface;
    private final double deceleration;
    private final double stepSeconds;
    private final double steepestSquared;

    public GreenRoll(GreenSurface surface, GreenSpeed speed) {
        this(surface, speed, STEP_SECONDS);
    }

    GreenRoll(GreenSurface surface, GreenSpeed speed, double stepSeconds) {
        this.surface = surface;
        this.deceleration = speed.deceleration();
        this.stepSeconds = stepSeconds;
        this.steepestSquared = Math.pow(steepestPlayable(speed), 2);
    }

    /** The steepest slope on which a ball of a green speed still stops: tan b = A / ((5/7) g) at its limit. */
    public static double steepestHeld(GreenSpeed speed) {
        return speed.deceleration() / ROLLING;
    }

    /** The steepest slope taken at its full value, as rise over run. */
    public static double steepestPlayable(GreenSpeed speed) {
        return STEEPEST_SHARE * steepestHeld(speed);
    }

    double deceleration() {
        return deceleration;
    }

    /** Deceleration along a unit direction at a place, up the slope more, down it less. */
    double decelerationTowards(double x, double y, double towardsX, double towardsY) {
        double sx = surface.slopeEast(x, y);
        double sy = surface.slopeNorth(x, y);
        double squared = sx * sx + sy * sy;
        double share = squared > steepestSquared ? Math.sqrt(steepestSquared / squared) : 1;
        double steep = 1 + squared * share * share;
        return deceleration / Math.sqrt(steep) + ROLLING * share * (sx * towardsX + sy * towardsY) / steep;
    }

    /** Rolls from a place with a velocity and leaves the answer in the workspace. */
    void roll(double x, double y, double vx, double vy, RollWorkspace ball) {
        ball.start(x, y, vx, vy);
        double seconds = 0;
        double speed = ball.speed();
        while (speed > SLOW && seconds < LONGEST_SECONDS && ball.rolledMetres < FARTHEST_METRES) {
            double step = stepAt(speed);
            step(ball, step, deceleration);
            seconds += step;
            speed = ball.speed();
            ball.watch(this, step);
        }
        finish(ball, speed);
    }

    private double stepAt(double speed) {
        return Math.min(stepSeconds, Math.max(speed / (3 * deceleration), 0.01));
    }

    /**
     * Runs time backwards from a place at the rim, where the ball arrives with a speed on a bearing, until it was {@code
     * metres} from the hole. With w = -v the motion is the same with the drag turned round. The workspace then holds the
     * place and w.
     */
    void traceBack(double x, double y, double speed, double bearing, double metres, RollWorkspace ball) {
        ball.start(x, y, -speed * Math.sin(bearing), -speed * Math.cos(bearing));
        double seconds = 0;
        while (seconds < LONGEST_SECONDS) {
            double step = stepAt(ball.speed());
            step(ball, step, -deceleration);
            seconds += step;
            if (ball.backTo(metres, step)) {
                return;
            }
        }
        throw new IllegalStateException("no way back from the hole over " + metres + " m");
    }

    /** One Runge-Kutta step; {@code brake} is the deceleration, negative to run time backwards. */
    private void step(RollWorkspace b, double h, double brake) {
        b.remember();
        double x = b.x;
        double y = b.y;
        double vx = b.vx;
        double vy = b.vy;
        pull(b, x, y, vx, vy, brake);
        double ax1 = b.ax;
        double ay1 = b.ay;
        double vx2 = vx + h / 2 * ax1;
        double vy2 = vy + h / 2 * ay1;
        pull(b, x + h / 2 * vx, y + h / 2 * vy, vx2, vy2, brake);
        double ax2 = b.ax;
        double ay2 = b.ay;
        double vx3 = vx + h / 2 * ax2;
        double vy3 = vy + h / 2 * ay2;
        pull(b, x + h / 2 * vx2, y + h / 2 * vy2, vx3, vy3, brake);
        double ax3 = b.ax;
        double ay3 = b.ay;
        double vx4 = vx + h * ax3;
        double vy4 = vy + h * ay3;
        pull(b, x + h * vx3, y + h * vy3, vx4, vy4, brake);
        b.move(
                h / 6 * (vx + 2 * vx2 + 2 * vx3 + vx4),
                h / 6 * (vy + 2 * vy2 + 2 * vy3 + vy4),
                h / 6 * (ax1 + 2 * ax2 + 2 * ax3 + b.ax),
                h / 6 * (ay1 + 2 * ay2 + 2 * ay3 + b.ay));
    }

    private void pull(RollWorkspace b, double x, double y, double vx, double vy, double brake) {
        double sx = surface.slopeEast(x, y);
        double sy = surface.slopeNorth(x, y);
        double squared = sx * sx + sy * sy;
        if (squared > steepestSquared) {
            double share = Math.sqrt(steepestSquared / squared);
            sx *= share;
            sy *= share;
            squared = steepestSquared;
        }
        double steep = 1 + squared;
        double speed = Math.sqrt(vx * vx + vy * vy);
        double drag = speed > 0 ? brake / Math.sqrt(steep) / speed : 0;
        double fall = ROLLING / steep;
        b.ax = -drag * vx - fall * sx;
        b.ay = -drag * vy - fall * sy;
    }

    /** The last millimetres, straight on; the hole is judged from where the ball then lies. */
    private void finish(RollWorkspace ball, double speed) {
        if (speed <= SLOW && speed > 0) {
            double ux = ball.vx / speed;
            double uy = ball.vy / speed;
            double brake = Math.max(0.1 * deceleration, decelerationTowards(ball.x, ball.y, ux, uy));
            double rest = speed * speed / (2 * brake);
            ball.x += ux * rest;
            ball.y += uy * rest;
        }
        ball.settle(this);
    }

    /**
     * The places of a ball about every {@code metresApart} from start to rest, as if the hole were covered: x and y in
     * turn.
     */
    public List<double[]> trace(double x, double y, double bearing, double speed, double metresApart) {
        List<double[]> places = new ArrayList<>();
        RollWorkspace ball = new RollWorkspace(x, y);
        ball.start(x, y, speed * Math.sin(bearing), speed * Math.cos(bearing));
        places.add(new double[] {x, y});
        double next = metresApart;
        double now = speed;
        while (now > SLOW && ball.rolledMetres < FARTHEST_METRES) {
            step(ball, Math.min(stepAt(now), metresApart / now), deceleration);
            now = ball.speed();
            if (ball.rolledMetres >= next) {
                places.add(new double[] {ball.x, ball.y});
                next += metresApart;
            }
        }
        places.add(new double[] {ball.x, ball.y});
        return places;
    }
}
