package loopwright.putting;

/** Catmull-Rom interpolation on three or more equal steps; the ends follow the parabola through the last three. */
final class Cubic {
    private Cubic() {}

    static int cell(double index, int count) {
        return Math.max(0, Math.min(count - 2, (int) index));
    }

    /** The value at a fractional index of {@code count} values that start at {@code first}. */
    static double at(double[] values, int first, int count, double index) {
        int cell = cell(index, count);
        int i = first + cell;
        double low = values[i];
        double high = values[i + 1];
        double before = cell > 0 ? values[i - 1] : 3 * low - 3 * high + values[i + 2];
        double after = cell < count - 2 ? values[i + 2] : 3 * high - 3 * low + values[i - 1];
        return between(before, low, high, after, index - cell);
    }

    static double at(double[] values, double index) {
        return at(values, 0, values.length, index);
    }

    /** Change of the value per index. */
    static double slopeAt(double[] values, double index) {
        double step = 1e-4;
        return (at(values, index + step) - at(values, index - step)) / (2 * step);
    }

    /** The spline between {@code low} (t = 0) and {@code high} (t = 1); straight outside. */
    static double between(double before, double low, double high, double after, double t) {
        double m0 = (high - before) / 2;
        double m1 = (after - low) / 2;
        if (t < 0) {
            return low + t * m0;
        }
        if (t > 1) {
            return high + (t - 1) * m1;
        }
        double t2 = t * t;
        double t3 = t2 * t;
        return (2 * t3 - 3 * t2 + 1) * low + (t3 - 2 * t2 + t) * m0 + (3 * t2 - 2 * t3) * high + (t3 - t2) * m1;
    }
}
