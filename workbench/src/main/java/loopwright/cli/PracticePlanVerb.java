package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import loopwright.action.CalendarFile;
import loopwright.action.DrillCards;
import loopwright.action.LearningFiles;
import loopwright.action.PlanPractice;
import loopwright.action.PlanRequest;
import loopwright.action.PracticePictures;
import loopwright.action.PracticePlan;
import loopwright.action.PracticeRequest;
import loopwright.action.ResultFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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
    private final LearningFiles learning;
    private final PracticePictures pictures;
    private final CalendarFile calendars;
    private final ResultFile results;
    private final Clock clock;

    @Mixin
    private RoundOptions round = new RoundOptions();

    @Mixin
    private HoursOptions hours = new HoursOptions();

    @Mixin
    private DrillOptions drills = new DrillOptions();

    @Mixin
    private WeekOptions week = new WeekOptions();

    @Option(
            names = "--rates",
            paramLabel = "FILE",
            description = "Learning curves you have set instead of the assumed ones (docs/practice.md).")
    private @Nullable Path rates;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Write it as JSON (docs/schema/practice-plan.schema.json).")
    private @Nullable Path json;

    @Spec
    private @Nullable CommandSpec spec;

    public PracticePlanVerb(
            PlanPractice action,
            DrillCards cards,
            LearningFiles learning,
            PracticePictures pictures,
            CalendarFile calendars,
            ResultFile results,
            Clock clock) {
        this.action = action;
        this.cards = cards;
        this.learning = learning;
        this.pictures = pictures;
        this.calendars = calendars;
        this.results = results;
        this.clock = clock;
    }

    @Override
    public void run() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        PracticePlan plan = action.plan(request(), new ProgressLine(err, "part"));
        new PracticePage(out).print(plan);
        week.write(plan, pictures, calendars, LocalDate.now(clock), out);
        if (json != null) {
            results.write(json, PracticeJson.of(plan));
            out.println("Practice plan written to " + json + ".");
        }
    }

    private PracticeRequest request() {
        return new PracticeRequest(
                PlanRequest.usual(
                        round.course(),
                        round.player(),
                        round.tees,
                        round.target,
                        round.holes,
                        List.of(),
                        List.of(),
                        List.of(),
                        round.seed),
                hours.hours(LocalDate.now(clock)),
                week.sessions(),
                drills.drills(cards),
                rates == null ? Map.of() : learning.read(rates),
                Optional.empty());
    }
}
