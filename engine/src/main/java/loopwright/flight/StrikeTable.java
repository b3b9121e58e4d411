package loopwright.flight;

import org.jspecify.annotations.Nullable;

/**
 * A {@link ResponseSurface} for one bearing of the aim: reads single strikes. Immutable; any number of threads may
 * share it.
 */
public final class StrikeTable {
    /** Shift forward and right, apex, descent, heading less direction, run on fairway and on green, landing speed. */
    static final int FIELDS = 8;

    private static final int ROW = LaunchGrid.DIRECTIONS * FIELDS;
    private static final double STEP = Math.toRadians(LaunchGrid.DIRECTION_STEP_DEGREES);
    private static final double WIDEST = Math.toRadians(LaunchGrid.WIDEST_DEGREES);

    private final double carryStep;
    private final float[] nodes;
    private final @Nullable Gusts gusts;
    private final @Nullable Loft loft;

    /**
     * What gusts add, node by node: per deviation along the wind, per deviation squared (a head wind that is stronger
     * by some costs more than one that is weaker by as much gives), and per deviation across it.
     */
    static final class Gusts {
        private final float[] along;
        private final float[] alongSquared;
        private final float[] across;

        Gusts(float[] along, float[] alongSquared, float[] across) {
            this.along = along;
            this.alongSquared = alongSquared;
            this.across = across;
        }
    }

    /**
     * What more loft adds, node by node, and what its square adds, in steps of {@value LaunchGrid#LOFT_STEP} deviations;
     * and how a gust changes the former.
     */
    static final class Loft {
        private final float[] more;
        private final float[] squared;
        private final float @Nullable [] along;
        private final float @Nullable [] across;

        Loft(float[] more, float[] squared, float @Nullable [] along, float @Nullable [] across) {
            this.more = more;
            this.squared = squared;
            this.along = along;
            this.across = across;
        }

        double at(int i, int j, double fx, double fy, int field, double z) {
            return z * (bilinear(more, i, j, fx, fy, field) + z * bilinear(squared, i, j, fx, fy, field));
        }
    }

    StrikeTable(double carryStep, float[] nodes, @Nullable Gusts gusts, @Nullable Loft loft) {
        this.carryStep = carryStep;
        this.nodes = nodes;
        this.gusts = gusts;
        this.loft = loft;
    }

    /** True if the day's wind is gusty: a strike then needs two standard normal draws. */
    public boolean isGusty() {
        return gusts != null;
    }

    /** Reads a strike of the usual loft in the mean wind. */
    public void read(double carryMetres, double directionRadians, Strike out) {
        read(carryMetres, directionRadians, 0, 0, 0, out);
    }

    /**
     * Reads a strike.
     *
     * @param carryMetres in still standard air, 0 or more
     * @param directionRadians finish direction in still standard air, + right of the aim
     * @param lofts how many deviations more loft than usual
     * @param gustAlong standard normal draw: the wind is stronger by so many deviations
     * @param gustAcross standard normal draw: it blows from further right by so many deviations
     */
    public void read(
            double carryMetres,
            double directionRadians,
            double lofts,
            double gustAlong,
            double gustAcross,
            Strike out) {
        double least = carryStep;
        double held = Math.min(Math.max(carryMetres, least), LaunchGrid.CARRIES * carryStep);
        double x = held / carryStep - 1;
        double y = (Math.min(Math.max(directionRadians, -WIDEST), WIDEST) + WIDEST) / STEP;
        int i = Math.min((int) x, LaunchGrid.CARRIES - 2);
        int j = Math.min((int) y, LaunchGrid.DIRECTIONS - 2);
        double fx = x - i;
        double fy = y - j;
        double small = Math.min(1, carryMetres / least);
        linear(i, j, fx, fy, small, out);
        cubics(i, j, fx, fy, small, out);
        if (loft != null) {
            double steps = LaunchSpread.held(lofts) / LaunchGrid.LOFT_STEP;
            loft(loft, i, j, fx, fy, steps, small, out);
            gustyLoft(loft, i, j, fx, fy, steps, gustAlong, gustAcross, out);
        }
        if (gusts != null) {
            gust(gusts, i, j, fx, fy, gustAlong, gustAcross, small, out);
        }
        out.forwardMetres = carryMetres * Math.cos(directionRadians) + small * out.forwardMetres;
        out.rightMetres = carryMetres * Math.sin(directionRadians) + small * out.rightMetres;
        out.headingRadians += directionRadians;
    }

    private static void loft(Loft loft, int i, int j, double fx, double fy, double z, double small, Strike out) {
        out.forwardMetres += loft.at(i, j, fx, fy, 0, z);
        out.rightMetres += loft.at(i, j, fx, fy, 1, z);
        out.apexMetres += small * loft.at(i, j, fx, fy, 2, z);
        out.descentRadians += loft.at(i, j, fx, fy, 3, z);
        out.headingRadians += loft.at(i, j, fx, fy, 4, z);
        out.fairwayRunMetres += small * loft.at(i, j, fx, fy, 5, z);
        out.greenRunMetres += small * loft.at(i, j, fx, fy, 6, z);
        out.landingSpeed += loft.at(i, j, fx, fy, 7, z);
    }

