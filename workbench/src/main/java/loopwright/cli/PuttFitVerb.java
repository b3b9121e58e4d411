package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import loopwright.action.PuttFitAnswer;
import loopwright.action.PuttFitAnswer.Estimate;
import loopwright.action.PuttFitting;
import loopwright.action.PuttImport;
import loopwright.action.ResultFile;
import loopwright.action.RowProblem;
import loopwright.action.UserFault;
import loopwright.putting.GreenSpeed;
import loopwright.putting.PuttingFit;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright putt fit}: a player's putting from his logged putts. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        description =
                "A player's putting from logged putts (docs/putts.md): spreads with intervals, and what is assumed.")
public final class PuttFitVerb implements Runnable {
    private final PuttFitting fitting;
    private final ResultFile results;

    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--putts", required = true, paramLabel = "FILE", description = "Putts as CSV.")
    private Path putts = Path.of("");

    @Option(names = "--level", paramLabel = "90", description = "Average score the prior is read at, 60 to 130 (90).")
    private @Nullable String level;

    @Option(
            names = "--green-speed",
            paramLabel = "10",
            defaultValue = "10",
            description = "Green speed the putts were played at, feet (10).")
    private String greenSpeed = "10";

    @Option(names = "--keep-good-rows", description = "Use the good rows although others cannot be read.")
    private boolean keepGoodRows;

    @Option(names = "--player", paramLabel = "FILE", description = "Player who is to putt like this; needs --out.")
    private @Nullable Path player;

    @Option(names = "--out", paramLabel = "FILE", description = "Where that player is written with the fitted putting.")
    private @Nullable Path out;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write the numbers (docs/schema/putt-fit.schema.json).")
    private @Nullable Path json;

    public PuttFitVerb(PuttFitting fitting, ResultFile results) {
        this.fitting = fitting;
        this.results = results;
    }

    @Override
    public void run() {
        if ((player == null) != (out == null)) {
            throw new UserFault("--player and --out belong together: the player read, and where he is written.");
        }
        GreenSpeed speed = PuttWords.greenSpeed(greenSpeed);
        double score = scoreOfPrior();
        PuttImport read = fitting.read(putts);
        for (RowProblem problem : read.problems()) {
            print(putts + ", " + problem.sentence());
        }
        PuttingFit fit = fitting.fit(putts, read, keepGoodRows, score, speed);
        PuttFitAnswer answer = fitting.answer(fit, read, score, speed);
        if (json != null) {
            results.write(json, answer);
        }
        if (player != null && out != null) {
            fitting.withPutting(player, fit.skill(), out);
        }
        if (!read.ignored().isEmpty()) {
            print("Columns not understood and left out: " + String.join(", ", read.ignored()) + ".");
        }
        say(answer);
    }

    private double scoreOfPrior() {
        if (level == null && player != null) {
            return fitting.player(player).level();
        }
        return level == null ? 90 : PuttVerb.level(level);
    }

    private void say(PuttFitAnswer a) {
        print(String.format(
                Locale.ROOT, "%d putts, prior of level %.0f; in brackets the 90 %% interval.", a.putts(), a.level()));
        print("Direction, start line and reading as one: " + estimate(a.directionDegrees(), "degrees") + ".");
        Estimate start = a.startLineDegrees();
        if (start != null) {
            print("Start line alone, from " + a.drillPutts() + " straight putts: " + estimate(start, "degrees") + ".");
            print(String.format(Locale.ROOT, "Reading: off by %.0f %% of the break.", a.readingPercent()));
        } else {
            print("Start line and reading cannot be told apart until putts on a line known to be straight are logged"
                    + " (column drill = yes); the split is assumed.");
        }
        print("Pace: " + estimate(a.pacePercent(), "% of the roll") + ".");
        print(habit(a.lengthPercent()));
        print(String.format(
                Locale.ROOT,
                "On an average green every second putt drops from %.1f ft; from %.0f ft it takes two putts on average.",
                a.halfHoledFeet(),
                a.twoPuttFeet()));
        PuttFitAnswer.Misses m = a.misses();
        if (m.left() + m.right() + m.shortOf() + m.past() > 0) {
            print(String.format(
                    Locale.ROOT,
                    "Misses noted: %d left, %d right, %d short, %d past.",
                    m.left(),
                    m.right(),
                    m.shortOf(),
                    m.past()));
        }
    }

    private static String habit(Estimate e) {
        String doubt = String.format(Locale.ROOT, "%.1f %% (%.1f to %.1f)", e.value(), e.low(), e.high());
        if (e.low() <= 0 && e.high() >= 0) {
            return "Length: no habit of leaving it short or running it past can be told, " + doubt + ".";
        }
        return "Length: rolls it " + (e.value() > 0 ? "farther" : "less far") + " than the best pace of the level, "
                + doubt + "; the plan assumes this can be put right.";
    }

    private static String estimate(Estimate e, String unit) {
        return String.format(
                Locale.ROOT,
                "%.2f %s (%.2f to %.2f), %.0f %% assumed",
                e.value(),
                unit,
                e.low(),
                e.high(),
                100 * e.assumedShare());
    }

    private void print(String sentence) {
        PrintWriter to = spec().commandLine().getOut();
        to.println(sentence);
        to.flush();
    }

    private CommandSpec spec() {
        if (spec == null) {
            throw new IllegalStateException("the verb is run by the command line");
        }
        return spec;
    }
}
