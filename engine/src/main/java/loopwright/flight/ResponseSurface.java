package loopwright.flight;

import org.jspecify.annotations.Nullable;

/**
 * What a day does to every strike of one swing: from (still-air carry, still-air finish direction) and the bearing of
 * the aim to landing place, apex, descent, heading and run.
 *
 * <p>Every launch of a {@link LaunchGrid} is flown once for {@value #BEARINGS} bearings of the aim against the wind.
 * Between nodes the shift of the landing place against still air and the runs are read by cubics through four nodes
 * each way, all else linearly; a shorter carry than the shortest node scales that node's values down, a longer carry or wider
 * direction is held at the edge. Against flights of their own, landing places differ by less than {@link
 * #LARGEST_ERROR_METRES} in winds up to 10 m/s ({@code ResponseSurfaceTest}).
 *
 * <p>Gusts: the same flown once more in a wind stronger by one standard deviation, and once in none, gives shift and
 * runs per deviation along the wind, and per deviation squared by the parabola through the three speeds; across it the
 * wind turns either way, by a share of the deviation (see {@link Wind}).
 *
 * <p>Loft: the grid's higher and lower strikes are flown as well; what a strike's loft does is the parabola through the
 * three. A gust changes the straight part of it, along and across, by as much for every deviation.
 */
public final class ResponseSurface {
    public static final double LARGEST_ERROR_METRES = 0.5;

    static final int BEARINGS = 16;

    private static final int CARRIES = LaunchGrid.CARRIES;
    private static final int DIRECTIONS = LaunchGrid.DIRECTIONS;
    private static final double TURN = 2 * Math.PI;

    private final double carryStep;
    private final Wind wind;
    private final Flown usual;
    /** Of strikes with {@value LaunchGrid#LOFT_STEP} deviations more and less loft; null where they do not differ in loft. */
    private final @Nullable Flown higher;

    private final @Nullable Flown lower;
    /** The day's air without wind; empty where there are no gusts. */
    private final float[] windless;

    /** By bearing: in the mean wind, and in one stronger by a deviation (empty where there are no gusts). */
    private static final class Flown {
        private final float[][] mean;
        private final float[][] stronger;

        Flown(float[][] mean, float[][] stronger) {
            this.mean = mean;
            this.stronger = stronger;
        }
    }

    public ResponseSurface(LaunchGrid grid, DayConditions day, DayGround ground) {
        carryStep = grid.carryStepMetres;
        wind = day.wind();
        usual = flown(grid, day.air(), ground);
        LaunchGrid.Lofts lofts = grid.lofts();
        higher = lofts == null ? null : flown(lofts.higher(), day.air(), ground);
        lower = lofts == null ? null : flown(lofts.lower(), day.air(), ground);
        windless = wind.isGusty() ? fly(balls(grid), FlightSetting.of(day.air(), Breeze.NONE), ground) : new float[0];
    }

    private Flown flown(LaunchGrid grid, Air air, DayGround ground) {
        FlightWorkspace balls = balls(grid);
        double speed = wind.speedMetresPerSecond();
        return new Flown(
                around(balls, air, ground, speed),
                wind.isGusty() ? around(balls, air, ground, speed + wind.gustSdMetresPerSecond()) : new float[0][]);
    }

    private static FlightWorkspace balls(LaunchGrid grid) {
        FlightWorkspace balls = new FlightWorkspace(CARRIES * DIRECTIONS);
        for (int c = 0; c < CARRIES; c++) {
            for (int d = 0; d < DIRECTIONS; d++) {
                balls.put(c * DIRECTIONS + d, grid.at(c, d));
            }
        }
        return balls;
    }

    /** One table per bearing; those with the wind from the left mirror those with it from the right. */
    private float[][] around(FlightWorkspace balls, Air air, DayGround ground, double speed) {
        if (wind.isStill()) {
            return new float[][] {fly(balls, FlightSetting.of(air, Breeze.NONE), ground)};
        }
        float[][] out = new float[BEARINGS][];
        for (int b = 0; b <= BEARINGS / 2; b++) {
            Breeze breeze = Wind.steady(speed, b * TURN / BEARINGS).along(0);
            out[b] = fly(balls, FlightSetting.of(air, breeze), ground);
        }
        for (int b = 1; b < BEARINGS / 2; b++) {
            out[BEARINGS - b] = mirrored(out[b]);
        }
        return out;
    }

