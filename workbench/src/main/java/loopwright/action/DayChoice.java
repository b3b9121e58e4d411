package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.flight.Air;
import loopwright.flight.DayConditions;
import loopwright.flight.Wind;
import loopwright.ground.Firmness;
import loopwright.putting.GreenSpeed;
import loopwright.units.Distance;

/**
 * The day of a plan as a person chooses it.
 *
 * @param wind at 10 m, with its gusts
 * @param altitudeMetres height above sea level, from which the pressure follows
 */
public record DayChoice(
        Wind wind, double celsius, double humidity, double altitudeMetres, Ground ground, GreenSpeed greens) {
    private static final double USUAL_CELSIUS = 24;
    private static final double USUAL_HUMIDITY = 0.5;

    /** The day that is planned for where nobody says otherwise. */
    public static final DayChoice USUAL = new DayChoice(
            Wind.NONE,
            USUAL_CELSIUS,
            USUAL_HUMIDITY,
            0,
            Ground.ORDINARY,
            GreenSpeed.ofRollMetres(10 * Distance.METRES_PER_FOOT));

    /** How firm the ground is, in three words. */
    public enum Ground {
        SOFT,
        ORDINARY,
        FIRM;

        Firmness firmness() {
            return switch (this) {
                case SOFT -> Firmness.SOFT;
                case ORDINARY -> Firmness.ORDINARY;
                case FIRM -> Firmness.FIRM;
            };
        }
    }

    public PlanDay day() {
        Air air = Air.atAltitude(celsius + Air.ZERO_CELSIUS_KELVIN, altitudeMetres, humidity);
        return new PlanDay(new DayConditions(air, wind, ground.firmness(), greens.rollingResistance()), greens);
    }

    public DayChoice withWind(Wind other) {
        return new DayChoice(other, celsius, humidity, altitudeMetres, ground, greens);
    }

    /** What differs from the usual day, in the form of an address: m/s, degrees, C, %, m. */
    List<String> inputs() {
        List<String> out = new ArrayList<>();
        if (!wind.isStill()) {
            add(out, "wind", wind.speedMetresPerSecond());
            add(out, "from", Math.toDegrees(wind.fromBearingRadians()));
            if (wind.isGusty()) {
                add(out, "gust", wind.gustMetresPerSecond());
            }
        }
        addUnless(out, "air", celsius, USUAL_CELSIUS);
        addUnless(out, "humidity", 100 * humidity, 100 * USUAL_HUMIDITY);
        addUnless(out, "altitude", altitudeMetres, 0);
        if (ground != Ground.ORDINARY) {
            out.add("ground=" + ground.name().toLowerCase(Locale.ROOT));
        }
        addUnless(out, "greens", greens.rollMetres(), USUAL.greens.rollMetres());
        return out;
    }

    private static void addUnless(List<String> out, String name, double value, double usual) {
        if (value != usual) {
            add(out, name, value);
        }
    }

    /** With as many digits as tell the value apart, the noise of a change of units left out. */
    private static void add(List<String> out, String name, double value) {
        out.add(name + "="
                + java.math.BigDecimal.valueOf(value)
                        .round(new java.math.MathContext(12))
                        .stripTrailingZeros()
                        .toPlainString());
    }
}
