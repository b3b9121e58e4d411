package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import loopwright.action.BenchStore;
import loopwright.action.DrillCards;
import loopwright.action.KeptDrill;
import loopwright.action.OwnDrills;
import loopwright.action.PracticeReview;
import loopwright.action.PracticeWords;
import loopwright.action.ResultFile;
import loopwright.action.Workroom;
import loopwright.practice.Drill;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright practice review}: is it working? */
@Command(
        name = "review",
        mixinStandardHelpOptions = true,
        description = "Is it working? Every skill before, predicted and as the drills measure it now; nothing under the"
                + " noise is claimed.")
public final class PracticeReviewVerb implements Runnable {
    private final StoreWork stores;
    private final Function<BenchStore, Workroom> rooms;
    private final DrillCards cards;
    private final ResultFile results;

    @Mixin
    private PlayerInStore of = new PlayerInStore();

    @Mixin
    private DrillOptions drills = new DrillOptions();

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Write it as JSON (docs/schema/practice-review.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    /** {@code rooms} makes the workroom of a store. */
    public PracticeReviewVerb(
            StoreWork stores, Function<BenchStore, Workroom> rooms, DrillCards cards, ResultFile results) {
        this.stores = stores;
        this.rooms = rooms;
        this.cards = cards;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        PracticeReview.Report report = stores.of(of.where, of.player, (store, id) -> {
            Workroom room = rooms.apply(store);
            List<Drill> all = drills.drills(new OwnDrills(room, cards), cards, id);
            List<KeptDrill> kept = store.records().listDrills(id);
            PracticeReview.unknown(kept, all)
                    .forEach(n -> out.println(
                            "Not counted: no drill is called " + n + " any more; give its file with --drills."));
            return PracticeReview.of(room, id, all);
        });
        print(out, report);
        if (json != null) {
            results.write(json, json(report));
            out.println("Written to " + json + ".");
        }
    }

    private static void print(PrintWriter out, PracticeReview.Report r) {
        if (r.lines().isEmpty()) {
            out.println("No drill of " + r.player() + " is kept yet; log one with \"loopwright practice log\".");
        } else {
            out.println("Spread of each skill beside the model before (1.00), 9 in 10 in brackets:");
            out.println(String.format(
                    Locale.ROOT, "  %-26s %6s %10s %22s   %s", "", "hours", "predicted", "measured now", ""));
        }
        for (PracticeReview.Line l : r.lines()) {
            out.println(String.format(
                    Locale.ROOT,
                    "  %-26s %6.1f %10.2f %8.2f (%.2f to %.2f)   %s",
                    PracticeWords.of(l.skill()),
                    l.hours(),
                    l.predicted(),
                    l.now().left(),
                    l.now().low(),
                    l.now().high(),
                    said(l)));
        }
        r.rounds()
                .ifPresent(s -> out.println(String.format(
                        Locale.ROOT,
                        "Rounds: %d on %s since the forecast of %s average %+.1f strokes beside it (9 in 10 of chance"
                                + " alone: %.1f either way)%s.",
                        s.rounds(),
                        s.course(),
                        s.day(),
                        s.mean(),
                        1.645 * s.sd(),
                        Math.abs(s.mean()) > 1.645 * s.sd() ? "" : "; that says nothing yet")));
        out.println("Scores alone are slow: "
                + r.roundsToSee().entrySet().stream()
                        .map(e -> e.getValue() + " rounds before and as many after for " + e.getKey()
                                + (e.getKey() == 1 ? " stroke" : " strokes"))
                        .collect(Collectors.joining(", "))
                + ". Drills tell first.");
    }

    private static String said(PracticeReview.Line l) {
        return switch (l.verdict()) {
            case BETTER -> "better, beyond chance";
            case WORSE -> "wider than the model had it, beyond chance";
            case WITHIN_NOISE ->
                "not to be told from before yet (" + l.playings() + (l.playings() == 1 ? " playing)" : " playings)");
        };
    }

    private static Map<String, Object> json(PracticeReview.Report r) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("player", r.player());
        out.put("skills", r.lines().stream().map(l -> row(l, r)).toList());
        out.put(
                "roundsToSee",
                r.roundsToSee().entrySet().stream()
                        .map(e -> Map.of("strokes", e.getKey(), "roundsEach", e.getValue()))
                        .toList());
        r.rounds().ifPresent(s -> {
            Map<String, Object> rounds = new LinkedHashMap<>();
            rounds.put("forecast", s.day().toString());
            rounds.put("course", s.course());
            rounds.put("rounds", s.rounds());
            rounds.put("meanAboveForecast", s.mean());
            rounds.put("sd", s.sd());
            out.put("rounds", rounds);
        });
        return out;
    }

    private static Map<String, Object> row(PracticeReview.Line l, PracticeReview.Report r) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("skill", PracticeWords.typed(l.skill()));
        out.put("hours", l.hours());
        out.put("playings", l.playings());
        out.put("predicted", l.predicted());
        out.put("now", l.now().left());
        out.put("low", l.now().low());
        out.put("high", l.now().high());
        out.put("verdict", PracticeWords.typed(l.verdict()));
        out.put("hoursToLearn", r.curves().get(l.skill()).hours());
        return out;
    }
}
