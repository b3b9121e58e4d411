package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import loopwright.action.KeptRound;
import loopwright.action.ResultFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright round list}: the rounds of a player that are kept. */
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description = "Shows the rounds of a player of the store, the latest last, or erases one.")
public final class RoundListVerb implements Runnable {
    private final StoreWork stores;
    private final ResultFile results;

    @Mixin
    private PlayerInStore of = new PlayerInStore();

    @Option(names = "--erase", paramLabel = "ID", description = "Erases this round; it cannot be undone.")
    private @Nullable String erase;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write the list as JSON (docs/schema/rounds.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public RoundListVerb(StoreWork stores, ResultFile results) {
        this.stores = stores;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        List<KeptRound> rounds = stores.of(of.where, of.player, (store, id) -> {
            if (erase != null) {
                store.records().eraseRound(id, erase);
            }
            return store.records().listRounds(id);
        });
        out.println(rounds.isEmpty() ? "No round of " + of.player + " is kept." : "Rounds of " + of.player + ":");
        rounds.forEach(r -> out.println("  " + sentence(r)));
        out.flush();
        if (json != null) {
            results.write(json, Map.of("player", of.player, "rounds", rows(rounds)));
        }
    }

    private static String sentence(KeptRound r) {
        List<String> parts = new ArrayList<>();
        parts.add(r.day() + "  " + r.id() + "  " + (r.course().isEmpty() ? "course not named" : r.course()));
        if (!r.tees().isEmpty()) {
            parts.add("tees " + r.tees());
        }
        parts.add(r.holes() + (r.holes() == 1 ? " hole" : " holes"));
        parts.add(
                r.lesson()
                        ? "a lesson"
                        : r.score().isPresent() ? "score " + r.score().getAsInt() : "no total");
        parts.add("written down: " + r.tier().toLowerCase(Locale.ROOT));
        return String.join(", ", parts);
    }

    static List<Map<String, Object>> rows(List<KeptRound> rounds) {
        return rounds.stream().map(RoundListVerb::row).toList();
    }

    private static Map<String, Object> row(KeptRound r) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", r.id());
        out.put("day", r.day().toString());
        out.put("course", r.course());
        out.put("tees", r.tees());
        out.put("holes", r.holes());
        r.score().ifPresent(s -> out.put("score", s));
        out.put("tier", r.tier());
        out.put("lesson", r.lesson());
        return out;
    }
}
