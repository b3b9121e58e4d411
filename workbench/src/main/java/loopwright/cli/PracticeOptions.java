package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import loopwright.action.LearningFiles;
import loopwright.action.PracticePlan;
import loopwright.practice.LearningCurve;
import loopwright.practice.Skill;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What every practice plan is asked with, and where it goes. */
final class PracticeOptions {
    @Mixin
    HoursOptions hours = new HoursOptions();

    @Mixin
    DrillOptions drills = new DrillOptions();

    @Mixin
    WeekOptions week = new WeekOptions();

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

    Map<Skill, LearningCurve> rates(LearningFiles learning) {
        return rates == null ? Map.of() : learning.read(rates);
    }

    /** Prints a plan and writes what was asked for. */
    void show(PracticePlan plan, PracticeOutlets outlets, LocalDate today, PrintWriter out) {
        new PracticePage(out).print(plan);
        week.write(plan, outlets.pictures(), outlets.calendars(), today, out);
        if (json != null) {
            outlets.results().write(json, PracticeJson.of(plan));
            out.println("Practice plan written to " + json + ".");
        }
    }
}
