package loopwright.strategy;

import java.util.SplittableRandom;
import loopwright.numerics.SpreadSequence;
import loopwright.player.Landing;
import loopwright.player.LieEffect;
import loopwright.player.StrikeModel;

/**
 * Draws the strikes of one shot from one lie before any day. The solid strikes and each kind of mishit are strata of
 * their own with well-spread points, so that rare bad shots are always present with their right weight. The same seed
 * draws the same strikes.
 */
final class StrikeDraws {
    /** Share of the points that goes to the solid strikes where there are mishits. */
    private static final double SOLID_POINTS = 0.75;
    /** Random numbers of a strike: length, direction, run, what trees it survives. */
    private static final int DRAWS = 4;
    /** And its loft, on any day but the standard one. */
    private static final int LOFT_DRAWS = 5;
    /** And two for the gust of a gusty day. */
    private static final int GUSTY_DRAWS = 7;

    private final StrikeModel strikes;
    private final int shot;
    private final double intendedMetres;
    private final LieEffect lie;
    private final boolean gusty;
    private final boolean lofts;
    /** Where each stratum starts, the solid strikes first, and how many points there are at the end. */
    final int[] strata;

    /** What becomes of the strikes. */
    interface Sink {
        /**
         * Takes one in.
         *
         * @param strike in still standard air; the next call overwrites it
         * @param gustAlong standard normal, 0 on a day without gusts
         * @param patience expected stops by trees that this ball survives
         */
        void take(int i, Landing strike, double gustAlong, double gustAcross, double patience);
    }

    /**
     * Sets what is drawn.
     *
     * @param intendedMetres of a touch shot
     */
    StrikeDraws(StrikeModel strikes, int shot, double intendedMetres, LieEffect lie, int points) {
        this.strikes = strikes;
        this.shot = shot;
        this.intendedMetres = intendedMetres;
        this.lie = lie;
        gusty = !strikes.isTouch(shot) && strikes.isGusty();
        lofts = !strikes.isTouch(shot) && strikes.variesInLoft();
        int kinds = strikes.mishits(shot).size();
        int solidPoints = kinds == 0 ? points : (int) (points * SOLID_POINTS);
        int mishitPoints = kinds == 0 ? 0 : Math.max(2, (points - solidPoints) / kinds);
        strata = new int[kinds + 2];
        for (int m = 0; m <= kinds; m++) {
            strata[m + 1] = solidPoints + m * mishitPoints;
        }
    }

    int size() {
        return strata[strata.length - 1];
    }

    /** By stratum: weight of each of its points. */
    double[] weights() {
        double[] out = new double[strata.length - 1];
        double solid = 1;
        for (int m = 1; m < out.length; m++) {
            double rate = strikes.mishitRate(shot, m - 1, lie);
            solid -= rate;
            out[m] = rate / (strata[m + 1] - strata[m]);
        }
        out[0] = solid / strata[1];
        return out;
    }

    void draw(long seed, Sink sink) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int m = 0; m + 2 < strata.length; m++) {
            fill(m, random, sink);
        }
        fill(-1, random, sink);
    }

    /** Draws the stratum of one kind of mishit, or, with -1, of the solid strikes. */
    private void fill(int mishit, SplittableRandom random, Sink sink) {
        double[] u = new double[gusty ? GUSTY_DRAWS : lofts ? LOFT_DRAWS : DRAWS];
        SpreadSequence points = new SpreadSequence(u.length, random);
        Landing landing = new Landing();
        for (int i = strata[mishit + 1]; i < strata[mishit + 2]; i++) {
            points.next(u);
            double z1 = SpreadSequence.normal(u[0]);
            double z2 = SpreadSequence.normal(u[1]);
            double z3 = SpreadSequence.normal(u[2]);
            if (mishit < 0) {
                strikes.solid(shot, intendedMetres, lie, z1, z2, z3, landing);
            } else {
                strikes.mishit(shot, mishit, intendedMetres, lie, z1, z2, z3, landing);
            }
            landing.loft = lofts ? SpreadSequence.normal(u[4]) : 0;
            double gustAlong = gusty ? SpreadSequence.normal(u[5]) : 0;
            double gustAcross = gusty ? SpreadSequence.normal(u[6]) : 0;
            sink.take(i, landing, gustAlong, gustAcross, -Math.log(1 - u[3]));
        }
    }
}
