package loopwright.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import loopwright.action.DrillCards;
import loopwright.action.DrillLog;
import loopwright.practice.Drill;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright practice log}: a drill that was played. */
@Command(
        name = "log",
        mixinStandardHelpOptions = true,
        description = "Keeps the score of a drill a player of the store has played.")
public final class PracticeLogVerb implements Runnable {
    private final StoreWork stores;
    private final DrillCards cards;
    private final Clock clock;

    @Mixin
    private PlayerInStore of = new PlayerInStore();

    @Mixin
    private DrillOptions drills = new DrillOptions();

    @Option(names = "--drill", required = true, paramLabel = "NAME", description = "The drill.")
    private String drill = "";

    @Option(names = "--score", required = true, paramLabel = "N", description = "Its score.")
    private int score;

    @Option(names = "--minutes", paramLabel = "N", description = "Minutes spent. Default: those of the drill.")
    private @Nullable Integer minutes;

    @Option(names = "--on", paramLabel = "DAY", description = "Another day than today.")
    private @Nullable LocalDate on;

    @Option(names = "--note", defaultValue = "", paramLabel = "TEXT", description = "Wind, a new grip, a sore wrist.")
    private String note = "";

    @Spec
    private @Nullable CommandSpec spec;

    public PracticeLogVerb(StoreWork stores, DrillCards cards, Clock clock) {
        this.stores = stores;
        this.cards = cards;
        this.clock = clock;
    }

    @Override
    public void run() {
        Drill played = DrillCards.get(drills.drills(cards), drill);
        LocalDate today = LocalDate.now(clock);
        LocalDate day = on == null ? today : on;
        int spent = minutes == null ? played.minutes() : minutes;
        DrillLog.Playing playing = new DrillLog.Playing("", day, played.name(), score, spent, note);
        DrillLog log = new DrillLog(List.of(played), today);
        stores.of(of.where, of.player, (store, id) -> log.take(store.records(), id, List.of(playing), clock.instant()));
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println("Kept: " + day + ", " + played.name() + ", " + score + " of " + played.most() + ".");
    }
}
