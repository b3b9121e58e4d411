package loopwright.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import loopwright.action.Intake;
import loopwright.action.ResultFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code loopwright player file}: what a coach asks at the beginning, shown and changed. */
@Command(
        name = "file",
        mixinStandardHelpOptions = true,
        description = {
            "Shows the player file of a player of the store, or changes it; an empty answer takes an item out.",
            "What a player says of his body is for planning practice only; pain belongs to a doctor."
        })
public final class PlayerFileVerb implements Runnable {
    private static final Map<String, String> WORDS = words();

    private final StoreWork stores;
    private final ResultFile results;
    private final Reader keyboard;
    private final Map<String, String> changes = new LinkedHashMap<>();

    @Parameters(paramLabel = "NAME", description = "Name or id of the player.")
    private String player = "";

    @Mixin
    private StoreOptions where = new StoreOptions();

    @Option(names = "--ask", description = "Ask for every item; an empty line leaves it as it is.")
    private boolean ask;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write it as JSON (docs/schema/player-file.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public PlayerFileVerb(StoreWork stores, ResultFile results, Reader keyboard) {
        this.stores = stores;
        this.results = results;
        this.keyboard = keyboard;
    }

    @Option(names = "--goal", paramLabel = "SCORE", description = "The score to reach over 18 holes.")
    void goal(String value) {
        changes.put(Intake.GOAL, value);
    }

    @Option(names = "--by", paramLabel = "DAY", description = "The day by which, such as 2026-09-30.")
    void by(String value) {
        changes.put(Intake.BY, value);
    }

    @Option(names = "--hours", paramLabel = "N", description = "Hours of practice a week.")
    void hours(String value) {
        changes.put(Intake.HOURS, value);
    }

    @Option(names = "--limits", paramLabel = "WORDS", description = "Injuries and what must not be asked of the body.")
    void limits(String value) {
        changes.put(Intake.LIMITS, value);
    }

    @Option(names = "--eyesight", paramLabel = "WORDS", description = "What the player sees, and with which glasses.")
    void eyesight(String value) {
        changes.put(Intake.EYESIGHT, value);
    }

    @Option(names = "--moves", paramLabel = "HOW", description = "walks or rides.")
    void moves(String value) {
        changes.put(Intake.MOVES, value);
    }

    @Option(names = "--hand", paramLabel = "HAND", description = "right or left.")
    void hand(String value) {
        changes.put(Intake.HAND, value);
    }

    @Option(names = "--age", paramLabel = "GROUP", description = "junior, adult or senior.")
    void age(String value) {
        changes.put(Intake.AGE, value);
    }

    @Option(
            names = "--consent",
            paramLabel = "WORDS",
            description = "Of a junior's parent or guardian: who and when; a junior's file needs it.")
    void consent(String value) {
        changes.put(Intake.CONSENT, value);
    }

    @Option(names = "--plays", paramLabel = "DAYS", description = "Days of the next rounds: 2026-06-06,2026-06-13.")
    void plays(String value) {
        changes.put(Intake.PLAYS, value);
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Intake intake = stores.of(where, player, (store, id) -> {
            Intake before = new Intake(store.records().listIntake(id));
            if (ask) {
                ask(before, out);
            }
            Intake after = before.with(changes);
            if (!after.equals(before)) {
                store.records().setIntake(id, after.answers());
            }
            return after;
        });
        print(intake, out);
        if (json != null) {
            results.write(json, Map.of("player", player, "answers", intake.answers()));
        }
    }

    private void ask(Intake before, PrintWriter out) {
        Asked asked = new Asked(new BufferedReader(keyboard), out);
        for (String item : Intake.ITEMS) {
            String known = before.find(item).map(a -> " [" + a + "]").orElse("");
            Optional<String> answer = asked.line(WORDS.get(item) + known + ": ");
            answer.filter(a -> !a.isEmpty()).ifPresent(a -> changes.put(item, a));
        }
    }

    private void print(Intake intake, PrintWriter out) {
        out.println("Player file of " + player + (intake.answers().isEmpty() ? ": nothing is written yet." : ":"));
        for (String item : Intake.ITEMS) {
            intake.find(item).ifPresent(a -> out.printf("  %-42s %s%n", WORDS.get(item), a));
        }
        out.flush();
    }

    private static Map<String, String> words() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put(Intake.GOAL, "score to reach");
        out.put(Intake.BY, "by the day");
        out.put(Intake.HOURS, "hours of practice a week");
        out.put(Intake.LIMITS, "injuries and limits");
        out.put(Intake.EYESIGHT, "eyesight");
        out.put(Intake.MOVES, "walks or rides");
        out.put(Intake.HAND, "hand (right, left)");
        out.put(Intake.AGE, "age group (junior, adult, senior)");
        out.put(Intake.CONSENT, "a junior's guardian agreed (who, when)");
        out.put(Intake.PLAYS, "next rounds (days)");
        return out;
    }
}
