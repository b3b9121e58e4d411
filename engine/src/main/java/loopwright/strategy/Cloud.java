package loopwright.strategy;

import java.util.Arrays;
import java.util.SplittableRandom;
import loopwright.flight.Descent;
import loopwright.numerics.SpreadSequence;
import loopwright.player.AimedSwing;
import loopwright.player.Landing;
import loopwright.player.LieEffect;
import loopwright.player.StrikeModel;
import org.jspecify.annotations.Nullable;

/**
 * A weighted sample of the strikes of one shot from one lie on one day, in cells along and right of the aim. The solid
 * strikes and each kind of mishit are strata of their own with well-spread points, so that rare bad shots are always
 * present with their right weight.
 */
final class Cloud {
    /** Share of the points that goes to the solid strikes where there are mishits. */
    private static final double SOLID_POINTS = 0.75;
    /** Random numbers of a strike: length, direction, run, what trees it survives. */
    private static final int DRAWS = 4;
    /** And its loft, on any day but the standard one. */
    private static final int LOFT_DRAWS = 5;
    /** And two for the gust of a gusty day. */
    private static final int GUSTY_DRAWS = 7;

    final int size;
    /** Where each stratum starts, and the size of the cloud at the end. */
    final int[] strata;

    final float[] forward;
    final float[] right;
    /** Direction of the flight relative to the aim, in sectors of a {@link TreeFan}, + right. */
    final float[] turn;
    /** Length of the flight, cells. */
    final float[] carry;
    /** Run after landing off the green, cells of level fairway. */
    final float[] run;
    /** Run after landing on the green, cells of level green. */
    final float[] greenRun;
    /** Direction of travel at landing: parts along and right of the aim, and in sectors as {@link #turn}. */
    final float[] headForward;

    final float[] headRight;
    final float[] headTurn;
    /** Steepness and bend of the end of the flight (see {@link Descent}); 0: judged by eye, lands where it is meant to. */
    final float[] steepness;

    final float[] bend;

    final float[] apexMetres;
    /** Expected stops by trees that this ball survives. */
    final float[] patience;
    /** By stratum: weight of each of its points. */
    final double[] weight;

    /**
     * What strikes are drawn from.
     *
     * @param intendedMetres of a touch shot
     * @param day what the day makes of the strikes for one bearing of the aim; null: nothing
     */
    record Recipe(
            StrikeModel strikes,
            int shot,
            double intendedMetres,
            LieEffect lie,
            @Nullable AimedSwing day) {}

    private Cloud(int[] strata) {
        this.strata = strata;
        size = strata[strata.length - 1];
        forward = new float[size];
        right = new float[size];
        turn = new float[size];
        carry = new float[size];
        run = new float[size];
        greenRun = new float[size];
        headForward = new float[size];
        headRight = new float[size];
        headTurn = new float[size];
        steepness = new float[size];
        bend = new float[size];
        apexMetres = new float[size];
        patience = new float[size];
        weight = new double[strata.length - 1];
    }

    /** The same seed draws the same strikes, whatever the day makes of them. */
    static Cloud of(Recipe recipe, int points, long seed) {
        int kinds = recipe.strikes.mishits(recipe.shot).size();
        int solidPoints = kinds == 0 ? points : (int) (points * SOLID_POINTS);
        int mishitPoints = kinds == 0 ? 0 : Math.max(2, (points - solidPoints) / kinds);
        int[] strata = new int[kinds + 2];
        for (int m = 0; m <= kinds; m++) {
            strata[m + 1] = solidPoints + m * mishitPoints;
        }
        Cloud cloud = new Cloud(strata);
        SplittableRandom random = new SplittableRandom(seed);
        double solid = 1;
        for (int m = 0; m < kinds; m++) {
            double rate = recipe.strikes.mishitRate(recipe.shot, m, recipe.lie);
            solid -= rate;
            cloud.fill(recipe, m, rate, random);
        }
        cloud.fill(recipe, -1, solid, random);
        return cloud;
    }

