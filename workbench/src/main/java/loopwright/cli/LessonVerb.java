package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import loopwright.action.KeptLesson;
import loopwright.action.ResultFile;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** {@code loopwright lesson}: what was seen in a lesson, what was agreed, and one thing to do until the next. */
@Command(
        name = "lesson",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        description = "Lessons of a player of the store: notes, what was agreed, one homework item.",
        synopsisSubcommandLabel = "WHAT")
public final class LessonVerb implements Runnable {
    private final StoreWork stores;
    private final ResultFile results;
    private final Clock clock;

    @Spec
    private @Nullable CommandSpec spec;

    public LessonVerb(StoreWork stores, ResultFile results, Clock clock) {
        this.stores = stores;
        this.results = results;
        this.clock = clock;
    }

    @Override
    public void run() {
        throw new ParameterException(
                Objects.requireNonNull(spec).commandLine(), "Say what to do with lessons: add, list, done or play.");
    }

    @Command(name = "add", description = "Keeps a lesson.")
    void add(
            @Mixin PlayerInStore of,
            @Option(names = "--date", paramLabel = "DAY", description = "As 2026-05-31; today if left out.") @Nullable
                    LocalDate date,
            @Option(names = "--notes", paramLabel = "WORDS", defaultValue = "", description = "What was seen.")
                    String notes,
            @Option(names = "--agreed", paramLabel = "WORDS", defaultValue = "", description = "What was agreed.")
                    String agreed,
            @Option(names = "--homework", paramLabel = "WORDS", defaultValue = "", description = "One thing to do.")
                    String homework,
            @Option(names = "--due", paramLabel = "DAY", description = "The day by which it should be done.") @Nullable
                    LocalDate due) {
        if ((notes + agreed + homework).isBlank()) {
            throw new UserFault("A lesson needs --notes, --agreed or --homework.");
        }
        if (due != null && homework.isBlank()) {
            throw new UserFault("--due needs the --homework that is due.");
        }
        LocalDate day = date == null ? LocalDate.now(clock) : date;
        KeptLesson kept = stores.of(
                of.where,
                of.player,
                (store, id) -> store.records()
                        .addLesson(
                                id,
                                new KeptLesson(
                                        "",
                                        day,
                                        notes.strip(),
                                        agreed.strip(),
                                        homework.strip(),
                                        Optional.ofNullable(due),
                                        false,
                                        Instant.EPOCH)));
        say("Kept the lesson of " + kept.day() + " as " + kept.id() + ".");
    }

    @Command(name = "list", description = "Shows the lessons of a player, the latest last.")
    void list(
            @Mixin PlayerInStore of,
            @Option(
                            names = "--json",
                            paramLabel = "FILE",
                            description = "Also write them as JSON (docs/schema/lessons.schema.json).")
                    @Nullable
                    Path json) {
        List<KeptLesson> lessons =
                stores.of(of.where, of.player, (store, id) -> store.records().listLessons(id));
        say(lessons.isEmpty() ? "No lesson of " + of.player + " is kept." : "Lessons of " + of.player + ":");
        lessons.forEach(this::print);
        if (json != null) {
            results.write(
                    json,
                    Map.of(
                            "player",
                            of.player,
                            "lessons",
                            lessons.stream().map(LessonVerb::row).toList()));
        }
    }

    @Command(name = "done", description = "Marks the homework of the latest lesson (or of --id) as done.")
    void done(
            @Mixin PlayerInStore of,
            @Option(names = "--id", paramLabel = "ID", description = "Of the lesson, as list shows it.") @Nullable
                    String id) {
        KeptLesson lesson = stores.of(of.where, of.player, (store, player) -> {
            KeptLesson open = store.records().listLessons(player).stream()
                    .filter(l -> !l.homework().isEmpty() && (id == null ? !l.done() : l.id().equals(id)))
                    .reduce((a, b) -> b)
                    .orElseThrow(() -> new UserFault("There is no open homework of " + of.player
                            + "; \"loopwright lesson list\" shows the lessons."));
            store.records().changeLesson(player, open.whenDone());
            return open;
        });
        say("Done: " + lesson.homework() + ".");
    }

    private void print(KeptLesson l) {
        say("  " + l.day() + "  (" + l.id() + ")");
        part("seen", l.notes());
        part("agreed", l.agreed());
        String due = l.due().map(d -> ", by " + d).orElse("");
        part("homework" + due + (l.done() ? ", done" : ""), l.homework());
    }

    private void part(String what, String text) {
        if (!text.isEmpty()) {
            say("    " + what + ": " + text);
        }
    }

    private static Map<String, Object> row(KeptLesson l) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("id", l.id());
        out.put("day", l.day().toString());
        out.put("notes", l.notes());
        out.put("agreed", l.agreed());
        out.put("homework", l.homework());
        l.due().ifPresent(d -> out.put("due", d.toString()));
        out.put("done", l.done());
        return out;
    }

    private void say(String line) {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println(line);
        out.flush();
    }
}
