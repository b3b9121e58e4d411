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

    /** Where a point keeps each of its numbers. */
    private static final int FORWARD = 0;

    private static final int RIGHT = 1;
    private static final int TURN = 2;
    private static final int CARRY = 3;
    private static final int RUN = 4;
    private static final int GREEN_RUN = 5;
    private static final int HEAD_FORWARD = 6;
    private static final int HEAD_RIGHT = 7;
    private static final int HEAD_TURN = 8;
    private static final int STEEPNESS = 9;
    private static final int BEND = 10;
    private static final int APEX_METRES = 11;
    private static final int PATIENCE = 12;
    private static final int FIELDS = 13;

    final int size;
    /** Where each stratum starts, and the size of the cloud at the end. */
    final int[] strata;

    /** Point after point, {@link #FIELDS} numbers each: they are read once and in order, mostly from memory far away. */
    private final float[] numbers;
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
        numbers = new float[FIELDS * size];
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
        int at = FIELDS * i;
        numbers[at + FORWARD] = (float) (landing.forwardMetres / HoleRaster.CELL_METRES);
        numbers[at + RIGHT] = (float) (landing.rightMetres / HoleRaster.CELL_METRES);
        numbers[at + TURN] =
                (float) (Math.atan2(landing.rightMetres, landing.forwardMetres) * TreeFan.SECTORS_PER_RADIAN);
        numbers[at + CARRY] = (float) Math.hypot(forward(i), right(i));
        numbers[at + RUN] = (float) (landing.runMetres / HoleRaster.CELL_METRES);
        numbers[at + GREEN_RUN] = (float) (landing.greenRunMetres / HoleRaster.CELL_METRES);
        numbers[at + HEAD_FORWARD] = (float) Math.cos(landing.headingRadians);
        numbers[at + HEAD_RIGHT] = (float) Math.sin(landing.headingRadians);
        numbers[at + HEAD_TURN] = (float) (landing.headingRadians * TreeFan.SECTORS_PER_RADIAN);
        boolean byEye = landing.descentRadians == 0;
        numbers[at + STEEPNESS] = byEye ? 0 : (float) Descent.steepness(landing.descentRadians);
        numbers[at + BEND] = byEye ? 0 : (float) Descent.bend(landing.landingSpeed, landing.descentRadians);
        numbers[at + APEX_METRES] = (float) landing.apexMetres;
        numbers[at + PATIENCE] = (float) survives;
    }

    /** Where a point comes down, cells along the aim. */
    float forward(int i) {
        return numbers[FIELDS * i + FORWARD];
    }

    /** And right of it. */
    float right(int i) {
        return numbers[FIELDS * i + RIGHT];
    }

    /** Direction of the flight relative to the aim, in sectors of a {@link TreeFan}, + right. */
    float turn(int i) {
        return numbers[FIELDS * i + TURN];
    }

    /** Length of the flight, cells. */
    float carry(int i) {
        return numbers[FIELDS * i + CARRY];
    }

    /** Run after landing off the green, cells of level fairway. */
    float run(int i) {
        return numbers[FIELDS * i + RUN];
    }

    /** Run after landing on the green, cells of level green. */
    float greenRun(int i) {
        return numbers[FIELDS * i + GREEN_RUN];
    }

    /** Direction of travel at landing: its part along the aim. */
    float headForward(int i) {
        return numbers[FIELDS * i + HEAD_FORWARD];
    }

    /** Its part right of it. */
    float headRight(int i) {
        return numbers[FIELDS * i + HEAD_RIGHT];
    }

    /** The same direction in sectors, as {@link #turn}. */
    float headTurn(int i) {
        return numbers[FIELDS * i + HEAD_TURN];
    }

    /** Steepness of the end of the flight (see {@link Descent}); 0: judged by eye, lands where it is meant to. */
    float steepness(int i) {
        return numbers[FIELDS * i + STEEPNESS];
    }

    /** Bend of the end of the flight. */
    float bend(int i) {
        return numbers[FIELDS * i + BEND];
    }

    float apexMetres(int i) {
        return numbers[FIELDS * i + APEX_METRES];
    }

    /** Expected stops by trees that this ball survives. */
    float patience(int i) {
        return numbers[FIELDS * i + PATIENCE];
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
        for (int i = FIELDS * from; i < FIELDS * to; i++) {
            numbers[i] = a.numbers[i] + share * (b.numbers[i] - a.numbers[i]);
        }
    }
}
