package loopwright.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import loopwright.action.BenchStore;
import loopwright.action.CarryStore;
import loopwright.action.DrillCards;
import loopwright.action.Intake;
import loopwright.action.OwnDrills;
import loopwright.action.PlanPractice;
import loopwright.action.PlanRequest;
import loopwright.action.PracticePlan;
import loopwright.action.PracticeProgress;
import loopwright.action.PracticeRequest;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.practice.Drill;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code loopwright practice next}: the next week, from what was practised. */
@Command(
        name = "next",
        mixinStandardHelpOptions = true,
        description = "Plans the next week of a player of the store from what he has logged: where he stands in every"
                + " skill, how fast he learns, and the weeks that are left.")
public final class PracticeNextVerb implements Runnable {
    private final StoreWork stores;
    private final Function<BenchStore, Workroom> rooms;
    private final PlanPractice action;
    private final DrillCards cards;
    private final PracticeOutlets outlets;
    private final Clock clock;

    @Mixin
    private PlayerInStore of = new PlayerInStore();

    @Option(names = "--course", paramLabel = "NAME", required = true, description = "Course of the store.")
    private String course = "";

    @Option(names = "--tees", paramLabel = "NAME", defaultValue = "middle", description = "Set of tees.")
    private String tees = "middle";

    @Option(
            names = "--target",
            paramLabel = "SCORE",
            description = "The total to stay at or below. Default: the goal of his player file.")
    private @Nullable Integer target;

    @Option(names = "--holes", defaultValue = "", paramLabel = "LIST", description = "Holes to play, e.g. 1-9.")
    private String holes = "";

    @Option(names = "--seed", defaultValue = "1", paramLabel = "N", description = "Seed of every draw.")
    private long seed;

    @Mixin
    private PracticeOptions practice = new PracticeOptions();

    @Spec
    private @Nullable CommandSpec spec;

    /** {@code rooms} makes the workroom of a store. */
    public PracticeNextVerb(
            StoreWork stores,
            Function<BenchStore, Workroom> rooms,
            PlanPractice action,
            DrillCards cards,
            PracticeOutlets outlets,
            Clock clock) {
        this.stores = stores;
        this.rooms = rooms;
        this.action = action;
        this.cards = cards;
        this.outlets = outlets;
        this.clock = clock;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        PracticePlan plan = stores.of(
                of.where, of.player, (store, id) -> action.plan(request(store, id), new ProgressLine(err, "part")));
        practice.show(plan, outlets, LocalDate.now(clock), out);
    }

    private PracticeRequest request(BenchStore store, String id) {
        Workroom room = rooms.apply(store);
        Shelf.Entry player = store.players().get(id).entry();
        Shelf.Entry onto = CarryStore.course(store, course);
        List<Drill> all = practice.drills.drills(new OwnDrills(room, cards), cards, id);
        return new PracticeRequest(
                PlanRequest.usual(
                        room.courseFile(onto.id(), onto.version()),
                        room.playerFile(player.id(), player.version()),
                        tees,
                        target(store, id),
                        holes,
                        List.of(),
                        List.of(),
                        List.of(),
                        seed),
                practice.hours.hours(LocalDate.now(clock)),
                practice.week.sessions(),
                all,
                practice.rates(outlets.learning()),
                Optional.of(PracticeProgress.of(room, player, all)));
    }

    private int target(BenchStore store, String id) {
        if (target != null) {
            return target;
        }
        return new Intake(store.records().listIntake(id))
                .goalScore()
                .orElseThrow(() -> new UserFault(
                        "There is no goal in the file of " + of.player + "; say --target, for example --target 79."));
    }
}
