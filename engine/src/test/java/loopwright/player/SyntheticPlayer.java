package loopwright.player;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * A player drawn from the prior as its table states it, written independently of the sampler: what lies behind his balls is
 * known, so that intervals can be checked for coverage.
 */
final class SyntheticPlayer {
    final PlayerPrior prior;
    final ShotPattern truth;
    final double sessionDirection;
    final double sessionCarry;
    final double sessionSpread;

    SyntheticPlayer(Club club, double level, RandomGenerator random) {
        prior = PlayerPrior.of(level, Player.Hand.RIGHT)
                .withDriverCarry(loopwright.units.Distance.ofMetres(150 + 80 * random.nextDouble()));
        ShotPattern p = prior.pattern(club, Swing.FULL);
        FitSwings one = new FitSwings(prior, ShotLog.EMPTY, true);
        int j = one.index(club, Swing.FULL);
        double length = 1 + Math.sqrt(one.carryCovariance()[j][j]) * random.nextGaussian();
        double bias = Math.hypot(PriorTable.BIAS_SD, PriorTable.CLUB_BIAS_SD) * random.nextGaussian();
        double spread = Math.hypot(PriorTable.SHARED_LOG_SPREAD_SD, PriorTable.CLUB_LOG_SPREAD_SD);
        double mishits = Math.hypot(PriorTable.SHARED_LOG_MISHIT_SD, PriorTable.FAMILY_LOG_MISHIT_SD);
        double rate = Math.exp(mishits * random.nextGaussian());
        List<Mishit> kinds = new ArrayList<>();
        double[] shares = shares(p, random);
        double whole = Math.min(PriorTable.MOST_MISHITS, p.mishitRate() * rate);
        for (int k = 0; k < shares.length; k++) {
            kinds.add(p.mishits().get(k).withRate(whole * shares[k]));
        }
        truth = new ShotPattern(
                p.carryMetres() * length,
                p.carrySdMetres() * Math.exp(spread * random.nextGaussian()),
                bias,
                p.directionSdRadians() * Math.exp(spread * random.nextGaussian()),
                0,
                p.runMetres() * length,
                p.apexMetres(),
                p.descentRadians(),
                kinds);
        double doubt = PriorTable.SESSION_SD_LOG_SD;
        sessionDirection =
                PriorTable.SESSION_DIRECTION_SD * Math.exp(doubt * random.nextGaussian()) * random.nextGaussian();
        sessionCarry = PriorTable.SESSION_CARRY_SD * Math.exp(doubt * random.nextGaussian()) * random.nextGaussian();
        sessionSpread = Math.exp(
                PriorTable.SESSION_LOG_SPREAD_SD * Math.exp(doubt * random.nextGaussian()) * random.nextGaussian());
    }

    /** Kinds of mishit: normalised sums of exponentials are a Dirichlet of whole shapes; shapes are rounded up. */
    private static double[] shares(ShotPattern p, RandomGenerator random) {
        double[] out = new double[p.mishits().size()];
        double sum = 0;
        for (int k = 0; k < out.length; k++) {
            double shape = PriorTable.MISHIT_KIND_BALLS * p.mishits().get(k).rate() / p.mishitRate();
            for (int e = 0; e < Math.max(1, Math.round(shape)); e++) {
                out[k] += random.nextExponential();
            }
            sum += out[k];
        }
        for (int k = 0; k < out.length; k++) {
            out[k] /= sum;
        }
        return out;
    }

    /** Balls of one session on the course, with its bias, length and spread. */
    List<Shot> balls(Club club, int n, RandomGenerator random) {
        List<Shot> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            out.add(ball(club, random));
        }
        return out;
    }

    private Shot ball(Club club, RandomGenerator random) {
        double trend = prior.pattern(club, Swing.FULL).carryMetres();
        double u = random.nextDouble();
        double shift = truth.carryMetres() / trend + sessionCarry;
        double middle = truth.directionRadians() + sessionDirection;
        for (Mishit m : truth.mishits()) {
            u -= m.rate();
            if (u < 0) {
                double share = m.carryFactor() * shift + m.carryFactorSd() * random.nextGaussian();
                double turn = m.directionRadians() + m.directionSdRadians() * random.nextGaussian();
                return SyntheticShots.shot(club, trend * share, middle + turn, 0);
            }
        }
        double carry = trend * shift + truth.carrySdMetres() * sessionSpread * random.nextGaussian();
        double direction = middle + truth.directionSdRadians() * sessionSpread * random.nextGaussian();
        return SyntheticShots.shot(club, carry, direction, 0);
    }
}
