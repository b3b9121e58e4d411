package loopwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import loopwright.action.PracticePlan;
import loopwright.action.PracticeProgress;
import loopwright.action.PracticeReasons;
import loopwright.action.PracticeWords;
import loopwright.practice.Facility;
import loopwright.practice.PracticeHours;
import loopwright.practice.Skill;
import loopwright.practice.SkillGain;
import loopwright.practice.TimeSplit;

/** Prints a practice plan for a person to read: where the hours go and why, what it is worth, how far to trust it. */
final class PracticePage {
    private final PrintWriter out;

    PracticePage(PrintWriter out) {
        this.out = out;
    }

    void print(PracticePlan plan) {
        line(
                "%s on %s, %s tees. Target: %s. %s hours a week for %d weeks.",
                plan.player().name(),
                plan.course(),
                plan.tees(),
                plan.target(),
                hours(plan.hours().blocks()),
                plan.hours().weeks());
        plan.progress().ifPresent(this::progress);
        PracticeReasons reasons = new PracticeReasons(plan);
        out.println();
        reasons.first().forEach(this::line);
        split(plan);
        forecasts(plan);
        out.println();
        reasons.trust().forEach(this::line);
        gradient(plan);
        out.println();
        PracticeReasons.CAUTIONS.forEach(this::line);
    }

    private void progress(PracticeProgress progress) {
        out.println();
        if (progress.lines().isEmpty()) {
            line("Nothing was ticked or logged since the player file was made, so this is the plan from the file.");
            return;
        }
        line(
                "Where he stands since the player file was made; spread beside that file (of playing the plan: holes played"
                        + " by habit), 9 in 10 in brackets:");
        for (PracticeProgress.Line l : progress.lines()) {
            line(
                    "  %-26s %5.2f h  %.2f (%.2f to %.2f) left, %s; %.0f h to learn",
                    PracticeWords.of(l.skill()),
                    l.hours(),
                    l.left(),
                    l.low(),
                    l.high(),
                    l.playings() == 0
                            ? "assumed"
                            : l.playings() == 1
                                    ? "by 1 drill"
                                    : String.format(Locale.ROOT, "by %d drills", l.playings()),
                    progress.rates().get(l.skill()).hours());
        }
    }

    private void split(PracticePlan plan) {
        out.println();
        line("Hours a week:");
        for (Skill skill : inOrder(plan)) {
            line("  %5s  %-26s %s", hours(plan.split().of(skill)), PracticeWords.of(skill), places(plan, skill));
        }
        int idle = plan.hours().blocks() - plan.split().total();
        if (idle > 0) {
            line("  %5s  left over: the limits of places and full swings leave no room.", hours(idle));
        }
    }

    private static List<Skill> inOrder(PracticePlan plan) {
        return plan.curves().curves().keySet().stream()
                .filter(s -> plan.split().of(s) > 0)
                .sorted((a, b) -> plan.split().of(b) - plan.split().of(a))
                .toList();
    }

    private static String places(PracticePlan plan, Skill skill) {
        return plan.split().blocks().entrySet().stream()
                .filter(e -> e.getKey().skill() == skill)
                .map(Map.Entry::getKey)
                .map(TimeSplit.Cell::facility)
                .map(PracticePage::at)
                .collect(Collectors.joining(", "));
    }

    private static String at(Facility facility) {
        return facility == Facility.HOME ? "at home" : "on the " + PracticeWords.of(facility);
    }

    private void forecasts(PracticePlan plan) {
        out.println();
        line(
                "Today: by habit %.1f strokes, target %s; playing the plan %.1f strokes, target %s.",
                plan.byHabit().expected(),
                percent(plan.byHabit().chance()),
                plan.byPlan().expected(),
                percent(plan.byPlan().chance()));
        line(
                "After %d weeks, under these assumed rates of learning, habits staying where no time goes to the plan:",
                plan.hours().weeks());
        line(
                "  %-42s %5.1f strokes, target %s",
                "this split", plan.after().expected(), percent(plan.after().chance()));
        for (PracticePlan.Beside b : plan.beside()) {
            line(
                    "  %-42s %5.1f strokes, target %s",
                    PracticeWords.of(b.kind()),
                    b.after().expected(),
                    percent(b.after().chance()));
        }
    }

    private void gradient(PracticePlan plan) {
        out.println();
        line("What one honest step is worth a round, the plan staying as it is (a tenth less spread or fewer"
                + " mishits; 2 %");
        line("more length; one hole in ten more by plan), with 9 in 10 of what is not known of the player:");
        line("  %-26s %8s   %-26s %s", "", "strokes", "chance of the target", "measured");
        for (SkillGain g : plan.gradient().gains()) {
            line(
                    "  %-26s %8.2f   %+5.1f points (%+.1f to %+.1f)   %s",
                    PracticeWords.of(g.skill()) + (g.skill() == Skill.DRIVER_DISTANCE ? ", at least" : ""),
                    -g.strokes(),
                    100 * g.chance(),
                    100 * g.chanceLow(),
                    100 * g.chanceHigh(),
                    plan.isMeasured(g.skill()) ? "" : "assumed");
        }
    }

    private static String hours(int blocks) {
        int minutes = blocks * PracticeHours.MINUTES;
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }

    private static String percent(double p) {
        return String.format(Locale.ROOT, p < 0.095 ? "%.1f %%" : "%.0f %%", 100 * p);
    }

    private void line(String format, Object... values) {
        out.println(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
    }
}