    private static void gustyLoft(
            Loft loft, int i, int j, double fx, double fy, double z, double along, double across, Strike out) {
        if (loft.along == null || loft.across == null) {
            return;
        }
        double a = z * along;
        double b = z * across;
        out.forwardMetres += a * bilinear(loft.along, i, j, fx, fy, 0) + b * bilinear(loft.across, i, j, fx, fy, 0);
        out.rightMetres += a * bilinear(loft.along, i, j, fx, fy, 1) + b * bilinear(loft.across, i, j, fx, fy, 1);
    }

    private static void gust(
            Gusts gusts, int i, int j, double fx, double fy, double along, double across, double small, Strike out) {
        double squared = along * along;
        out.forwardMetres += along * bilinear(gusts.along, i, j, fx, fy, 0)
                + squared * bilinear(gusts.alongSquared, i, j, fx, fy, 0)
                + across * bilinear(gusts.across, i, j, fx, fy, 0);
        out.rightMetres += along * bilinear(gusts.along, i, j, fx, fy, 1)
                + squared * bilinear(gusts.alongSquared, i, j, fx, fy, 1)
                + across * bilinear(gusts.across, i, j, fx, fy, 1);
        out.fairwayRunMetres += small
                * (along * bilinear(gusts.along, i, j, fx, fy, 5)
                        + squared * bilinear(gusts.alongSquared, i, j, fx, fy, 5));
        out.greenRunMetres += small
                * (along * bilinear(gusts.along, i, j, fx, fy, 6)
                        + squared * bilinear(gusts.alongSquared, i, j, fx, fy, 6));
    }

    private void linear(int i, int j, double fx, double fy, double small, Strike out) {
        out.apexMetres = small * bilinear(nodes, i, j, fx, fy, 2);
        out.descentRadians = bilinear(nodes, i, j, fx, fy, 3);
        out.headingRadians = bilinear(nodes, i, j, fx, fy, 4);
        out.landingSpeed = bilinear(nodes, i, j, fx, fy, 7);
    }

    private static double bilinear(float[] table, int i, int j, double fx, double fy, int field) {
        int at = i * ROW + j * FIELDS + field;
        double near = table[at] + fy * (table[at + FIELDS] - table[at]);
        double far = table[at + ROW] + fy * (table[at + ROW + FIELDS] - table[at + ROW]);
        return near + fx * (far - near);
    }

    /** The two shifts and the two runs, by cubics through four nodes each way (moved inward at an edge). */
    private void cubics(int i, int j, double fx, double fy, double small, Strike out) {
        int firstCarry = Math.min(Math.max(i - 1, 0), LaunchGrid.CARRIES - 4);
        int firstDirection = Math.min(Math.max(j - 1, 0), LaunchGrid.DIRECTIONS - 4);
        double tx = fx + i - firstCarry - 1;
        double ty = fy + j - firstDirection - 1;
        double w0 = -ty * (ty - 1) * (ty - 2) / 6;
        double w1 = (ty + 1) * (ty - 1) * (ty - 2) / 2;
        double w2 = -(ty + 1) * ty * (ty - 2) / 2;
        double w3 = (ty + 1) * ty * (ty - 1) / 6;
        double forward = 0;
        double right = 0;
        double fairway = 0;
        double green = 0;
        for (int k = 0; k < 4; k++) {
            double v = lagrange(k, tx);
            int at = (firstCarry + k) * ROW + firstDirection * FIELDS;
            forward += v * along(at, w0, w1, w2, w3);
            right += v * along(at + 1, w0, w1, w2, w3);
            fairway += v * along(at + 5, w0, w1, w2, w3);
            green += v * along(at + 6, w0, w1, w2, w3);
        }
        out.forwardMetres = forward;
        out.rightMetres = right;
        out.fairwayRunMetres = small * fairway;
        out.greenRunMetres = small * green;
    }

    private double along(int at, double w0, double w1, double w2, double w3) {
        return w0 * nodes[at] + w1 * nodes[at + FIELDS] + w2 * nodes[at + 2 * FIELDS] + w3 * nodes[at + 3 * FIELDS];
    }

    private static double lagrange(int k, double t) {
        return switch (k) {
            case 0 -> -t * (t - 1) * (t - 2) / 6;
            case 1 -> (t + 1) * (t - 1) * (t - 2) / 2;
            case 2 -> -(t + 1) * t * (t - 2) / 2;
            default -> (t + 1) * t * (t - 1) / 6;
        };
    }

    /** Weights of the cubic through nodes -1, 0, 1, 2 at t. */
    static void cubic(double t, double[] weights) {
        for (int k = 0; k < 4; k++) {
            weights[k] = lagrange(k, t);
        }
    }
}