    private float[] fly(FlightWorkspace balls, FlightSetting setting, DayGround ground) {
        int count = CARRIES * DIRECTIONS;
        new BallFlight(setting).fly(balls, count, 0);
        float[] out = new float[count * StrikeTable.FIELDS];
        for (int i = 0; i < count; i++) {
            double carry = (i / DIRECTIONS + 1) * carryStep;
            double direction = LaunchGrid.direction(i % DIRECTIONS);
            double speed = balls.landingSpeed[i];
            double descent = balls.descent[i];
            double spin = balls.landingSpin[i];
            int at = i * StrikeTable.FIELDS;
            out[at] = (float) (balls.forward[i] - carry * Math.cos(direction));
            out[at + 1] = (float) (balls.right[i] - carry * Math.sin(direction));
            out[at + 2] = (float) balls.apex[i];
            out[at + 3] = (float) descent;
            out[at + 4] = (float) (balls.heading[i] - direction);
            out[at + 5] = (float) ground.fairway().runMetres(speed, descent, spin);
            out[at + 6] = (float) ground.green().runMetres(speed, descent, spin);
            out[at + 7] = (float) speed;
        }
        return out;
    }

    private static float[] mirrored(float[] table) {
        float[] out = new float[table.length];
        for (int c = 0; c < CARRIES; c++) {
            for (int d = 0; d < DIRECTIONS; d++) {
                int from = (c * DIRECTIONS + d) * StrikeTable.FIELDS;
                int to = (c * DIRECTIONS + DIRECTIONS - 1 - d) * StrikeTable.FIELDS;
                System.arraycopy(table, from, out, to, StrikeTable.FIELDS);
                out[to + 1] = -out[to + 1];
                out[to + 4] = -out[to + 4];
            }
        }
        return out;
    }

    /** The surface for one bearing of the aim, ready for many strikes. */
    public StrikeTable toward(double aimBearingRadians) {
        double relative = wind.fromBearingRadians() - aimBearingRadians;
        float[] here = slice(usual.mean, relative);
        return new StrikeTable(carryStep, here, wind.isGusty() ? gusts(here, relative) : null, loft(here, relative));
    }

    private StrikeTable.Gusts gusts(float[] here, double relative) {
        float[] stronger = slice(usual.stronger, relative);
        double speed = wind.speedMetresPerSecond();
        double gust = wind.gustSdMetresPerSecond();
        float[] along = new float[here.length];
        float[] squared = new float[here.length];
        for (int i = 0; i < here.length; i++) {
            double slope = (stronger[i] - here[i]) / gust;
            double bend = (slope - (here[i] - windless[i]) / speed) / (speed + gust);
            squared[i] = (float) (bend * gust * gust);
            along[i] = stronger[i] - here[i] - squared[i];
        }
        float[] across = halfway(slice(usual.mean, relative + turn()), slice(usual.mean, relative - turn()));
        return new StrikeTable.Gusts(along, squared, across);
    }

    /** How far one deviation across the wind turns it: a quarter turn at most. */
    private double turn() {
        return Math.min(Math.PI / 2, Wind.ACROSS_SHARE * wind.gustSdMetresPerSecond() / wind.speedMetresPerSecond());
    }

    private StrikeTable.@Nullable Loft loft(float[] here, double relative) {
        if (higher == null || lower == null) {
            return null;
        }
        float[] up = slice(higher.mean, relative);
        float[] down = slice(lower.mean, relative);
        float[] more = halfway(up, down);
        float[] squared = new float[here.length];
        for (int i = 0; i < here.length; i++) {
            squared[i] = (up[i] + down[i]) / 2 - here[i];
        }
        if (!wind.isGusty()) {
            return new StrikeTable.Loft(more, squared, null, null);
        }
        float[] along = halfway(slice(higher.stronger, relative), slice(lower.stronger, relative));
        for (int i = 0; i < along.length; i++) {
            along[i] -= more[i];
        }
        float[] right = halfway(slice(higher.mean, relative + turn()), slice(lower.mean, relative + turn()));
        float[] left = halfway(slice(higher.mean, relative - turn()), slice(lower.mean, relative - turn()));
        return new StrikeTable.Loft(more, squared, along, halfway(right, left));
    }

    /** Half of what lies between two tables. */
    private static float[] halfway(float[] from, float[] to) {
        float[] out = new float[from.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (from[i] - to[i]) / 2;
        }
        return out;
    }

    /** The cubic through the four nearest bearings, around the circle. */
    private static float[] slice(float[][] tables, double relative) {
        if (tables.length == 1) {
            return tables[0];
        }
        int n = tables.length;
        double x = relative / TURN * n;
        double cell = Math.floor(x);
        double[] w = new double[4];
        StrikeTable.cubic(x - cell, w);
        float[] out = new float[tables[0].length];
        for (int k = 0; k < 4; k++) {
            float[] node = tables[Math.floorMod((int) cell - 1 + k, n)];
            for (int i = 0; i < out.length; i++) {
                out[i] += (float) (w[k] * node[i]);
            }
        }
        return out;
    }
}
