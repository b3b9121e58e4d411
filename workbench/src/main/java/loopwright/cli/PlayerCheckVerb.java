package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import loopwright.action.CheckPlayer;
import loopwright.action.PlayerCheck;
import loopwright.action.ResultFile;
import loopwright.action.UserFault;
import loopwright.handicap.TeeRating;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright player check}: the player played by his habits beside his real scores. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Plays the player by his habits and sets the scores beside his real ones.")
public final class PlayerCheckVerb implements Runnable {
    private final CheckPlayer action;
    private final ResultFile results;

    @Option(
            names = "--scores",
            required = true,
            paramLabel = "FILE",
            description = "Real scores (CSV): a column score; date, course, tees, rating, slope, holes where known.")
    private @Nullable Path scores;

    @Option(names = "--course", required = true, paramLabel = "FILE", description = "The course (any map format).")
    private @Nullable Path course;

    @Option(names = "--player", required = true, paramLabel = "FILE", description = "The player file.")
    private @Nullable Path player;

    @Option(
            names = "--tees",
            defaultValue = "middle",
            paramLabel = "NAME",
            description = "Set of tees: its name, or back, middle, forward. Default: ${DEFAULT-VALUE}.")
    private String tees = "middle";

    @Option(names = "--holes", defaultValue = "", paramLabel = "LIST", description = "Holes to play, e.g. 1-9.")
    private String holes = "";

    @Option(
            names = "--rating",
            paramLabel = "NUMBER",
            description = "Course rating of these tees; with --slope it converts scores from other rated tees.")
    private @Nullable Double rating;

    @Option(names = "--slope", paramLabel = "NUMBER", description = "Slope of these tees.")
    private @Nullable Integer slope;

    @Option(names = "--seed", defaultValue = "1", paramLabel = "N", description = "Seed of every draw.")
    private long seed;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Write it as JSON (docs/schema/player-check.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public PlayerCheckVerb(CheckPlayer action, ResultFile results) {
        this.action = action;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        CheckPlayer.Question question = new CheckPlayer.Question(
                Objects.requireNonNull(course),
                Objects.requireNonNull(player),
                Objects.requireNonNull(scores),
                tees,
                holes,
                teeRating(),
                seed);
        PlayerCheck check = action.check(question, new ProgressLine(err, "hole"));
        new PlayerCheckPage(out).print(check);
        if (json != null) {
            results.write(json, PlayerCheckJson.of(check));
            out.println("Written to " + json + ".");
        }
    }

    private Optional<TeeRating> teeRating() {
        if (rating == null && slope == null) {
            return Optional.empty();
        }
        if (rating == null || slope == null) {
            throw new UserFault("--rating and --slope go together; give both, as on the score card.");
        }
        if (!(rating >= 20 && rating <= 90)) {
            throw new UserFault(
                    "--rating " + rating + " is no course rating; 20 (nine short holes) to 90 is accepted.");
        }
        try {
            return Optional.of(new TeeRating(rating, slope));
        } catch (IllegalArgumentException e) {
            throw new UserFault("--rating " + rating + " --slope " + slope + ": " + e.getMessage() + ".", e);
        }
    }
}
