package loopwright.ground;

/**
 * One bounce of a spinning ball on turf.
 *
 * <p>The ball digs a crater whose wall is tilted by theta = 15.4 deg (v / 18.6 m/s) (phi / 44.4 deg) against its
 * travel, v being its speed and phi its angle from the ground's normal; faster than {@value #CRATER_FASTEST} m/s, which
 * no drive in still air is, it digs no deeper (assumed: else a drive before a strong wind would run less than one in still
 * air). About the tilted surface it rebounds with e(vn)
 * = 0.510 - 0.0375 vn + 0.000903 vn^2 (vn &lt;= 20 m/s, else 0.120), and sliding friction mu acts until contact rolls:
 * with the slip s = ut + c (c: speed of the ball's underside by spin, r times backspin), mu_c = 2 s / (7 (1 + e) vn);
 * mu &gt;= mu_c: ut' = 5/7 ut - 2/7 c, c' = -ut'; else ut' = ut - mu vn (1 + e), c' = c - 5/2 mu vn (1 + e).
 *
 * <p>Source: A. R. Penner, "The run of a golf ball", Canadian Journal of Physics 80 (2002) 931-940, equations 2 to 8,
 * as transcribed (angle from the vertical; from the horizontal, drives would run two to four times too far). Here the
 * same in three dimensions: friction acts against the whole slip, so that ground sloping across the travel kicks the
 * ball sideways; spin about the ground's normal is ignored. Valid for turf; later measurements (Biber et al. 2023) find
 * the rigid model coarse, and published long spin-backs are not reached ({@code docs/validation.md}).
 */
final class Bounce {
    private static final double CRATER_RADIANS = Math.toRadians(15.4);
    private static final double CRATER_SPEED = 18.6;
    private static final double CRATER_FASTEST = 30;
    private static final double CRATER_ANGLE = Math.toRadians(44.4);

    private Bounce() {}

    static double restitution(double normalMetresPerSecond) {
        double v = normalMetresPerSecond;
        return v <= 20 ? 0.510 - 0.0375 * v + 0.000903 * v * v : 0.120;
    }

    /** Turns the ball's motion into that after the bounce. */
    static void off(Turf turf, RunWorkspace ball) {
        double down = -(ball.vx * ball.nx + ball.vy * ball.ny + ball.vz * ball.nz);
        double tx = ball.vx + down * ball.nx;
        double ty = ball.vy + down * ball.ny;
        double tz = ball.vz + down * ball.nz;
        double along = Math.sqrt(tx * tx + ty * ty + tz * tz);
        if (along > 1e-9) {
            tx /= along;
            ty /= along;
            tz /= along;
        } else {
            // straight down: any direction in the ground's plane serves
            tx = ball.nz;
            ty = 0;
            tz = -ball.nx;
            double size = Math.sqrt(tx * tx + tz * tz);
            tx /= size;
            tz /= size;
        }
        double sx = ball.ny * tz - ball.nz * ty;
        double sy = ball.nz * tx - ball.nx * tz;
        double sz = ball.nx * ty - ball.ny * tx;

        double speed = Math.sqrt(along * along + down * down);
        double fromNormal = Math.atan2(along, down);
        double digs = Math.min(speed, CRATER_FASTEST) / CRATER_SPEED;
        double wall = turf.craterFactor() * CRATER_RADIANS * digs * fromNormal / CRATER_ANGLE;
        double cos = Math.cos(wall);
        double sin = Math.sin(wall);
        double ut = along * cos - down * sin;
        double vn = along * sin + down * cos;
        double e = Math.min(1, Math.max(turf.leastRebound(), turf.reboundFactor() * restitution(vn)));
        double ct = ball.cx * tx + ball.cy * ty + ball.cz * tz;
        double cs = ball.cx * sx + ball.cy * sy + ball.cz * sz;

        double slip = Math.sqrt((ut + ct) * (ut + ct) + cs * cs);
        double push = turf.friction() * vn * (1 + e);
        double us;
        if (push >= 2.0 / 7 * slip) {
            ut = 5.0 / 7 * ut - 2.0 / 7 * ct;
            us = -2.0 / 7 * cs;
            ct = -ut;
            cs = -us;
        } else {
            double pushAlong = push * (ut + ct) / slip;
            double pushAcross = push * cs / slip;
            ut -= pushAlong;
            us = -pushAcross;
            ct -= 2.5 * pushAlong;
            cs -= 2.5 * pushAcross;
        }
        double up = e * vn;
        double out = ut * cos - up * sin;
        double rise = ut * sin + up * cos;
        ball.vx = out * tx + us * sx + rise * ball.nx;
        ball.vy = out * ty + us * sy + rise * ball.ny;
        ball.vz = out * tz + us * sz + rise * ball.nz;
        ball.cx = ct * tx + cs * sx;
        ball.cy = ct * ty + cs * sy;
        ball.cz = ct * tz + cs * sz;
    }
}
