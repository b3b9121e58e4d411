package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import loopwright.action.ResultFile;
import loopwright.action.TodayList;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright today}: the coach's list. */
@Command(
        name = "today",
        mixinStandardHelpOptions = true,
        description =
                "The coach's list: who plays within ten days, whose homework or drill is due, whose scores disagree"
                        + " with the model, who has been silent for three weeks.")
public final class TodayVerb implements Runnable {
    private final StoreWork stores;
    private final TodayList list;
    private final ResultFile results;
    private final Clock clock;

    @Mixin
    private StoreOptions where = new StoreOptions();

    @Option(names = "--on", paramLabel = "DAY", description = "Another day than today.")
    private @Nullable LocalDate on;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write it as JSON (docs/schema/today.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public TodayVerb(StoreWork stores, TodayList list, ResultFile results, Clock clock) {
        this.stores = stores;
        this.list = list;
        this.results = results;
        this.clock = clock;
    }

    @Override
    public void run() {
        LocalDate day = on == null ? LocalDate.now(clock) : on;
        List<TodayList.Line> lines = stores.in(where, store -> list.of(store, day));
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println(lines.isEmpty() ? day + ": nobody needs you today." : "Whom to think of on " + day + ":");
        TodayList.Reason shown = null;
        for (TodayList.Line line : lines) {
            if (line.reason() != shown) {
                shown = line.reason();
                out.println(heading(shown));
            }
            out.println("  " + sentence(line));
        }
        out.flush();
        if (json != null) {
            results.write(
                    json,
                    Map.of(
                            "day",
                            day.toString(),
                            "lines",
                            lines.stream().map(TodayVerb::row).toList()));
        }
    }

    private static String heading(TodayList.Reason reason) {
        return switch (reason) {
            case PLAYS_SOON -> "Plays within ten days:";
            case WORK_DUE -> "Work is due:";
            case MODEL_DISAGREES -> "Scores disagree with the model:";
            case SILENT -> "Silent for three weeks:";
        };
    }

    private static String sentence(TodayList.Line line) {
        String day = line.day().map(LocalDate::toString).orElse("");
        return line.name()
                + switch (line.reason()) {
                    case PLAYS_SOON -> ", on " + day;
                    case WORK_DUE -> ": " + line.what() + ", due " + day;
                    case MODEL_DISAGREES -> ": " + line.what();
                    case SILENT -> day.isEmpty() ? ": no round and no lesson yet" : ", last heard on " + day;
                };
    }

    private static Map<String, Object> row(TodayList.Line line) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("player", line.player());
        out.put("name", line.name());
        out.put("reason", line.reason().name());
        line.day().ifPresent(d -> out.put("day", d.toString()));
        out.put("what", line.what());
        return out;
    }
}
