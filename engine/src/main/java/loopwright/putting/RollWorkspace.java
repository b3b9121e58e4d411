package loopwright.putting;

/**
 * The ball of one roll and what it did near the hole; used again and again in one thread. Offset and hole speed are
 * those at the path's first nearest approach to the hole; a ball that stops before one is at rest there, its offset the
 * distance left.
 */
final class RollWorkspace {
    private final double holeX;
    private final double holeY;

    double x;
    double y;
    double vx;
    double vy;
    double ax;
    double ay;
    double rolledMetres;

    private double lastX;
    private double lastY;
    private double lastVx;
    private double lastVy;
    private boolean passed;

    /** Signed distance of the path from the hole's centre at the nearest point, + if the ball passes right of it. */
    double offset;

    /** Square of the speed there; 0 where the ball stops before it goes by. */
    double speedSquared;

    /** Deceleration along the path there. */
    double deceleration;

    RollWorkspace(double holeX, double holeY) {
        this.holeX = holeX;
        this.holeY = holeY;
    }

    void start(double startX, double startY, double startVx, double startVy) {
        x = startX;
        y = startY;
        vx = startVx;
        vy = startVy;
        rolledMetres = 0;
        passed = false;
    }

    double speed() {
        return Math.sqrt(vx * vx + vy * vy);
    }

    void remember() {
        lastX = x;
        lastY = y;
        lastVx = vx;
        lastVy = vy;
    }

    void move(double dx, double dy, double dvx, double dvy) {
        x += dx;
        y += dy;
        vx += dvx;
        vy += dvy;
        rolledMetres += Math.sqrt(dx * dx + dy * dy);
    }

    /** After a step of h seconds: has the ball just gone by the hole? */
    void watch(GreenRoll roll, double h) {
        if (passed) {
            return;
        }
        double before = (holeX - lastX) * lastVx + (holeY - lastY) * lastVy;
        double after = (holeX - x) * vx + (holeY - y) * vy;
        if (before > 0 && after <= 0) {
            pass(roll, before, after, h);
        }
    }

    /** Nearest point within the step: linear first guess, then false position on the cubic through both ends. */
    private void pass(GreenRoll roll, double before, double after, double h) {
        double last2 = lastVx * lastVx + lastVy * lastVy;
        double now2 = vx * vx + vy * vy;
        double low = 0;
        double high = 1;
        double lowValue = before;
        double highValue = after;
        for (int i = 0; i < 3 && lowValue > highValue; i++) {
            double t = low + (high - low) * lowValue / (lowValue - highValue);
            double px = cubic(t, lastX, x, lastVx * h, vx * h);
            double py = cubic(t, lastY, y, lastVy * h, vy * h);
            double ux = lastVx + t * (vx - lastVx);
            double uy = lastVy + t * (vy - lastVy);
            double value = (holeX - px) * ux + (holeY - py) * uy;
            approach(roll, px, py, ux, uy, last2 + t * (now2 - last2));
            if (value > 0) {
                low = t;
                lowValue = value;
            } else {
                high = t;
                highValue = value;
            }
        }
        passed = true;
    }

    private void approach(GreenRoll roll, double px, double py, double ux, double uy, double squared) {
        double speed = Math.sqrt(ux * ux + uy * uy);
        offset = ((holeY - py) * ux - (holeX - px) * uy) / speed;
        speedSquared = squared;
        deceleration = roll.decelerationTowards(px, py, ux / speed, uy / speed);
    }

    /** At rest: a ball that never went by the hole is judged by where it lies. */
    void settle(GreenRoll roll) {
        if (passed) {
            return;
        }
        offset = Math.sqrt((holeX - x) * (holeX - x) + (holeY - y) * (holeY - y));
        speedSquared = 0;
        deceleration = roll.deceleration();
    }

    /**
     * After a backward step of h seconds: if the ball is now {@code metres} or more from the hole, moves it to where it
     * was just there (cubic in the step, false position) and says so.
     */
    boolean backTo(double metres, double h) {
        double now = Math.hypot(x - holeX, y - holeY) - metres;
        if (now < 0) {
            return false;
        }
        double low = 0;
        double high = 1;
        double lowValue = Math.hypot(lastX - holeX, lastY - holeY) - metres;
        double highValue = now;
        double t = 1;
        for (int i = 0; i < 4 && highValue > lowValue; i++) {
            t = low - (high - low) * lowValue / (highValue - lowValue);
            double px = cubic(t, lastX, x, lastVx * h, vx * h);
            double py = cubic(t, lastY, y, lastVy * h, vy * h);
            double value = Math.hypot(px - holeX, py - holeY) - metres;
            if (value < 0) {
                low = t;
                lowValue = value;
            } else {
                high = t;
                highValue = value;
            }
        }
        double endX = cubic(t, lastX, x, lastVx * h, vx * h);
        double endY = cubic(t, lastY, y, lastVy * h, vy * h);
        vx = lastVx + t * (vx - lastVx);
        vy = lastVy + t * (vy - lastVy);
        x = endX;
        y = endY;
        return true;
    }

    private static double cubic(double t, double p0, double p1, double m0, double m1) {
        double t2 = t * t;
        double t3 = t2 * t;
        return (2 * t3 - 3 * t2 + 1) * p0 + (t3 - 2 * t2 + t) * m0 + (3 * t2 - 2 * t3) * p1 + (t3 - t2) * m1;
    }
}
