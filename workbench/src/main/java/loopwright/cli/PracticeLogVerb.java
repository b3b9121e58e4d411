package loopwright.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import loopwright.action.DrillCards;
import loopwright.action.KeptDrill;
import loopwright.action.UserFault;
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
    private static final int MOST_MINUTES = 600;

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
        check(played, day, today, spent);
        KeptDrill kept = new KeptDrill("", day, played.name(), score, spent, note, clock.instant());
        stores.of(of.where, of.player, (store, id) -> store.records().addDrill(id, kept));
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println("Kept: " + day + ", " + played.name() + ", " + score + " of " + played.most() + ".");
    }

    private void check(Drill played, LocalDate day, LocalDate today, int spent) {
        if (score < 0 || score > played.most()) {
            throw new UserFault(
                    "--score " + score + " cannot be: " + played.name() + " gives 0 to " + played.most() + " points.");
        }
        if (spent < 1 || spent > MOST_MINUTES) {
            throw new UserFault("--minutes " + spent + " is no time for a drill; give 1 to 600.");
        }
        if (day.isAfter(today)) {
            throw new UserFault("--on " + day + " has not come yet; a drill is logged when it was played.");
        }
    }
}
