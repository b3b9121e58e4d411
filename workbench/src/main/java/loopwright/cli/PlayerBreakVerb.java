package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import loopwright.action.BenchStore;
import loopwright.action.KeepPlayer;
import loopwright.action.ResultFile;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright player break}: days behind which old shots count little. */
@Command(
        name = "break",
        mixinStandardHelpOptions = true,
        description =
                "Lists, adds and removes dated breaks (new clubs, a swing change, an injury); older shots then count"
                        + " little whenever the player is fitted again.")
public final class PlayerBreakVerb implements Runnable {
    private final StoreWork stores;
    private final Function<BenchStore, KeepPlayer> players;
    private final ResultFile results;

    @Parameters(paramLabel = "NAME", description = "Name or id of the player.")
    private String player = "";

    @Mixin
    private StoreOptions where = new StoreOptions();

    @Option(names = "--on", paramLabel = "DAY", description = "The day of the break; needs --why.")
    private @Nullable LocalDate on;

    @Option(names = "--why", paramLabel = "WORDS", description = "What changed.")
    private String why = "";

    @Option(names = "--remove", paramLabel = "DAY", description = "Takes the break of this day out.")
    private @Nullable LocalDate remove;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write the list as JSON (docs/schema/player-breaks.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public PlayerBreakVerb(StoreWork stores, Function<BenchStore, KeepPlayer> players, ResultFile results) {
        this.stores = stores;
        this.players = players;
        this.results = results;
    }

    /** The breaks, and whether the patterns moved with a change of them. */
    private record Kept(Map<LocalDate, String> breaks, Optional<String> fitted) {}

    @Override
    public void run() {
        if ((on == null) != why.isBlank()) {
            throw new UserFault("A break has a day and a reason: --on 2026-05-31 --why \"new driver\".");
        }
        Kept kept = stores.of(where, player, (store, id) -> {
            Map<LocalDate, String> all = new TreeMap<>(store.records().listBreaks(id));
            if (remove != null && all.remove(remove) == null) {
                throw new UserFault(player + " has no break on " + remove + ".");
            }
            if (on != null) {
                all.put(on, why.strip());
            }
            if (on == null && remove == null) {
                return new Kept(all, Optional.empty());
            }
            store.records().setBreaks(id, all);
            String note = on == null ? "break of " + remove + " taken out" : "break of " + on + ": " + why.strip();
            boolean fitted = players.apply(store).refit(id, note).isPresent();
            return new Kept(
                    all,
                    Optional.of(
                            fitted
                                    ? "The patterns were fitted again."
                                    : "No dated shots of this player are kept here, so the patterns stay as they are."));
        });
        Map<LocalDate, String> breaks = kept.breaks();
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println(breaks.isEmpty() ? player + " has no break." : "Shots before these days count little:");
        breaks.forEach((day, reason) -> out.println("  " + day + "  " + reason));
        kept.fitted().ifPresent(out::println);
        out.flush();
        if (json != null) {
            List<Map<String, String>> rows = breaks.entrySet().stream()
                    .map(e -> Map.of("day", e.getKey().toString(), "reason", e.getValue()))
                    .toList();
            results.write(json, Map.of("player", player, "breaks", rows));
        }
    }
}
