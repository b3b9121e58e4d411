package loopwright.strategy;

import java.util.Arrays;
import loopwright.flight.Descent;
import loopwright.player.AimedSwing;
import loopwright.player.Landing;
import loopwright.player.StrikeSample;

/**
 * A weighted sample of the strikes of one shot from one lie on one day, in cells along and right of the aim. The solid
 * strikes and each kind of mishit are strata of their own with well-spread points, so that rare bad shots are always
 * present with their right weight.
 */
final class Cloud {
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

    /** Strikes as drawn, for a day that reads them for one bearing after the other. */
    static final class Drawn {
        private final int[] strata;
        private final double[] weight;
        private final StrikeSample sample;
        private final float[] patience;

        /** Takes the swing on any bearing. */
        Drawn(StrikeDraws draws, AimedSwing swing, long seed) {
            strata = draws.strata;
            weight = draws.weights();
            sample = new StrikeSample(draws.size());
            patience = new float[draws.size()];
            draws.draw(seed, (i, strike, gustAlong, gustAcross, survives) -> {
                sample.put(i, strike, swing, gustAlong, gustAcross);
                patience[i] = (float) survives;
            });
        }
    }

    private Cloud(int[] strata, double[] weight) {
        this.strata = strata;
        size = strata[strata.length - 1];
        numbers = new float[FIELDS * size];
        this.weight = weight;
    }

    /** Strikes that no day changes. */
    static Cloud of(StrikeDraws draws, long seed) {
        Cloud cloud = new Cloud(draws.strata, draws.weights());
        draws.draw(seed, (i, strike, gustAlong, gustAcross, patience) -> cloud.set(i, strike, patience));
        return cloud;
    }

    /** What the day makes of strikes on the bearing of the swing. */
    static Cloud of(Drawn drawn, AimedSwing swing) {
        Cloud cloud = new Cloud(drawn.strata, drawn.weight);
        Landing landing = new Landing();
        for (int i = 0; i < cloud.size; i++) {
            drawn.sample.read(i, swing, landing);
            cloud.set(i, landing, drawn.patience[i]);
        }
        return cloud;
    }

    private void set(int i, Landing landing, double survives) {
        int at = FIELDS * i;
        numbers[at + FORWARD] = (float) (landing.forwardMetres / HoleRaster.CELL_METRES);
        numbers[at + RIGHT] = (float) (landing.rightMetres / HoleRaster.CELL_METRES);
        numbers[at + TURN] =
                (float) (Math.atan2(landing.rightMetres, landing.forwardMetres) * TreeFan.SECTORS_PER_RADIAN);
        numbers[at + CARRY] = (float) Math.sqrt(forward(i) * forward(i) + right(i) * right(i));
        numbers[at + RUN] = (float) (landing.runMetres / HoleRaster.CELL_METRES);
        numbers[at + GREEN_RUN] = (float) (landing.greenRunMetres / HoleRaster.CELL_METRES);
        numbers[at + HEAD_FORWARD] = (float) Math.cos(landing.headingRadians);
        numbers[at + HEAD_RIGHT] = (float) Math.sin(landing.headingRadians);
        numbers[at + HEAD_TURN] = (float) (landing.headingRadians * TreeFan.SECTORS_PER_RADIAN);
        double cell = HoleRaster.CELL_METRES;
        boolean byEye = landing.descentRadians == 0;
        numbers[at + STEEPNESS] = byEye ? 0 : (float) (Descent.steepness(landing.descentRadians) * cell);
        numbers[at + BEND] =
                byEye ? 0 : (float) (Descent.bend(landing.landingSpeed, landing.descentRadians) * cell * cell);
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

    /** Steepness of the end of the flight (see {@link Descent}), metres per cell; 0: judged by eye, lands where it is meant to. */
    float steepness(int i) {
        return numbers[FIELDS * i + STEEPNESS];
    }

    /** Bend of the end of the flight, metres per cell squared. */
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
        return new Cloud(strata, new double[weight.length]);
    }

    boolean isRoomFor(Cloud other) {
        return Arrays.equals(strata, other.strata);
    }

    /** Takes over the weights of a cloud that it is room for. */
    void weighAs(Cloud other) {
        System.arraycopy(other.weight, 0, weight, 0, weight.length);
    }

    /** Sets points {@code from} to {@code to} to what lies between two clouds of the same strikes, at a share of the way. */
    void between(Cloud a, Cloud b, float share, int from, int to) {
        for (int i = FIELDS * from; i < FIELDS * to; i++) {
            numbers[i] = a.numbers[i] + share * (b.numbers[i] - a.numbers[i]);
        }
    }
}
