package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import loopwright.action.PlanDay;
import loopwright.action.ReadLengths;
import loopwright.action.ResultFile;
import loopwright.action.ShortGame;
import loopwright.action.ShortGameTable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright shortgame}: what to play from round the green. */
@Command(
        name = "shortgame",
        mixinStandardHelpOptions = true,
        description = "Putt, chip, pitch, lob or bunker shot: by lie, distance and room to the hole, with the odds.")
public final class ShortGameVerb implements Runnable {
    private final ShortGame action;
    private final ResultFile results;

    @Option(names = "--player", required = true, paramLabel = "FILE", description = "The player file.")
    private @Nullable Path player;

    @Option(
            names = "--green-speed",
            paramLabel = "10",
            defaultValue = "10",
            description = "Roll from a Stimpmeter in feet, 4 to 16 (10).")
    private String greenSpeed = "10";

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Option(names = "--all", description = "Show every way to play it, not only the best two.")
    private boolean all;

    @Option(names = "--seed", defaultValue = "1", paramLabel = "N", description = "Seed of every draw.")
    private long seed;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Write it as JSON (docs/schema/shortgame.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public ShortGameVerb(ShortGame action, ResultFile results) {
        this.action = action;
        this.results = results;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        ReadLengths lengths = units.lengths();
        PlanDay day = new PlanDay(PlanDay.USUAL.conditions(), PuttWords.greenSpeed(greenSpeed));
        ShortGameTable table = action.table(
                Objects.requireNonNull(player),
                day,
                seed,
                new ProgressLine(spec.commandLine().getErr(), "green"));
        new ShortGamePage(out, lengths).print(table, all);
        if (json != null) {
            results.write(json, ShortGameJson.of(table));
            out.println("Written to " + json + ".");
        }
    }
}
