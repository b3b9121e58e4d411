package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import loopwright.action.CarryStore;
import loopwright.action.ResultFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright course rules}: local rules of a day on a course of the store. */
@Command(
        name = "rules",
        mixinStandardHelpOptions = true,
        description =
                "Shows or keeps the local rules of a day on a course of the store, as the committee words them. They are"
                        + " a note: what changes how a hole is played is entered with course survey. The committee decides.")
public final class CourseRulesVerb implements Runnable {
    private final StoreWork stores;
    private final ResultFile results;
    private final Clock clock;

    @Parameters(paramLabel = "NAME", description = "Name or id of the course.")
    private String course = "";

    @Mixin
    private StoreOptions where = new StoreOptions();

    @Option(names = "--date", paramLabel = "DAY", description = "As 2026-05-31; today if left out.")
    private @Nullable LocalDate date;

    @Option(names = "--set", paramLabel = "WORDS", description = "The rules of that day; empty takes them out.")
    private @Nullable String set;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write them as JSON (docs/schema/course-rules.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public CourseRulesVerb(StoreWork stores, ResultFile results, Clock clock) {
        this.stores = stores;
        this.results = results;
        this.clock = clock;
    }

    @Override
    public void run() {
        LocalDate day = date == null ? LocalDate.now(clock) : date;
        String rules = stores.in(where, store -> {
            String id = CarryStore.idOf(store.courses(), course, "course");
            if (set != null) {
                store.setLocalRules(id, day.toString(), set.strip());
            }
            return store.localRules(id, day.toString());
        });
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println(
                rules.isEmpty() ? "No local rules of " + day + " are kept." : "Local rules of " + day + ": " + rules);
        out.flush();
        if (json != null) {
            results.write(json, Map.of("course", course, "day", day.toString(), "rules", rules));
        }
    }
}
