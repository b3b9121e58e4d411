package loopwright.cli;

import java.util.Locale;
import loopwright.action.UserFault;
import loopwright.ground.Firmness;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options for the day's air and ground; what is left out is the usual day's. */
final class AirAndGroundOptions {
    @Option(
            names = "--air",
            defaultValue = "",
            paramLabel = "\"24 C, 30.0 inHg, 50 %\"",
            description = "Temperature, pressure, humidity; with --altitude the pressure is taken as reduced to sea"
                    + " level unless followed by \"station\".")
    private String air = "";

    @Option(
            names = "--altitude",
            paramLabel = "300m",
            description = "Height above sea level, -450 m to 4,500 m (or ft).")
    private @Nullable String altitude;

    @Option(
            names = "--firmness",
            defaultValue = "ordinary",
            paramLabel = "FIRMNESS",
            description = "Of the ground: soft, ordinary or firm.")
    private String firmness = "ordinary";

    AirText air() {
        double metres = altitude == null
                ? 0
                : Measure.LENGTH.parse("--altitude", altitude, "an altitude", -450, 4500, "m", "300m");
        return AirText.parse("--air", air, metres, altitude != null);
    }

    Firmness firmness() {
        return switch (firmness.strip().toLowerCase(Locale.ROOT)) {
            case "soft" -> Firmness.SOFT;
            case "ordinary" -> Firmness.ORDINARY;
            case "firm" -> Firmness.FIRM;
            default -> throw new UserFault("--firmness \"" + firmness + "\" is not one of soft, ordinary, firm.");
        };
    }
}
