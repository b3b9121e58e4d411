package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import loopwright.action.PlanDay;
import loopwright.action.ResultFile;
import loopwright.action.UserFault;
import loopwright.action.WedgeAdviser;
import loopwright.action.WedgeTable;
import loopwright.ground.Surface;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright wedges}: the wedge table of a player. */
@Command(
        name = "wedges",
        mixinStandardHelpOptions = true,
        description = "Says which club and effort covers 20 to 130 yd with the fewest strokes, and where the gaps are.")
public final class WedgesVerb implements Runnable {
    private final WedgeAdviser action;
    private final ResultFile results;

    @Option(names = "--player", required = true, paramLabel = "FILE", description = "The player file.")
    private @Nullable Path player;

    @Option(names = "--lie", defaultValue = "fairway", paramLabel = "LIE", description = "fairway or rough.")
    private String lie = "fairway";

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Option(names = "--seed", defaultValue = "1", paramLabel = "N", description = "Seed of every draw.")
    private long seed;

    @Mixin
    private DayOptions day = new DayOptions();

    @Option(names = "--json", paramLabel = "FILE", description = "Write it as JSON (docs/schema/wedges.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public WedgesVerb(WedgeAdviser action, ResultFile results) {
        this.action = action;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        List<PlanDay> days = day.days();
        if (days.size() > 1) {
            throw new UserFault("A wedge table is made for one day; give --wind once.");
        }
        WedgeTable table = action.table(
                Objects.requireNonNull(player),
                surface(),
                days.get(0),
                units.unit(),
                seed,
                new ProgressLine(spec.commandLine().getErr(), "distance"));
        new WedgesPage(out, table).print(days.get(0));
        if (json != null) {
            results.write(json, WedgesJson.of(table));
            out.println("Written to " + json + ".");
        }
    }

    private Surface surface() {
        return switch (lie.toLowerCase(Locale.ROOT)) {
            case "fairway" -> Surface.FAIRWAY;
            case "rough" -> Surface.ROUGH;
            default -> throw new UserFault("--lie " + lie + " is not known here; it is fairway or rough.");
        };
    }
}
