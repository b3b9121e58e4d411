package loopwright.player;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;

/** Synthetic balls drawn straight from a pattern, independently of the fit. */
final class SyntheticShots {
    private SyntheticShots() {}

    /** Carry and direction of one ball. */
    static double[] ball(ShotPattern p, RandomGenerator random) {
        double u = random.nextDouble();
        for (Mishit m : p.mishits()) {
            u -= m.rate();
            if (u < 0) {
                double carry = p.carryMetres() * (m.carryFactor() + m.carryFactorSd() * random.nextGaussian());
                double turn = m.directionRadians() + m.directionSdRadians() * random.nextGaussian();
                return new double[] {Math.max(0, carry), p.directionRadians() + turn};
            }
        }
        double z = random.nextGaussian();
        double mixed = p.correlation() * z + Math.sqrt(1 - p.correlation() * p.correlation()) * random.nextGaussian();
        return new double[] {
            p.carryMetres() + p.carrySdMetres() * z, p.directionRadians() + p.directionSdRadians() * mixed
        };
    }

    static double[] sides(ShotPattern p, int n, RandomGenerator random) {
        double[] out = new double[n];
        for (int i = 0; i < n; i++) {
            double[] b = ball(p, random);
            out[i] = b[0] * Math.sin(b[1]);
        }
        return out;
    }

    static Shot shot(Club club, double carry, double direction, int session) {
        return new Shot(
                club,
                Swing.FULL,
                OptionalDouble.of(Math.max(0, carry)),
                OptionalDouble.empty(),
                OptionalDouble.of(Math.max(0, carry) * Math.sin(direction)),
                Setting.COURSE,
                session,
                0);
    }

    static List<Shot> shots(Club club, ShotPattern p, int n, RandomGenerator random) {
        List<Shot> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double[] b = ball(p, random);
            out.add(shot(club, b[0], b[1], 0));
        }
        return out;
    }
}
