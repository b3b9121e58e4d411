package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import loopwright.action.BenchStore;
import loopwright.action.CarryStore;
import loopwright.action.ForecastRound;
import loopwright.action.KeptForecast;
import loopwright.action.ResultFile;
import loopwright.action.Standing;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** {@code loopwright forecast}: a player's next round foretold, kept, and scored against what happened. */
@Command(
        name = "forecast",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        description = "Foretells a player's next round as he plays now, keeps it, and scores what was foretold.",
        synopsisSubcommandLabel = "WHAT")
public final class ForecastVerb implements Runnable {
    private final StoreWork stores;
    private final Function<BenchStore, ForecastRound> forecasts;
    private final ResultFile results;
    private final Clock clock;

    @Spec
    private @Nullable CommandSpec spec;

    public ForecastVerb(
            StoreWork stores, Function<BenchStore, ForecastRound> forecasts, ResultFile results, Clock clock) {
        this.stores = stores;
        this.forecasts = forecasts;
        this.results = results;
        this.clock = clock;
    }

    @Override
    public void run() {
        throw new ParameterException(
                Objects.requireNonNull(spec).commandLine(), "Say what to do with forecasts: make, check or list.");
    }

    @Command(name = "make", description = "Foretells a round, by the player's habits, and keeps the forecast.")
    void make(
            @Mixin PlayerInStore of,
            @Option(names = "--course", paramLabel = "NAME", required = true, description = "Course of the store.")
                    String course,
            @Option(names = "--tees", paramLabel = "NAME", defaultValue = "middle", description = "Set of tees.")
                    String tees,
            @Option(
                            names = "--holes",
                            paramLabel = "LIST",
                            defaultValue = "",
                            description = "1-18, 1-9; all if left out.")
                    String holes,
            @Option(
                            names = "--target",
                            paramLabel = "SCORE",
                            required = true,
                            description = "To be beaten or equalled.")
                    int target,
            @Option(names = "--date", paramLabel = "DAY", description = "Of the round; today if left out.") @Nullable
                    LocalDate date,
            @Option(
                            names = "--json",
                            paramLabel = "FILE",
                            description = "Also write it as JSON (docs/schema/forecasts.schema.json).")
                    @Nullable
                    Path json) {
        LocalDate day = date == null ? LocalDate.now(clock) : date;
        PrintWriter err = Objects.requireNonNull(spec).commandLine().getErr();
        ForecastRound.Foretold told = stores.of(
                of.where,
                of.player,
                (store, id) -> forecasts
                        .apply(store)
                        .foretell(
                                new ForecastRound.Request(
                                        id, CarryStore.course(store, course), tees, holes, target, day),
                                new ProgressLine(err, "hole")));
        say(sentence(told.kept()));
        int low = quantile(told, 0.05);
        int high = quantile(told, 0.95);
        say("9 rounds in 10 lie between " + low + " and " + high + "; "
                + told.standing().sentence() + ".");
        write(json, of.player, List.of(told.kept()), told.standing());
    }

    @Command(
            name = "check",
            description =
                    "Models the last kept rounds as the player plays now and says whether the model knows him; made"
                            + " after the fact, so it is not scored as a forecast.")
    void check(
            @Mixin PlayerInStore of,
            @Option(names = "--last", paramLabel = "N", defaultValue = "5", description = "How many rounds.") int last,
            @Option(
                            names = "--json",
                            paramLabel = "FILE",
                            description = "Also write the forecasts as JSON (docs/schema/forecasts.schema.json).")
                    @Nullable
                    Path json) {
        PrintWriter err = Objects.requireNonNull(spec).commandLine().getErr();
        int done = stores.of(
                of.where,
                of.player,
                (store, id) -> forecasts.apply(store).modelPlayed(id, last, new ProgressLine(err, "hole")));
        say("Modelled " + done + (done == 1 ? " round" : " rounds") + " that had not been modelled before.");
        list(of, json);
    }

    @Command(name = "list", description = "Shows the forecasts of a player and how they came out.")
    void list(
            @Mixin PlayerInStore of,
            @Option(
                            names = "--json",
                            paramLabel = "FILE",
                            description = "Also write them as JSON (docs/schema/forecasts.schema.json).")
                    @Nullable
                    Path json) {
        Standing[] standing = new Standing[1];
        List<KeptForecast> kept = stores.of(of.where, of.player, (store, id) -> {
            standing[0] = Standing.of(store.records(), id);
            return store.records().listForecasts(id);
        });
        say(kept.isEmpty() ? "No forecast of " + of.player + " is kept." : "Forecasts of " + of.player + ":");
        for (KeptForecast f : kept) {
            String outcome = standing[0].outcomes().stream()
                    .filter(o -> o.forecast().equals(f))
                    .findFirst()
                    .map(o -> "  played: " + o.score())
                    .orElse("");
            say("  " + sentence(f) + outcome);
        }
        if (!standing[0].foretold().isEmpty()) {
            say(String.format(Locale.ROOT, "Brier score %.3f (0 is perfect, a coin earns 0.25).", standing[0].brier()));
            standing[0]
                    .chances()
                    .forEach(c -> say(String.format(
                            Locale.ROOT,
                            "  foretold %.0f to %.0f %%: %d rounds, foretold on average %.0f %%, beaten %.0f %%",
                            100 * c.low(),
                            100 * c.high(),
                            c.forecasts(),
                            100 * c.meant(),
                            100 * c.beaten())));
        }
        say(standing[0].sentence() + ".");
        write(json, of.player, kept, standing[0]);
    }

    private static String sentence(KeptForecast f) {
        return String.format(
                Locale.ROOT,
                "%s, %s, tees %s, %d holes: %.1f strokes (standard deviation %.1f), %d or better %.0f %%",
                f.day(),
                f.course(),
                f.tees(),
                f.holes(),
                f.mean(),
                f.sd(),
                f.target(),
                100 * f.chance());
    }

    private static int quantile(ForecastRound.Foretold told, double share) {
        int score = told.scores().lowest();
        while (told.scores().probabilityAtMost(score) < share) {
            score++;
        }
        return score;
    }

    private void write(@Nullable Path json, String player, List<KeptForecast> forecasts, Standing standing) {
        if (json != null) {
            Map<String, Object> out = new LinkedHashMap<>();
            out.put("player", player);
            out.put("forecasts", forecasts.stream().map(ForecastVerb::row).toList());
            out.put("standing", ReportJson.standing(standing));
            results.write(json, out);
        }
    }

    private static Map<String, Object> row(KeptForecast f) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", f.id());
        out.put("day", f.day().toString());
        out.put("course", f.course());
        out.put("tees", f.tees());
        out.put("holes", f.holes());
        out.put("target", f.target());
        out.put("mean", f.mean());
        out.put("sd", f.sd());
        out.put("chance", f.chance());
        return out;
    }

    private void say(String line) {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println(line);
        out.flush();
    }
}
