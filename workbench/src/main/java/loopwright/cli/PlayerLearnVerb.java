package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import loopwright.action.BenchStore;
import loopwright.action.LearnFromRounds;
import loopwright.action.ResultFile;
import loopwright.action.Shelf;
import loopwright.player.Interval;
import loopwright.player.LearnedDay;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright player learn}: the day effect and the way from range to course, learned from kept rounds. */
@Command(
        name = "learn",
        mixinStandardHelpOptions = true,
        description =
                "Learns from the full swings of kept rounds and playing lessons whose aim was noted: how much wider the"
                        + " patterns are on the course than planned with, and how days differ.")
public final class PlayerLearnVerb implements Runnable {
    private final StoreWork stores;
    private final Function<BenchStore, LearnFromRounds> learning;
    private final ResultFile results;

    @Parameters(paramLabel = "NAME", description = "Name or id of the player.")
    private String player = "";

    @Mixin
    private StoreOptions where = new StoreOptions();

    @Option(names = "--keep", description = "Keep a version of the player that plans with what was learned.")
    private boolean keep;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write it as JSON (docs/schema/player-learn.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public PlayerLearnVerb(StoreWork stores, Function<BenchStore, LearnFromRounds> learning, ResultFile results) {
        this.stores = stores;
        this.learning = learning;
        this.results = results;
    }

    /** What was learned, and the version that was kept. */
    private record Answer(LearnedDay learned, Optional<Shelf.Document> kept) {}

    @Override
    public void run() {
        Answer answer = stores.of(where, player, (store, id) -> {
            LearnFromRounds learn = learning.apply(store);
            LearnedDay learned = learn.learn(id);
            return new Answer(learned, keep ? Optional.of(learn.keep(id, learned)) : Optional.empty());
        });
        LearnedDay l = answer.learned();
        say("From %d full swings with aim and finish in %d rounds (9 in 10):", l.swings(), l.rounds());
        say("  patterns on the course, times as wide as planned with: %s", words(l.widening(), 1));
        say("  from range balls to the course, where nothing else was measured: %s", words(l.fromRange(), 1));
        say(
                "  a day's bias of direction, standard deviation: %s degrees",
                words(l.directionSdRadians(), Math.toDegrees(1)));
        say("  a day's factor on spread, standard deviation of its logarithm: %s", words(l.logSpreadSd(), 1));
        if (l.swings() == 0) {
            say("Nothing was noted yet: these are the assumptions alone.");
        }
        answer.kept().ifPresent(k -> say("Kept as version %d of %s.", k.version(), k.name()));
        if (json != null) {
            results.write(json, json(l));
        }
    }

    private static String words(Interval i, double unit) {
        return String.format(Locale.ROOT, "%.2f (%.2f to %.2f)", i.middle() * unit, i.low() * unit, i.high() * unit);
    }

    private Map<String, Object> json(LearnedDay l) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("player", player);
        out.put("rounds", l.rounds());
        out.put("swings", l.swings());
        out.put("widening", l.widening());
        out.put("fromRange", l.fromRange());
        out.put("directionSdRadians", l.directionSdRadians());
        out.put("logSpreadSd", l.logSpreadSd());
        return out;
    }

    private void say(String format, Object... values) {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println(String.format(Locale.ROOT, format, values));
        out.flush();
    }
}
