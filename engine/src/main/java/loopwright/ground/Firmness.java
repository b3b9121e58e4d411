package loopwright.ground;

/**
 * How firm the ground is today: a setting of the day, -1 (soft, after rain) to +1 (baked), 0 ordinary.
 *
 * <p>At 0 the published bounce of {@link Bounce} holds as it stands. Soft ground has a deeper crater, less rebound and
 * more drag on the roll. No measured scale was found; the multipliers are assumed, chosen so that a drive runs about
 * half as far on soft and half again as far on firm ground as on ordinary.
 */
public record Firmness(double value) {
    public static final Firmness SOFT = new Firmness(-1);
    public static final Firmness ORDINARY = new Firmness(0);
    public static final Firmness FIRM = new Firmness(1);

    public Firmness {
        if (!(value >= -1 && value <= 1)) {
            throw new IllegalArgumentException("firmness lies between -1 (soft) and 1 (firm), not " + value);
        }
    }

    /** Multiplies the slope of the crater wall. */
    double crater() {
        return Math.exp(-0.1 * value);
    }

    /** Multiplies the coefficient of restitution. */
    double rebound() {
        return Math.exp(0.1 * value);
    }

    /** Multiplies the rolling resistance. */
    double roll() {
        return Math.exp(-0.2 * value);
    }
}
