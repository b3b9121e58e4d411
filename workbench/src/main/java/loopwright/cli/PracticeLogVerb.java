package loopwright.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import loopwright.action.BenchStore;
import loopwright.action.DrillCards;
import loopwright.action.DrillLog;
import loopwright.action.OwnDrills;
import loopwright.action.PracticeWords;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.practice.Drill;
import loopwright.practice.Skill;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright practice log}: a drill that was played, or time that was spent on a skill. */
@Command(
        name = "log",
        mixinStandardHelpOptions = true,
        description = "Keeps the score of a drill a player of the store has played, or minutes he spent on a skill.")
public final class PracticeLogVerb implements Runnable {
    private final StoreWork stores;
    private final Function<BenchStore, Workroom> rooms;
    private final DrillCards cards;
    private final Clock clock;

    @Mixin
    private PlayerInStore of = new PlayerInStore();

    @Mixin
    private DrillOptions drills = new DrillOptions();

    @Option(names = "--drill", paramLabel = "NAME", description = "The drill.")
    private @Nullable String drill;

    @Option(names = "--score", paramLabel = "N", description = "Its score.")
    private @Nullable Integer score;

    @Option(
            names = "--skill",
            paramLabel = "SKILL",
            description = "Instead of a drill: what the minutes were spent on, e.g. pace or decisions.")
    private @Nullable String skill;

    @Option(names = "--minutes", paramLabel = "N", description = "Minutes spent. Default: those of the drill.")
    private @Nullable Integer minutes;

    @Option(names = "--on", paramLabel = "DAY", description = "Another day than today.")
    private @Nullable LocalDate on;

    @Option(names = "--note", defaultValue = "", paramLabel = "TEXT", description = "Wind, a new grip, a sore wrist.")
    private String note = "";

    @Spec
    private @Nullable CommandSpec spec;

    /** {@code rooms} makes the workroom of a store. */
    public PracticeLogVerb(StoreWork stores, Function<BenchStore, Workroom> rooms, DrillCards cards, Clock clock) {
        this.stores = stores;
        this.rooms = rooms;
        this.cards = cards;
        this.clock = clock;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        LocalDate day = on == null ? LocalDate.now(clock) : on;
        out.println("Kept: " + day + ", " + (skill == null ? drill(day) : time(skill, day)) + ".");
    }

    private String drill(LocalDate day) {
        if (drill == null || score == null) {
            throw new UserFault(
                    "Say --drill NAME --score N for a drill, or --skill SKILL --minutes N for time on a" + " skill.");
        }
        String name = drill;
        int points = score;
        return stores.of(of.where, of.player, (store, id) -> {
            List<Drill> all = drills.drills(new OwnDrills(rooms.apply(store), cards), cards, id);
            Drill played = DrillCards.get(all, name);
            int spent = minutes == null ? played.minutes() : minutes;
            new DrillLog(all, LocalDate.now(clock))
                    .take(
                            store.records(),
                            id,
                            List.of(new DrillLog.Playing("", day, played.name(), points, spent, note)),
                            clock.instant());
            return played.name() + ", " + points + " of " + played.most();
        });
    }

    private String time(String typed, LocalDate day) {
        if (drill != null || score != null || minutes == null) {
            throw new UserFault("--skill takes --minutes N and no drill; a drill is logged with its score.");
        }
        Skill practised = PracticeWords.findSkill(typed)
                .orElseThrow(() -> new UserFault("--skill: \"" + typed + "\" is no skill; "
                        + Arrays.stream(Skill.values())
                                .map(PracticeWords::typed)
                                .collect(Collectors.joining(", "))
                        + " are known."));
        int spent = minutes;
        stores.of(
                of.where,
                of.player,
                (store, id) -> new DrillLog(List.of(), LocalDate.now(clock))
                        .takeBlocks(
                                store.records(),
                                id,
                                List.of(new DrillLog.Block("", day, practised, spent)),
                                clock.instant()));
        return PracticeWords.of(practised) + ", " + spent + " minutes";
    }
}
