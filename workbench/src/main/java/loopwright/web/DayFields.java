package loopwright.web;

import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.input;
import static j2html.TagCreator.option;
import static j2html.TagCreator.select;
import static j2html.TagCreator.summary;

import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import loopwright.action.DayChoice;
import loopwright.action.DayChoice.Ground;
import loopwright.action.UserFault;
import loopwright.flight.Wind;
import loopwright.putting.GreenSpeed;

/** The day of a plan in an address and in a form: wind, air, altitude, ground and greens. */
final class DayFields {
    /** Which units an address is written in; without it m/s, degrees Celsius and metres. */
    private static final String UNITS = "in";

    private static final List<String> POINTS = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");
    private static final double POINT_DEGREES = 45;

    private final DayChoice day;
    private final Units units;

    DayFields(DayChoice day, Units units) {
        this.day = day;
        this.units = units;
    }

    /** The day an address tells; what it leaves out is the usual day's. */
    static DayChoice read(Context ctx) {
        Units units = Units.ofCode(PlanQuery.text(ctx, UNITS, ""));
        DayChoice usual = DayChoice.USUAL;
        double greens = units.greenMetres(number(
                ctx,
                "greens",
                units.greenNumber(usual.greens().rollMetres()),
                limits(units).greens()));
        return new DayChoice(
                wind(ctx, units),
                units.celsiusOf(number(
                        ctx,
                        "air",
                        units.airNumber(usual.celsius()),
                        limits(units).air())),
                number(ctx, "humidity", 100 * usual.humidity(), new Range(0, 100)) / 100,
                units.heightMetres(number(ctx, "altitude", 0, limits(units).altitude())),
                ground(PlanQuery.text(ctx, "ground", "ordinary")),
                GreenSpeed.ofRollMetres(greens));
    }

    private record Range(double low, double high) {}

    private record Limits(Range wind, Range air, Range altitude, Range greens) {}

    /** The ranges of the command line, in whole numbers of a unit. */
    private static Limits limits(Units units) {
        return new Limits(
                new Range(0, Math.round(units.windNumber(26.8))),
                new Range(Math.round(units.airNumber(-25)), Math.round(units.airNumber(50))),
                new Range(Math.round(units.heightNumber(-450)), Math.round(units.heightNumber(4500))),
                new Range(units.metricGreens() ? 1.2 : 4, units.metricGreens() ? 4.9 : 16));
    }

    private static double number(Context ctx, String name, double usual, Range range) {
        if (PlanQuery.text(ctx, name, "").isEmpty()) {
            return usual;
        }
        double value = PlanQuery.decimal(ctx, name);
        if (!(value >= range.low() && value <= range.high())) {
            throw new UserFault(Texts.say(
                    "day.range", Texts.say("day." + name), plain(value), plain(range.low()), plain(range.high())));
        }
        return value;
    }

    private static Wind wind(Context ctx, Units units) {
        Range range = limits(units).wind();
        double speed = units.windMetresPerSecond(number(ctx, "wind", 0, range));
        double gust = units.windMetresPerSecond(number(ctx, "gust", 0, new Range(0, 1.5 * range.high())));
        if (speed == 0) {
            if (gust > 0) {
                throw new UserFault(Texts.say("day.gustAlone"));
            }
            return Wind.NONE;
        }
        double from = Math.toRadians(number(ctx, "from", 0, new Range(0, 360)));
        if (gust > 0 && !(gust > speed)) {
            throw new UserFault(Texts.say("day.gustWeak"));
        }
        return gust > 0 ? Wind.gusting(speed, from, gust) : Wind.steady(speed, from);
    }

    private static Ground ground(String word) {
        return Arrays.stream(Ground.values())
                .filter(g -> g.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst()
                .orElseThrow(() -> new UserFault(Texts.say("day.groundUnknown", word)));
    }

    /** A number as it is typed. */
    private static String plain(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }

    DomContent fields() {
        Wind wind = day.wind();
        boolean still = wind.isStill();
        return details(
                summary(Texts.say("day.title", words())),
                div(
                                input().withType("hidden").withName(UNITS).withValue(units.code()),
                                field(
                                        "wind",
                                        units.windUnit(),
                                        still ? "" : plain(units.windNumber(wind.speedMetresPerSecond()))),
                                field("from", "", still ? "" : plain(fromDegrees())),
                                field(
                                        "gust",
                                        units.windUnit(),
                                        wind.isGusty() ? plain(units.windNumber(wind.gustMetresPerSecond())) : ""),
                                field("air", units.airUnit(), plain(units.airNumber(day.celsius()))),
                                field("humidity", "%", plain(100 * day.humidity())),
                                field("altitude", units.heightUnit(), plain(units.heightNumber(day.altitudeMetres()))),
                                PlanForm.field("day.ground", grounds()),
                                field(
                                        "greens",
                                        units.greenUnit(),
                                        plain(units.greenNumber(day.greens().rollMetres()))))
                        .withClass("fields short"));
    }

    private double fromDegrees() {
        return Math.toDegrees(day.wind().fromBearingRadians());
    }

    private static DomContent field(String name, String unit, String value) {
        return j2html.TagCreator.label(
                j2html.TagCreator.span(Texts.say("day." + name) + (unit.isEmpty() ? "" : ", " + unit)),
                input().withType("text").withName(name).withValue(value).attr("inputmode", "decimal"));
    }

    private DomContent grounds() {
        return select(each(
                        Arrays.asList(Ground.values()),
                        g -> option(Texts.say("ground." + g.name()))
                                .withValue(g.name().toLowerCase(Locale.ROOT))
                                .withCondSelected(g == day.ground())))
                .withName("ground");
    }

    /** The day in a few words: "wind 10 mph from W gusting 15, 75 F, greens 10 ft". */
    String words() {
        List<String> out = new ArrayList<>();
        out.add(wind());
        out.add(Words.of("%.0f ", units.airNumber(day.celsius())) + units.airUnit());
        if (day.altitudeMetres() != 0) {
            out.add(Texts.say(
                    "day.at", Words.of("%.0f", units.heightNumber(day.altitudeMetres())), units.heightUnit()));
        }
        if (day.ground() != Ground.ORDINARY) {
            out.add(Texts.say("day.isGround", Texts.say("ground." + day.ground().name())));
        }
        out.add(Texts.say("day.isGreens", plain(units.greenNumber(day.greens().rollMetres())), units.greenUnit()));
        return String.join(", ", out);
    }

    private String wind() {
        Wind wind = day.wind();
        if (wind.isStill()) {
            return Texts.say("day.still");
        }
        String speed = Words.of("%.0f ", units.windNumber(wind.speedMetresPerSecond())) + units.windUnit();
        String gust = wind.isGusty()
                ? " " + Texts.say("day.gusting", Words.of("%.0f", units.windNumber(wind.gustMetresPerSecond())))
                : "";
        return Texts.say("day.windFrom", speed, point(fromDegrees())) + gust;
    }

    private static String point(double degrees) {
        return POINTS.get((int) Math.round(degrees / POINT_DEGREES) % POINTS.size());
    }
}
