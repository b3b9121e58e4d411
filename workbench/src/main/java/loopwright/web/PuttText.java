package loopwright.web;

import java.util.LinkedHashMap;
import java.util.Map;
import loopwright.action.PuttAnswer;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;

/** What one putt asks for and brings, in words; nothing of break where the slope was not measured. */
final class PuttText {
    private static final double INCHES_PER_FOOT = 12;

    private final PuttAnswer answer;
    private final Units units;

    PuttText(PuttAnswer answer, Units units) {
        this.answer = answer;
        this.units = units;
    }

    String heading() {
        return Texts.say(
                "putt.heading",
                length(answer.distanceFeet()),
                Words.of("%.1f", answer.greenSpeedFeet()),
                slope(answer.uphillPercent(), answer.fallsRightPercent()));
    }

    private static String slope(@Nullable Double uphill, @Nullable Double fallsRight) {
        if (uphill == null || fallsRight == null) {
            return Texts.say("putt.noSlope");
        }
        return Texts.say(uphill >= 0 ? "putt.up" : "putt.down", Words.of("%.1f", Math.abs(uphill))) + ", "
                + Texts.say(fallsRight >= 0 ? "putt.right" : "putt.left", Words.of("%.1f", Math.abs(fallsRight)));
    }

    /** Rows of the table, name to value, in the order of play. */
    Map<String, String> rows() {
        Map<String, String> out = new LinkedHashMap<>();
        Double aim = answer.aimInches();
        Double turn = answer.breakInches();
        if (aim != null && turn != null) {
            String side = Math.abs(aim) < 0.05
                    ? Texts.say("putt.centre")
                    : Texts.say(aim > 0 ? "putt.aimRight" : "putt.aimLeft", fine(Math.abs(aim)));
            out.put(Texts.say("putt.start"), side);
            out.put(Texts.say("putt.break"), fine(turn));
        }
        double past = answer.paceFeetPast();
        out.put(
                Texts.say("putt.pace"),
                Texts.say(past >= 0 ? "putt.past" : "putt.short", fine(Math.abs(past) * INCHES_PER_FOOT)));
        out.put(Texts.say("putt.one"), Words.percent(answer.odds().one()));
        out.put(Texts.say("putt.two"), Words.percent(answer.odds().two()));
        out.put(Texts.say("putt.three"), Words.percent(answer.odds().threeOrMore()));
        out.put(Texts.say("putt.expected"), Words.of("%.2f", answer.expectedPutts()));
        out.put(Texts.say("putt.leave"), fine(answer.leave().meanFeet() * INCHES_PER_FOOT));
        return out;
    }

    private String length(double feet) {
        return units.shortLength(Distance.ofFeet(feet).metres());
    }

    /** A few inches or feet, or centimetres. */
    private String fine(double inches) {
        double metres = Distance.ofFeet(inches / INCHES_PER_FOOT).metres();
        if (units.metricGreens()) {
            return Words.of("%.0f cm", 100 * metres);
        }
        return inches < 2 * INCHES_PER_FOOT
                ? Words.of("%.0f in", inches)
                : Words.of("%.1f ft", inches / INCHES_PER_FOOT);
    }
}
