package loopwright.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import loopwright.action.DrillCards;
import loopwright.action.PlanPractice;
import loopwright.action.PlanRequest;
import loopwright.action.PracticePlan;
import loopwright.action.PracticeRequest;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code loopwright practice plan}: where the hours go. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description =
                "Says what every skill is worth on this course for this target, and splits the hours accordingly.")
public final class PracticePlanVerb implements Runnable {
    private final PlanPractice action;
    private final DrillCards cards;
    private final PracticeOutlets outlets;
    private final Clock clock;

    @Mixin
    private RoundOptions round = new RoundOptions();

    @Mixin
    private TeesOption tees = new TeesOption();

    @Mixin
    private PracticeOptions practice = new PracticeOptions();

    @Spec
    private @Nullable CommandSpec spec;

    public PracticePlanVerb(PlanPractice action, DrillCards cards, PracticeOutlets outlets, Clock clock) {
        this.action = action;
        this.cards = cards;
        this.outlets = outlets;
        this.clock = clock;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        PracticePlan plan = action.plan(request(), new ProgressLine(err, "part"));
        practice.show(plan, outlets, LocalDate.now(clock), out);
    }

    private PracticeRequest request() {
        return new PracticeRequest(
                PlanRequest.usual(
                        round.course(),
                        round.player(),
                        tees.name,
                        round.target,
                        round.holes,
                        List.of(),
                        List.of(),
                        List.of(),
                        round.seed),
                practice.hours.hours(LocalDate.now(clock)),
                practice.week.sessions(),
                practice.drills.drills(cards),
                practice.rates(outlets.learning()),
                Optional.empty());
    }
}
