package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.action.PuttAdviser;
import loopwright.action.PuttAnswer;
import loopwright.action.PuttFitting;
import loopwright.action.PuttQuestion;
import loopwright.action.ResultFile;
import loopwright.action.UserFault;
import loopwright.player.Player;
import loopwright.putting.GreenSpeed;
import loopwright.putting.PuttingSkillPrior;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright putt}: line, pace and odds of one putt. */
@Command(
        name = "putt",
        mixinStandardHelpOptions = true,
        description = "Line, pace, odds and leave of one putt on a known slope. " + PuttAnswer.NOTE)
public final class PuttVerb implements Runnable {
    private static final double ASSUMED_LEVEL = 90;

    private final PuttAdviser adviser;
    private final PuttFitting players;
    private final ResultFile results;

    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--distance", paramLabel = "12 ft", description = "Length of the putt, 0.5 to 120 ft.")
    private @Nullable String distance;

    @Option(
            names = "--green-speed",
            paramLabel = "10",
            defaultValue = "10",
            description = "Roll from a Stimpmeter in feet, 4 to 16 (10).")
    private String greenSpeed = "10";

    @Option(
            names = "--slope",
            paramLabel = "2% falling left",
            description =
                    "As you look at the hole: falling left, right, away or towards you; uphill or downhill; two joined"
                            + " by \"and\". Left out: not measured, and no break is claimed.")
    private @Nullable String slope;

    @Option(names = "--player", paramLabel = "FILE", description = "Player whose putting is used.")
    private @Nullable Path player;

    @Option(names = "--level", paramLabel = "90", description = "Without a player: average score, 60 to 130 (90).")
    private @Nullable String level;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write the numbers (docs/schema/putt.schema.json).")
    private @Nullable Path json;

    @Option(names = "--picture", paramLabel = "FILE", description = "Also draw the putt, as .svg or .png.")
    private @Nullable Path picture;

    public PuttVerb(PuttAdviser adviser, PuttFitting players, ResultFile results) {
        this.adviser = adviser;
        this.players = players;
        this.results = results;
    }

    @Override
    public void run() {
        PuttQuestion putt = question();
        PuttAnswer answer = adviser.answer(putt);
        List<String> words = PuttSentences.of(answer);
        if (picture != null) {
            adviser.draw(putt, words, picture);
        }
        if (json != null) {
            results.write(json, answer);
        }
        PrintWriter out = spec().commandLine().getOut();
        words.forEach(out::println);
        out.flush();
    }

    private PuttQuestion question() {
        if (distance == null) {
            throw new UserFault("Say how long the putt is: --distance \"12 ft\"; 0.5 to 120 ft are accepted.");
        }
        double metres = PuttWords.distanceMetres(distance);
        GreenSpeed speed = PuttWords.greenSpeed(greenSpeed);
        var plane = Optional.ofNullable(slope).map(text -> PuttWords.slope(text, speed));
        if (player != null) {
            if (level != null) {
                throw new UserFault("Give --player or --level, not both.");
            }
            Player known = players.player(player);
            String name = known.name().isBlank() ? player.toString() : known.name();
            return new PuttQuestion(metres, speed, plane, known.putting(), name);
        }
        double score = level == null ? ASSUMED_LEVEL : level(level);
        String from = String.format(
                Locale.ROOT,
                "%s %.0f-golfer, assumed from the level%s",
                Math.round(score) / 10 == 8 ? "an" : "a",
                score,
                level == null ? " because no --player or --level was given" : "");
        return new PuttQuestion(metres, speed, plane, PuttingSkillPrior.ofLevel(score), from);
    }

    static double level(String text) {
        double score = text.strip().matches("\\d{2,3}([.,]\\d)?")
                ? Double.parseDouble(text.strip().replace(',', '.'))
                : Double.NaN;
        if (!(score >= 60 && score <= 130)) {
            throw new UserFault("--level \"" + text + "\" is no level; it is an average 18-hole score, 60 to 130.");
        }
        return score;
    }

    private CommandSpec spec() {
        if (spec == null) {
            throw new IllegalStateException("the verb is run by the command line");
        }
        return spec;
    }
}
