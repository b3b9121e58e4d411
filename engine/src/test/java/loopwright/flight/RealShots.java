package loopwright.flight;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;

/**
 * Range shots of three golfers (CaddieSet, CVPR Workshops 2025) that lie outside the project: ball speed, start, spin
 * and its axis were measured, the launch angle was not. A test that asks for them is skipped with a word where the files
 * are absent.
 */
public final class RealShots {
    static final double STEP_DEGREES = 0.5;
    static final double HIGHEST_DEGREES = 45;

    private static final BallFlight STILL = new BallFlight(FlightSetting.standard());

    private RealShots() {}

    /** SI units, angles in radians. */
    public record Ball(
            String golfer,
            String club,
            double carry,
            double side,
            double start,
            double spin,
            double axis,
            double speed) {
        Launch launched(double up) {
            return new Launch(speed, up, start, spin, axis);
        }
    }

    public static List<Ball> all() throws IOException {
        List<Ball> out = new ArrayList<>();
        for (String golfer : new String[] {"1", "4", "6"}) {
            for (String line : Files.readAllLines(file("golfer-" + golfer + ".csv"))) {
                String[] cells = line.split(",", -1);
                if (cells[0].equals("club")) {
                    continue;
                }
                out.add(new Ball(
                        golfer,
                        cells[0],
                        Double.parseDouble(cells[1]),
                        Double.parseDouble(cells[3]),
                        Math.toRadians(Double.parseDouble(cells[4])),
                        Double.parseDouble(cells[5]) * Math.PI / 30,
                        Math.toRadians(Double.parseDouble(cells[6])),
                        Double.parseDouble(cells[7])));
            }
        }
        return out;
    }

    /** The launch whose angle is the lowest that reaches the carry in still standard air. */
    public static Optional<Launch> findLaunch(Ball ball) {
        double before = 0;
        for (double up = 1; up <= HIGHEST_DEGREES; up += STEP_DEGREES) {
            double carry = STILL.fly(ball.launched(Math.toRadians(up)), 0).carryMetres();
            if (carry >= ball.carry) {
                double share = before < ball.carry ? (ball.carry - before) / (carry - before) : 1;
                return Optional.of(ball.launched(Math.toRadians(up - STEP_DEGREES * (1 - share))));
            }
            before = carry;
        }
        return Optional.empty();
    }

    private static Path file(String name) {
        String named = System.getenv("LOOPWRIGHT_SHARED");
        for (Path folder = Path.of("").toAbsolutePath(); folder != null; folder = folder.getParent()) {
            Path shared = named == null ? folder.resolve("shared") : Path.of(named);
            Path file = shared.resolve("shots").resolve(name);
            if (Files.exists(file)) {
                return file;
            }
        }
        Assumptions.abort("the shared shot file " + name + " is not here; test skipped");
        throw new IllegalStateException("unreachable");
    }
}
