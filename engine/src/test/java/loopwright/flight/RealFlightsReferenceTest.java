package loopwright.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Range shots of three golfers (CaddieSet, CVPR Workshops 2025) that lie outside the project: ball speed, start, spin
 * and its axis were measured, the launch angle was not, so the lowest that reaches the carry in still standard air is
 * taken. Skipped with a word where the files are absent.
 */
class RealFlightsReferenceTest {
    private final BallFlight still = new BallFlight(FlightSetting.standard());

    /** Least squares of side on carry x axis (degrees) and carry x tan(start). */
    private static final class Curvature {
        private double uu;
        private double uw;
        private double ww;
        private double us;
        private double ws;

        void add(RealShots.Ball ball, double side) {
            double u = ball.carry() * Math.toDegrees(ball.axis());
            double w = ball.carry() * Math.tan(ball.start());
            uu += u * u;
            uw += u * w;
            ww += w * w;
            us += u * side;
            ws += w * side;
        }

        double perAxisDegree() {
            return (us * ww - ws * uw) / (uu * ww - uw * uw);
        }

        double perStart() {
            return (ws * uu - us * uw) / (uu * ww - uw * uw);
        }
    }

    @Test
    void ballsCurveAsMuchAsRealOnes() throws IOException {
        List<RealShots.Ball> balls = RealShots.all();
        Curvature theirs = new Curvature();
        Curvature ours = new Curvature();
        List<RealShots.Ball> unreachable = new ArrayList<>();
        for (RealShots.Ball ball : balls) {
            Optional<Launch> launch = RealShots.findLaunch(ball);
            if (launch.isEmpty()) {
                unreachable.add(ball);
                continue;
            }
            theirs.add(ball, ball.side());
            ours.add(ball, still.fly(launch.get(), 0).rightMetres());
        }
        // 25 %: hypothesis-grade; monitor, air and wind of the shots are unknown, and so is the launch angle
        assertThat(ours.perAxisDegree()).isCloseTo(theirs.perAxisDegree(), within(0.25 * theirs.perAxisDegree()));
        assertThat(ours.perStart()).isCloseTo(theirs.perStart(), within(0.25 * theirs.perStart()));
        // a ball that no launch angle carries far enough had help: listed in the ledger, few, and short by little
        assertThat(unreachable).hasSizeLessThan(balls.size() / 20);
        for (RealShots.Ball ball : unreachable) {
            assertThat(ball.carry() / longest(ball)).as("%s", ball).isLessThan(1.08);
        }
    }

    private double longest(RealShots.Ball ball) {
        double most = 0;
        for (double up = 1; up <= RealShots.HIGHEST_DEGREES; up += RealShots.STEP_DEGREES) {
            most = Math.max(
                    most, still.fly(ball.launched(Math.toRadians(up)), 0).carryMetres());
        }
        return most;
    }
}
