package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import loopwright.action.BagAnswer;
import loopwright.action.CompareBags;
import loopwright.action.PlanRequest;
import loopwright.action.ReadLengths;
import loopwright.action.ResultFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright bag}: what another club would be worth. */
@Command(
        name = "bag",
        mixinStandardHelpOptions = true,
        description = "Says what swapping a club changes in the chance of the target on a course.")
public final class BagVerb implements Runnable {
    private final CompareBags action;
    private final ResultFile results;

    @Mixin
    private RoundOptions round = new RoundOptions();

    @Mixin
    private TeesOption tees = new TeesOption();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Option(
            names = "--swap",
            paramLabel = "\"OUT=IN CARRY\"",
            description =
                    "\"5-iron=7-wood 190 carry\"; \"5-iron=\" takes one out; \"=7-wood\" adds one; the carry is in"
                            + " --units. Repeat it to set several changes side by side.")
    private List<String> swaps = new ArrayList<>();

    @Option(names = "--json", paramLabel = "FILE", description = "Write it as JSON (docs/schema/bag.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public BagVerb(CompareBags action, ResultFile results) {
        this.action = action;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        PlanRequest request = PlanRequest.usual(
                round.course(),
                round.player(),
                tees.name,
                round.target,
                round.holes,
                List.of(),
                List.of(),
                List.of(),
                round.seed);
        BagAnswer answer = action.compare(
                request,
                swaps,
                units.unit(),
                new ProgressLine(spec.commandLine().getErr(), "hole and bag"));
        print(answer, units.lengths(), out);
        if (json != null) {
            results.write(json, json(answer));
            out.println("Written to " + json + ".");
        }
    }

    private static void print(BagAnswer a, ReadLengths lengths, PrintWriter out) {
        line(out, "%s, %s tees. Target: %s.", a.course(), a.tees(), a.target());
        line(out, "%s carries %d clubs of 14: %s.", a.player(), a.clubs().size(), String.join(", ", a.clubs()));
        line(out, "%-34s %8s %8s  %s", "", "expect", "target", "change");
        line(
                out,
                "%-34s %8.2f %8s",
                "as it is",
                a.now().expected(),
                Chances.column(a.now().chance()));
        for (BagAnswer.Change c : a.changes()) {
            line(
                    out,
                    "%-34s %8.2f %8s  %s",
                    c.words(),
                    c.then().expected(),
                    Chances.column(c.then().chance()),
                    c.same()
                            ? "the same for you"
                            : String.format(
                                    Locale.ROOT, "%+.1f in 100 (+- %.1f)", 100 * c.gain(), 100 * c.gainError()));
            if (c.assumedCarryMetres() > 0) {
                line(
                        out,
                        "    the new club carries %s; its pattern is assumed by level and length: hit some before you"
                                + " buy",
                        lengths.far(c.assumedCarryMetres()));
            }
            if (!c.holes().isEmpty()) {
                line(
                        out,
                        "    gains most on %s",
                        c.holes().stream()
                                .map(h -> String.format(Locale.ROOT, "hole %d (%.2f)", h.hole(), h.strokes()))
                                .collect(Collectors.joining(", ")));
            }
        }
        line(out, "Solved coarsely and with two seeds, to compare: a plan of one bag is finer.");
    }

    private static Map<String, Object> json(BagAnswer a) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("course", a.course());
        out.put("tees", a.tees());
        out.put("target", a.target());
        out.put("player", a.player());
        out.put("clubs", a.clubs());
        out.put("now", worth(a.now()));
        out.put("changes", a.changes().stream().map(BagVerb::change).toList());
        return out;
    }

    private static Map<String, Object> worth(BagAnswer.Worth w) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("expected", w.expected());
        out.put("pTarget", w.chance());
        return out;
    }

    private static Map<String, Object> change(BagAnswer.Change c) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("change", c.words());
        out.put("then", worth(c.then()));
        out.put("gain", c.gain());
        out.put("gainError", c.gainError());
        out.put("same", c.same());
        out.put(
                "holes",
                c.holes().stream()
                        .map(h -> Map.of("hole", h.hole(), "strokes", h.strokes()))
                        .toList());
        return out;
    }

    private static void line(PrintWriter out, String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values).stripTrailing());
    }
}
