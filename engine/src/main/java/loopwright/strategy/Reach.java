package loopwright.strategy;

import loopwright.player.AimedSwing;
import loopwright.player.Landing;
import loopwright.player.LieEffect;
import loopwright.player.StrikeModel;

/**
 * How far the usual solid strike of every shot goes on the day, and how far the wind takes it aside, by bearing of the
 * aim; on level ground from a good lie.
 */
final class Reach {
    private static final double TURN = 2 * Math.PI;

    /** By shot, then bearing: one where the day has no wind. */
    private final double[][] metres;

    private final double[][] drift;

    Reach(StrikeModel strikes) {
        int bearings = strikes.isWindy() ? CloudLibrary.BEARINGS : 1;
        metres = new double[strikes.shots()][bearings];
        drift = new double[strikes.shots()][bearings];
        for (int shot = 0; shot < strikes.shots(); shot++) {
            for (int b = 0; b < bearings; b++) {
                set(strikes, shot, b, TURN * b / bearings);
            }
        }
    }

    private void set(StrikeModel strikes, int shot, int b, double bearing) {
        metres[shot][b] = strikes.lengthMetres(shot);
        AimedSwing day = strikes.toward(shot, bearing);
        if (day == null) {
            return;
        }
        Landing usual = new Landing();
        strikes.solid(shot, 0, LieEffect.NONE, 0, 0, 0, usual);
        double direction = Math.atan2(usual.rightMetres, usual.forwardMetres);
        double carry = Math.hypot(usual.forwardMetres, usual.rightMetres);
        double run = usual.runMetres;
        day.change(usual, 0, 0);
        double more = Math.hypot(usual.forwardMetres, usual.rightMetres) - carry + usual.runMetres - run;
        metres[shot][b] += more;
        drift[shot][b] = Math.atan2(usual.rightMetres, usual.forwardMetres) - direction;
    }

    /** Total length of a swing; the longest intended length of a touch shot. */
    double metres(int shot, double bearing) {
        return between(metres[shot], bearing);
    }

    /** How far right of its still-air finish direction the day takes a swing, radians. */
    double driftRadians(int shot, double bearing) {
        return between(drift[shot], bearing);
    }

    private static double between(double[] values, double bearing) {
        int n = values.length;
        if (n == 1) {
            return values[0];
        }
        double x = bearing / TURN * n;
        double cell = Math.floor(x);
        int i = Math.floorMod((int) cell, n);
        return values[i] + (x - cell) * (values[(i + 1) % n] - values[i]);
    }
}
