package loopwright.cli;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.PlanDay;
import loopwright.action.UserFault;
import loopwright.flight.DayConditions;
import loopwright.flight.Wind;
import loopwright.putting.GreenSpeed;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options for the day or days a round is planned for. */
final class DayOptions {
    @Option(
            names = "--wind",
            paramLabel = "\"15 mph from 270\"",
            description =
                    "Wind at 10 m and the bearing it blows from, or none; repeat it to see how the choices change.")
    private List<String> winds = new ArrayList<>();

    @Option(names = "--gust", paramLabel = "\"22 mph\"", description = "Gusts of the wind; every shot meets its own.")
    private @Nullable String gust;

    @Mixin
    private AirAndGroundOptions airAndGround = new AirAndGroundOptions();

    @Option(
            names = "--green-speed",
            paramLabel = "10",
            defaultValue = "10",
            description = "Roll from a Stimpmeter in feet, 4 to 16 (10).")
    private String greenSpeed = "10";

    /** One day for every wind, the first first. */
    List<PlanDay> days() {
        if (gust != null && winds.isEmpty()) {
            throw new UserFault("--gust \"" + gust + "\" needs a wind to gust; say --wind \"15 mph from 270\" too.");
        }
        GreenSpeed greens = PuttWords.greenSpeed(greenSpeed);
        List<PlanDay> out = new ArrayList<>();
        for (String text : winds.isEmpty() ? List.of("none") : winds) {
            DayConditions day = new DayConditions(
                    airAndGround.air().air(), wind(text), airAndGround.firmness(), greens.rollingResistance());
            out.add(new PlanDay(day, greens));
        }
        return out;
    }

    /** A sentence about a converted pressure, or empty. */
    String remark() {
        return airAndGround.air().remark();
    }

    private Wind wind(String text) {
        Wind wind = WindText.parse("--wind", text);
        if (gust == null || wind.isStill()) {
            return wind;
        }
        double peak = Measure.SPEED.parse("--gust", gust, "a gust", 0, 90, "mph", "22 mph");
        if (!(peak > wind.speedMetresPerSecond())) {
            throw new UserFault("--gust \"" + gust + "\" is no stronger than the wind, \"" + text
                    + "\"; give the strongest gust, or leave it out.");
        }
        return Wind.gusting(wind.speedMetresPerSecond(), wind.fromBearingRadians(), peak);
    }
}