    /** Draws the stratum of one kind of mishit, or, with -1, of the solid strikes. */
    private void fill(Recipe r, int mishit, double rate, SplittableRandom random) {
        boolean gusty = r.day != null && r.day.isGusty();
        boolean lofts = r.day != null && r.strikes.variesInLoft();
        double[] u = new double[gusty ? GUSTY_DRAWS : lofts ? LOFT_DRAWS : DRAWS];
        SpreadSequence points = new SpreadSequence(u.length, random);
        Landing landing = new Landing();
        for (int i = strata[mishit + 1]; i < strata[mishit + 2]; i++) {
            points.next(u);
            double z1 = SpreadSequence.normal(u[0]);
            double z2 = SpreadSequence.normal(u[1]);
            double z3 = SpreadSequence.normal(u[2]);
            if (mishit < 0) {
                r.strikes.solid(r.shot, r.intendedMetres, r.lie, z1, z2, z3, landing);
            } else {
                r.strikes.mishit(r.shot, mishit, r.intendedMetres, r.lie, z1, z2, z3, landing);
            }
            if (r.day != null) {
                landing.loft = lofts ? SpreadSequence.normal(u[4]) : 0;
                double gustAlong = gusty ? SpreadSequence.normal(u[5]) : 0;
                double gustAcross = gusty ? SpreadSequence.normal(u[6]) : 0;
                r.day.change(landing, gustAlong, gustAcross);
            }
            set(i, landing, -Math.log(1 - u[3]));
        }
        weight[mishit + 1] = rate / (strata[mishit + 2] - strata[mishit + 1]);
    }

    private void set(int i, Landing landing, double survives) {
        forward[i] = (float) (landing.forwardMetres / HoleRaster.CELL_METRES);
        right[i] = (float) (landing.rightMetres / HoleRaster.CELL_METRES);
        turn[i] = (float) (Math.atan2(landing.rightMetres, landing.forwardMetres) * TreeFan.SECTORS_PER_RADIAN);
        carry[i] = (float) Math.hypot(forward[i], right[i]);
        run[i] = (float) (landing.runMetres / HoleRaster.CELL_METRES);
        greenRun[i] = (float) (landing.greenRunMetres / HoleRaster.CELL_METRES);
        headForward[i] = (float) Math.cos(landing.headingRadians);
        headRight[i] = (float) Math.sin(landing.headingRadians);
        headTurn[i] = (float) (landing.headingRadians * TreeFan.SECTORS_PER_RADIAN);
        boolean byEye = landing.descentRadians == 0;
        steepness[i] = byEye ? 0 : (float) Descent.steepness(landing.descentRadians);
        bend[i] = byEye ? 0 : (float) Descent.bend(landing.landingSpeed, landing.descentRadians);
        apexMetres[i] = (float) landing.apexMetres;
        patience[i] = (float) survives;
    }

    /** Room for clouds that lie between others of the same strata. */
    Cloud room() {
        return new Cloud(strata);
    }

    boolean isRoomFor(Cloud other) {
        return Arrays.equals(strata, other.strata);
    }

    /** Sets points {@code from} to {@code to} to what lies between two clouds of the same strikes, at a share of the way. */
    void between(Cloud a, Cloud b, float share, int from, int to) {
        System.arraycopy(a.weight, 0, weight, 0, weight.length);
        System.arraycopy(a.patience, from, patience, from, to - from);
        for (int i = from; i < to; i++) {
            forward[i] = a.forward[i] + share * (b.forward[i] - a.forward[i]);
            right[i] = a.right[i] + share * (b.right[i] - a.right[i]);
            turn[i] = a.turn[i] + share * (b.turn[i] - a.turn[i]);
            carry[i] = a.carry[i] + share * (b.carry[i] - a.carry[i]);
        }
        for (int i = from; i < to; i++) {
            run[i] = a.run[i] + share * (b.run[i] - a.run[i]);
            greenRun[i] = a.greenRun[i] + share * (b.greenRun[i] - a.greenRun[i]);
            headForward[i] = a.headForward[i] + share * (b.headForward[i] - a.headForward[i]);
            headRight[i] = a.headRight[i] + share * (b.headRight[i] - a.headRight[i]);
            headTurn[i] = a.headTurn[i] + share * (b.headTurn[i] - a.headTurn[i]);
            steepness[i] = a.steepness[i] + share * (b.steepness[i] - a.steepness[i]);
            bend[i] = a.bend[i] + share * (b.bend[i] - a.bend[i]);
            apexMetres[i] = a.apexMetres[i] + share * (b.apexMetres[i] - a.apexMetres[i]);
        }
    }
}
