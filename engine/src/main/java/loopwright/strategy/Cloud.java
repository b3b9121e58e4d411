package loopwright.strategy;

import java.util.SplittableRandom;
import loopwright.numerics.SpreadSequence;
import loopwright.player.Landing;
import loopwright.player.LieEffect;
import loopwright.player.StrikeModel;

/**
 * A weighted sample of the strikes of one shot from one lie, in cells along and right of the aim. The solid strikes and
 * each kind of mishit are strata of their own with well-spread points, so that rare bad shots are always present with
 * their right weight.
 */
final class Cloud {
    /** Share of the points that goes to the solid strikes where there are mishits. */
    private static final double SOLID_POINTS = 0.75;

    final int size;
    /** Where each stratum starts, and the size of the cloud at the end. */
    final int[] strata;

    final float[] forward;
    final float[] right;
    /** Direction of the flight relative to the aim, in sectors of a {@link TreeFan}, + right. */
    final float[] turn;
    /** Length of the flight, cells. */
    final float[] carry;
    /** Run after landing, cells of level fairway. */
    final float[] run;

    final float[] apexMetres;
    /** Expected stops by trees that this ball survives. */
    final float[] patience;
    /** By stratum: weight of each of its points. */
    final double[] weight;

    private Cloud(int solidPoints, int kinds, int mishitPoints) {
        strata = new int[kinds + 2];
        strata[1] = solidPoints;
        for (int m = 0; m < kinds; m++) {
            strata[m + 2] = strata[m + 1] + mishitPoints;
        }
        size = strata[kinds + 1];
        forward = new float[size];
        right = new float[size];
        turn = new float[size];
        carry = new float[size];
        run = new float[size];
        apexMetres = new float[size];
        patience = new float[size];
        weight = new double[kinds + 1];
    }

    static Cloud of(StrikeModel strikes, int shot, double intendedMetres, LieEffect lie, int points, long seed) {
        int kinds = strikes.mishits(shot).size();
        int solidPoints = kinds == 0 ? points : (int) (points * SOLID_POINTS);
        int mishitPoints = kinds == 0 ? 0 : Math.max(2, (points - solidPoints) / kinds);
        Cloud cloud = new Cloud(solidPoints, kinds, mishitPoints);
        SplittableRandom random = new SplittableRandom(seed);
        double solid = 1;
        for (int m = 0; m < kinds; m++) {
            double rate = strikes.mishitRate(shot, m, lie);
            solid -= rate;
            cloud.fill(
                    strikes, shot, m, intendedMetres, lie, solidPoints + m * mishitPoints, mishitPoints, rate, random);
        }
        cloud.fill(strikes, shot, -1, intendedMetres, lie, 0, solidPoints, solid, random);
        return cloud;
    }

    private void fill(
            StrikeModel strikes,
            int shot,
            int mishit,
            double intended,
            LieEffect lie,
            int from,
            int count,
            double rate,
            SplittableRandom random) {
        SpreadSequence points = new SpreadSequence(4, random);
        Landing landing = new Landing();
        double[] u = new double[4];
        for (int i = from; i < from + count; i++) {
            points.next(u);
            double z1 = SpreadSequence.normal(u[0]);
            double z2 = SpreadSequence.normal(u[1]);
            double z3 = SpreadSequence.normal(u[2]);
            if (mishit < 0) {
                strikes.solid(shot, intended, lie, z1, z2, z3, landing);
            } else {
                strikes.mishit(shot, mishit, intended, lie, z1, z2, z3, landing);
            }
            set(i, landing, -Math.log(1 - u[3]));
        }
        weight[mishit + 1] = rate / count;
    }

    private void set(int i, Landing landing, double survives) {
        forward[i] = (float) (landing.forwardMetres / HoleRaster.CELL_METRES);
        right[i] = (float) (landing.rightMetres / HoleRaster.CELL_METRES);
        turn[i] = (float) (Math.atan2(landing.rightMetres, landing.forwardMetres) * TreeFan.SECTORS_PER_RADIAN);
        carry[i] = (float) Math.hypot(forward[i], right[i]);
        run[i] = (float) (landing.runMetres / HoleRaster.CELL_METRES);
        apexMetres[i] = (float) landing.apexMetres;
        patience[i] = (float) survives;
    }
}
