package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loopwright.action.CountText;
import loopwright.action.FitPlayer;
import loopwright.action.FitResult;
import loopwright.action.Interview;
import loopwright.action.UserFault;
import loopwright.numerics.Watch;
import loopwright.player.BallCount;
import loopwright.player.Habit;
import loopwright.player.Player;
import loopwright.player.Setting;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright fit}. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        description = "Fits shot patterns to measured shots (CSV) and writes the player.",
        footer = {
            "",
            "The header row names quantity and unit: club, carry_yd or carry_m, total_yd, side_yd (+ right);",
            "of chips, pitches, sand and putts: to_hole_yd or _ft, holed, leave_ft, mishit, miss, drill;",
            "also effort, ball (range/own), surface (mat/grass/course), lie, date, session, temperature_c or _f."
        })
public final class FitVerb implements Runnable {
    static final double SHORTEST_YARDS = 20;
    static final double LONGEST_YARDS = 380;

    private final FitPlayer action;

    @Option(names = "--shots", paramLabel = "FILE", arity = "1..*", description = "Shot lists, one file per session.")
    private List<Path> shots = List.of();

    @Option(
            names = "--counts",
            paramLabel = "FILE|TEXT",
            arity = "1..*",
            description =
                    "Counted balls: a table (strip_yd with inside, left, right; or flag_yd with short, level, long; topped"
                            + " ...), a file of sentences, or a sentence: \"10 drives: 6 inside 30 yd, 3 right, 1 topped\".")
    private List<String> counts = List.of();

    @Option(
            names = "--map",
            paramLabel = "QUANTITY=COLUMN",
            description = "Column of a quantity, e.g. carry_yd=Distance.")
    private Map<String, String> map = new LinkedHashMap<>();

    @Option(
            names = "--on",
            paramLabel = "range|mat|course",
            description = "Where the shots were hit, if the file does not say (range).")
    private String on = "range";

    @Option(names = "--level", paramLabel = "SCORE", description = "Average 18-hole score, 60 to 130.")
    private @Nullable Double level;

    @Option(names = "--hand", paramLabel = "right|left", description = "The player's hand (right).")
    private String hand = "right";

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Option(names = "--name", paramLabel = "TEXT", description = "The player's name.")
    private String name = "player";

    @Option(names = "--driver-carry", paramLabel = "LENGTH", description = "Driver carry as the player states it.")
    private @Nullable Double driverCarry;

    @Option(
            names = "--break",
            paramLabel = "DATE",
            description = "New clubs or a swing change: older balls count a fifth.")
    private List<LocalDate> breaks = List.of();

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the sampler (1).")
    private long seed = 1;

    @Option(names = "--out", paramLabel = "FILE", description = "Player file to write (JSON).")
    private @Nullable Path out;

    @Option(names = "--picture", paramLabel = "FILE", description = "Picture of the patterns to write (PNG or SVG).")
    private @Nullable Path picture;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Numbers of the fit to write (docs/schema/fit.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public FitVerb(FitPlayer action) {
        this.action = action;
    }

    @Override
    public void run() {
        if (spec == null) {
            throw new IllegalStateException("the verb is run by the command line");
        }
        Interview interview = new Interview(
                name,
                hand(hand),
                level == null ? OptionalDouble.empty() : OptionalDouble.of(level),
                List.of(),
                driverCarry == null ? Optional.empty() : Optional.of(length("--driver-carry", driverCarry, units)),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of());
        FitPlayer.Request request = new FitPlayer.Request(
                interview, files(), map, setting(on), typed(counts, on), breaks, Habit.USUAL, seed);
        FitPlayer.Targets targets = new FitPlayer.Targets(
                Optional.ofNullable(out), Optional.ofNullable(json), Optional.ofNullable(picture), units.unit());
        FitResult result = action.fit(request, targets, Watch.NONE);
        PrintWriter page = spec.commandLine().getOut();
        new BagPage(page, units.lengths()).print(result);
        if (out != null) {
            page.println("Player written to " + out + ".");
        }
        if (picture != null) {
            page.println("Picture written to " + picture + ".");
        }
        page.flush();
    }

    private List<Path> files() {
        if (shots.isEmpty() && counts.isEmpty()) {
            throw new UserFault("Nothing to fit: name measured shots with --shots or counted balls with --counts.");
        }
        return Stream.concat(shots.stream(), filesOf(counts)).toList();
    }

    /** What was typed in place of a file. */
    static List<BallCount> typed(List<String> counts, String on) {
        return counts.stream()
                .filter(FitVerb::isSentence)
                .flatMap(text -> CountText.parse(text, setting(on), 0).stream())
                .toList();
    }

    static Stream<Path> filesOf(List<String> counts) {
        return counts.stream().filter(text -> !isSentence(text)).map(Path::of);
    }

    private static boolean isSentence(String text) {
        return (CountText.isMeant(text) || text.matches("\\d+ \\S+ .*")) && !Files.exists(Path.of(text));
    }

    static Player.Hand hand(String text) {
        return switch (text) {
            case "right" -> Player.Hand.RIGHT;
            case "left" -> Player.Hand.LEFT;
            default -> throw new UserFault("--hand " + text + " is unknown; right or left is accepted.");
        };
    }

    static Setting setting(String text) {
        return switch (text) {
            case "range" -> Setting.RANGE;
            case "mat" -> new Setting(Setting.Ball.OWN, Setting.Ground.MAT);
            case "course" -> Setting.COURSE;
            default -> throw new UserFault("--on " + text + " is unknown; range, mat or course is accepted.");
        };
    }

    static Distance length(String option, double typed, UnitsOption units) {
        return Distance.ofMetres(units.metres(option, typed, "is no length of a shot", SHORTEST_YARDS, LONGEST_YARDS));
    }
}
