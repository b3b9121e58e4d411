package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loopwright.action.HandicapHistory;
import loopwright.action.HandicapResults;
import loopwright.action.HandicapSums;
import loopwright.action.HandicapSums.Card;
import loopwright.action.HandicapSums.Played;
import loopwright.action.ResultFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright handicap}: the sums of the Rules of Handicapping. */
@Command(
        name = "handicap",
        mixinStandardHelpOptions = true,
        description = "Sums of the Rules of Handicapping. " + HandicapResults.NOTE,
        synopsisSubcommandLabel = "SUM")
public final class HandicapVerb implements Runnable {
    private static final String JSON =
            "Also write the numbers to this file as JSON (docs/schema/handicap.schema.json).";

    private final HandicapSums sums;
    private final HandicapHistory history;
    private final ResultFile results;

    @Spec
    private @Nullable CommandSpec spec;

    public HandicapVerb(HandicapSums sums, HandicapHistory history, ResultFile results) {
        this.sums = sums;
        this.history = history;
        this.results = results;
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec().commandLine(), "Say which sum: index, differential, course, playing, caps, strokes or record.");
    }

    @Command(mixinStandardHelpOptions = true, description = "An index from 3 or more score differentials.")
    void index(
            @Option(
                            names = "--differentials",
                            required = true,
                            paramLabel = "15.3,15.2,16.6",
                            description = "Score differentials, the most recent last; the last 20 are used.")
                    String differentials,
            @Option(
                            names = "--low",
                            paramLabel = "INDEX",
                            description = "Low index of the last 365 days, for the caps (needs 20 scores).")
                    @Nullable
                    String low,
            @Option(
                            names = "--current",
                            paramLabel = "INDEX",
                            description = "Index the newest round was played off, for the exceptional score reduction.")
                    @Nullable
                    String current,
            @Option(names = "--json", paramLabel = "FILE", description = JSON) @Nullable Path json) {
        HandicapResults.Index r = sums.index(
                DecimalList.parse("--differentials", differentials),
                optional("--low", low),
                optional("--current", current));
        print("Index %s.", index(r.index()));
        print(
                "Mean of the lowest %d of %d (%s) is %.3f%s.",
                r.counted().size(),
                r.differentials().size(),
                tenths(r.counted()),
                r.mean(),
                r.adjustment() == 0
                        ? ""
                        : String.format(Locale.ROOT, ", less %.1f because there are few scores", -r.adjustment()));
        if (r.exceptionalReduction() != 0) {
            print("The newest score was exceptional: %.1f came off every differential.", -r.exceptionalReduction());
        }
        if (r.softCap()) {
            print(capSentence(r.calculated(), r.hardCap()));
        }
        finish(json, r);
    }

    @Command(mixinStandardHelpOptions = true, description = "The score differential of a round of 9 to 18 holes.")
    void differential(
            @Option(
                            names = "--gross",
                            paramLabel = "STROKES",
                            required = true,
                            description = "Adjusted gross score of the holes played.")
                    int gross,
            @Option(
                            names = "--rating",
                            paramLabel = "RATING",
                            required = true,
                            description = "Course rating (of the nine for 9 holes).")
                    String rating,
            @Option(names = "--slope", paramLabel = "SLOPE", required = true, description = "Slope, 55 to 155.")
                    int slope,
            @Option(
                            names = "--pcc",
                            paramLabel = "PCC",
                            defaultValue = "0",
                            description = "Playing conditions calculation, -1 to 3.")
                    String conditions,
            @Option(
                            names = "--holes",
                            paramLabel = "HOLES",
                            defaultValue = "18",
                            description = "Holes played, 9 to 18.")
                    int holes,
            @Option(names = "--index", paramLabel = "INDEX", description = "The player's index; needed below 18 holes.")
                    @Nullable
                    String index,
            @Option(
                            names = "--par",
                            paramLabel = "PAR",
                            defaultValue = "72",
                            description = "Par of the 18 holes; for 10 to 17 holes.")
                    int par,
            @Option(
                            names = "--par-played",
                            paramLabel = "PAR",
                            defaultValue = "0",
                            description = "Par of the holes played; 10 to 17.")
                    int parPlayed,
            @Option(names = "--json", paramLabel = "FILE", description = JSON) @Nullable Path json) {
        double pcc = DecimalList.parseOne("--pcc", conditions);
        Card card = new Card(DecimalList.parseOne("--rating", rating), slope, par, holes == 9 ? 9 : 18);
        OptionalDouble known = optional("--index", index);
        HandicapResults.Differential r = holes == 9 || holes == 18
                ? sums.differential(gross, card, pcc, known)
                : sums.differential(gross, card, new Played(holes, parPlayed), pcc, known);
        print("Score differential %.1f (before rounding %.3f).", r.differential(), r.exact());
        if (r.approximate()) {
            print(
                    "Of this %.3f is expected for the holes not played; the Rules publish no formula for it, so take"
                            + " it as right within a tenth on 9 holes and as an approximation on 10 to 17.",
                    r.expectedPart());
        }
        finish(json, r);
    }

    @Command(mixinStandardHelpOptions = true, description = "The course handicap on a set of tees.")
    void course(
            @Option(
                            names = "--index",
                            paramLabel = "INDEX",
                            required = true,
                            description = "Index; +1.5 is a plus handicap.")
                    String index,
            @Option(names = "--slope", paramLabel = "SLOPE", required = true, description = "Slope, 55 to 155.")
                    int slope,
            @Option(names = "--rating", paramLabel = "RATING", required = true, description = "Course rating.")
                    String rating,
            @Option(names = "--par", paramLabel = "PAR", required = true, description = "Par of the holes.") int par,
            @Option(names = "--holes", paramLabel = "HOLES", defaultValue = "18", description = "9 or 18.") int holes,
            @Option(names = "--json", paramLabel = "FILE", description = JSON) @Nullable Path json) {
        HandicapResults.Course r = sums.course(
                DecimalList.parseIndex("--index", index),
                new Card(DecimalList.parseOne("--rating", rating), slope, par, holes));
        print("Course handicap %s (before rounding %.3f).", whole(r.courseHandicap()), r.exact());
        finish(json, r);
    }

    @Command(mixinStandardHelpOptions = true, description = "The playing handicap: course handicap times allowance.")
    void playing(
            @Option(
                            names = "--index",
                            paramLabel = "INDEX",
                            required = true,
                            description = "Index; +1.5 is a plus handicap.")
                    String index,
            @Option(names = "--slope", paramLabel = "SLOPE", required = true, description = "Slope, 55 to 155.")
                    int slope,
            @Option(names = "--rating", paramLabel = "RATING", required = true, description = "Course rating.")
                    String rating,
            @Option(names = "--par", paramLabel = "PAR", required = true, description = "Par of the holes.") int par,
            @Option(
                            names = "--allowance",
                            paramLabel = "PERCENT",
                            required = true,
                            description = "In per cent; 95 is common in stroke play, 100 in match play.")
                    String allowance,
            @Option(names = "--holes", paramLabel = "HOLES", defaultValue = "18", description = "9 or 18.") int holes,
            @Option(names = "--json", paramLabel = "FILE", description = JSON) @Nullable Path json) {
        HandicapResults.Playing r = sums.playing(
                DecimalList.parseIndex("--index", index),
                new Card(DecimalList.parseOne("--rating", rating), slope, par, holes),
                DecimalList.parseOne("--allowance", allowance.replace("%", "")));
        print(
                "Playing handicap %s: %s %% of the unrounded course handicap %.3f is %.3f.",
                whole(r.playingHandicap()), allowance.replace("%", ""), r.courseHandicapExact(), r.exact());
        finish(json, r);
    }

    @Command(mixinStandardHelpOptions = true, description = "The soft and the hard cap on a rising index.")
    void caps(
            @Option(
                            names = "--calculated",
                            paramLabel = "INDEX",
                            required = true,
                            description = "Index as averaged, before caps.")
                    String calculated,
            @Option(
                            names = "--low",
                            paramLabel = "INDEX",
                            required = true,
                            description = "Lowest index of the last 365 days.")
                    String low,
            @Option(names = "--json", paramLabel = "FILE", description = JSON) @Nullable Path json) {
        HandicapResults.Cap r =
                sums.caps(DecimalList.parseIndex("--calculated", calculated), DecimalList.parseIndex("--low", low));
        print("Index %s.", index(r.index()));
        print(r.softCap() ? capSentence(r.calculated(), r.hardCap()) : "No cap applies: it is within 3.0 of the low.");
        finish(json, r);
    }

    @Command(mixinStandardHelpOptions = true, description = "Strokes received and net double bogey, hole by hole.")
    void strokes(
            @Option(
                            names = "--handicap",
                            paramLabel = "STROKES",
                            required = true,
                            description = "Course or playing handicap, a whole number.")
                    String handicap,
            @Option(
                            names = "--stroke-indexes",
                            paramLabel = "7,3,15...",
                            required = true,
                            description = "Of 9 or 18 holes, with commas.")
                    String strokeIndexes,
            @Option(
                            names = "--pars",
                            paramLabel = "4,4,3...",
                            defaultValue = "",
                            description = "Pars of the holes: adds net double bogey.")
                    String pars,
            @Option(
                            names = "--scores",
                            paramLabel = "5,4,4...",
                            defaultValue = "",
                            description = "Scores: adds the adjusted gross score.")
                    String scores,
            @Option(names = "--json", paramLabel = "FILE", description = JSON) @Nullable Path json) {
        HandicapResults.Strokes r = sums.strokes(
                DecimalList.parseHandicap("--handicap", handicap),
                DecimalList.parseWhole("--stroke-indexes", strokeIndexes),
                DecimalList.parseWhole("--pars", pars),
                DecimalList.parseWhole("--scores", scores));
        print("stroke index     %s", row(r.strokeIndexes()));
        print("strokes received %s", row(r.received()));
        if (r.most() != null) {
            print("counts at most   %s", row(r.most()));
        }
        if (r.adjustedGross() != null) {
            print("Adjusted gross score %d.", r.adjustedGross());
        }
        finish(json, r);
    }

    @Command(
            mixinStandardHelpOptions = true,
            description = "The index after every score of a record: exceptional scores, low index and caps included.")
    void record(
            @Parameters(
                            paramLabel = "FILE",
                            description = "CSV in the order of play: date with differential, or with gross, rating,"
                                    + " slope, and holes (9 or 18) and pcc where they differ from 18 and 0.")
                    Path file,
            @Option(names = "--json", paramLabel = "FILE", description = JSON) @Nullable Path json) {
        HandicapResults.Scores r = history.of(file);
        print("date       differential  reduced by  low index  index");
        for (HandicapResults.Entry entry : r.scores()) {
            print(
                    "%s %13.1f %11s %10s %6s",
                    entry.date(),
                    entry.differential(),
                    entry.adjustment() == 0 ? "" : tenth(-entry.adjustment()),
                    entry.low() == null ? "" : signed(entry.low()),
                    entry.indexAfter() == null ? "" : signed(entry.indexAfter()));
        }
        print(r.index() == null ? "No index yet: at least 3 scores are needed." : "Index " + index(r.index()) + ".");
        finish(json, r);
    }

    private void finish(@Nullable Path json, Object result) {
        print(HandicapResults.NOTE);
        if (json != null) {
            results.write(json, result);
        }
        out().flush();
    }

    private static OptionalDouble optional(String option, @Nullable String text) {
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(DecimalList.parseIndex(option, text));
    }

    private static String capSentence(double calculated, boolean hard) {
        return String.format(
                Locale.ROOT,
                hard
                        ? "The hard cap holds the calculated %.1f at 5.0 above the low index."
                        : "The soft cap halves what the calculated %.1f has risen beyond 3.0 above the low index.",
                calculated);
    }

    private static String index(double index) {
        return index < 0 ? String.format(Locale.ROOT, "+%.1f (a plus handicap)", -index) : tenth(index);
    }

    private static String signed(double index) {
        return index < 0 ? "+" + tenth(-index) : tenth(index);
    }

    private static String whole(int handicap) {
        return DecimalList.handicap(handicap) + (handicap < 0 ? " (strokes given back)" : "");
    }

    private static String tenth(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String tenths(List<Double> values) {
        return values.stream().map(HandicapVerb::tenth).collect(Collectors.joining(", "));
    }

    private static String row(List<Integer> values) {
        return values.stream().map(v -> String.format(Locale.ROOT, "%3d", v)).collect(Collectors.joining());
    }

    private void print(String sentence, Object... values) {
        out().println(values.length == 0 ? sentence : String.format(Locale.ROOT, sentence, values));
    }

    private PrintWriter out() {
        return spec().commandLine().getOut();
    }

    private CommandSpec spec() {
        if (spec == null) {
            throw new IllegalStateException("the verb is run by the command line");
        }
        return spec;
    }
}
