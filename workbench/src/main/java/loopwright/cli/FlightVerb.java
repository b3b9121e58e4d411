package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import loopwright.action.FlownShot;
import loopwright.action.FlyShot;
import loopwright.action.ReadLengths;
import loopwright.action.ResultFile;
import loopwright.action.ShotQuestion;
import loopwright.action.UserFault;
import loopwright.flight.DayConditions;
import loopwright.flight.Launch;
import loopwright.flight.Wind;
import loopwright.ground.Surface;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright flight}: one ball from its launch to where it lies. */
@Command(
        name = "flight",
        mixinStandardHelpOptions = true,
        description = "Flies one ball in the day's air and wind and lets it run out on level ground.")
public final class FlightVerb implements Callable<Integer> {
    private final FlyShot fly;
    private final ResultFile results;

    @Spec
    private @Nullable CommandSpec spec;

    @Option(
            names = "--ball-speed",
            required = true,
            paramLabel = "\"167.7 mph\"",
            description = "Ball speed, 5 to 230 mph (also m/s, ft/s, km/h).")
    private String ballSpeed = "";

    @Option(
            names = "--launch",
            required = true,
            paramLabel = "DEGREES",
            description = "Launch angle above the horizontal, -10 to 80.")
    private String launch = "";

    @Option(names = "--spin", required = true, paramLabel = "RPM", description = "Total spin, 0 to 14,000.")
    private String spin = "";

    @Option(
            names = "--axis",
            defaultValue = "0",
            paramLabel = "DEGREES",
            description = "Tilt of the spin axis, -80 to 80; + curves to the right.")
    private String axis = "0";

    @Option(
            names = "--start",
            defaultValue = "0",
            paramLabel = "DEGREES",
            description = "Start direction, -60 to 60; + right of the aim.")
    private String start = "0";

    @Option(
            names = "--wind",
            defaultValue = "none",
            paramLabel = "\"15 mph from 0\"",
            description = "Wind at 10 m and the bearing it blows from.")
    private String wind = "none";

    @Option(
            names = "--direction",
            defaultValue = "0",
            paramLabel = "DEGREES",
            description = "Compass bearing of the aim, 0 (north) to 360.")
    private String direction = "0";

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private AirAndGroundOptions airAndGround = new AirAndGroundOptions();

    @Option(
            names = "--land",
            defaultValue = "0",
            paramLabel = "+5m",
            description = "Height of the landing place against the strike, -100 m to 100 m (or ft, yd).")
    private String land = "0";

    @Option(
            names = "--surface",
            defaultValue = "fairway",
            paramLabel = "SURFACE",
            description = "What it runs on: fairway, green, rough, deep rough, bunker, waste area, woods, path.")
    private String surface = "fairway";

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write the numbers to this file as JSON (docs/schema/flight.schema.json).")
    private @Nullable Path json;

    @Option(names = "--picture", paramLabel = "FILE", description = "Also draw the flight, SVG or PNG by the ending.")
    private @Nullable Path picture;

    public FlightVerb(FlyShot fly, ResultFile results) {
        this.fly = fly;
        this.results = results;
    }

    @Override
    public Integer call() {
        ReadLengths lengths = units.lengths();
        AirText airToday = airAndGround.air();
        Wind windToday = WindText.parse("--wind", wind);
        DayConditions day = new DayConditions(
                airToday.air(), windToday, airAndGround.firmness(), DayConditions.ORDINARY_GREEN_RESISTANCE);
        double bearing = Measure.ANGLE.parse("--direction", direction, "a bearing", 0, 360, "deg", "270");
        double landing = Measure.LENGTH.parse("--land", land, "a height", -100, 100, "m", "+5m");
        FlownShot shot = fly.fly(new ShotQuestion(launch(), day, bearing, landing, surface()));
        FlightReport report = FlightReport.of(shot, surface.strip().toLowerCase(Locale.ROOT));
        print(report, lengths, airToday.remark());
        if (json != null) {
            results.write(json, report);
        }
        if (picture != null) {
            fly.draw(shot, picture);
        }
        return 0;
    }

    private Launch launch() {
        return new Launch(
                Measure.SPEED.parse("--ball-speed", ballSpeed, "a ball speed", 5, 230, "mph", "167.7 mph"),
                Measure.ANGLE.parse("--launch", launch, "a launch angle", -10, 80, "deg", "10.8"),
                Measure.ANGLE.parse("--start", start, "a start direction", -60, 60, "deg", "-1"),
                Measure.SPIN.parse("--spin", spin, "a spin", 0, 14_000, "rpm", "2599"),
                Measure.ANGLE.parse("--axis", axis, "a tilt of the spin axis", -80, 80, "deg", "3"));
    }

    private Surface surface() {
        return switch (surface.strip().toLowerCase(Locale.ROOT)) {
            case "fairway" -> Surface.FAIRWAY;
            case "green" -> Surface.GREEN;
            case "rough" -> Surface.ROUGH;
            case "deep rough" -> Surface.DEEP_ROUGH;
            case "bunker" -> Surface.BUNKER;
            case "waste area" -> Surface.WASTE_AREA;
            case "woods" -> Surface.WOODS;
            case "path" -> Surface.PATH;
            default ->
                throw new UserFault("--surface \"" + surface
                        + "\" is not one of fairway, green, rough, deep rough, bunker," + " waste area, woods, path.");
        };
    }

    private void print(FlightReport r, ReadLengths lengths, String remark) {
        PrintWriter out = spec().commandLine().getOut();
        out.println(String.format(
                Locale.ROOT,
                "Carry %s, %s; total %s on %s, %s.",
                yards(r.carryYards(), lengths),
                side(r.sideYards(), lengths),
                yards(r.totalYards(), lengths),
                r.surface(),
                side(r.totalSideYards(), lengths)));
        out.println(String.format(
                Locale.ROOT,
                "Apex %s, %.2f s in the air, down at %.1f degrees with %.1f mph and %.0f rpm.",
                yards(r.apexYards(), lengths),
                r.seconds(),
                r.descentDegrees(),
                r.landingMph(),
                r.landingRpm()));
        out.println(String.format(Locale.ROOT, "Air density %.4f kg/m3.", r.airDensityKgPerCubicMetre()));
        if (r.gustYards() > 0) {
            out.println(String.format(
                    Locale.ROOT,
                    "Gusts move the landing by %s from shot to shot (one standard deviation).",
                    yards(r.gustYards(), lengths)));
        }
        if (!remark.isEmpty()) {
            out.println(remark);
        }
        out.println(r.note());
        out.flush();
    }

    private static String yards(double yards, ReadLengths lengths) {
        return lengths.fine(Distance.ofYards(yards).metres());
    }

    private static String side(double yards, ReadLengths lengths) {
        if (Math.abs(yards) < 0.05) {
            return "on line";
        }
        return yards(Math.abs(yards), lengths) + (yards > 0 ? " right" : " left");
    }

    private CommandSpec spec() {
        if (spec == null) {
            throw new IllegalStateException("the verb is run by the command line");
        }
        return spec;
    }
}
