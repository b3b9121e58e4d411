package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.practice.LearningTable;
import loopwright.practice.PracticeHours;
import loopwright.practice.Skill;
import loopwright.practice.SplitDoubt;

/** Says in sentences why the hours go where they go, and how far that can be trusted. */
public final class PracticeReasons {
    /** Usual cautions; common practice, no source. */
    public static final List<String> CAUTIONS = List.of(
            "Stop at pain, and let a doctor or physiotherapist look at it; warm up first; a day of rest between two"
                    + " days of many full swings.",
            "Juniors: shorter, fewer full swings, and breaks by age (a coach decides). Drink and rest in heat; leave"
                    + " at the first thunder; nobody in front of or beside the ball.");

    /** How sure the order of blocks is; sources in {@code PracticeWeek}. */
    public static final String ORDER =
            "Come back to a skill on several days, and change skill within a session rather than finish one after"
                    + " another: spacing helps simple tasks clearly, complex ones little; mixing helps adults a little,"
                    + " the young hardly; neither is proven for golf.";

    /** A share of the week that moves with one assumption and has to be said. */
    private static final double MUCH_MOVES = 0.2;

    /** A step worth less than this share of the best one is hardly worth anything. */
    private static final double HARDLY = 0.2;

    private final PracticePlan plan;

    /** What to do in a block that no drill measures. */
    public static String withoutDrill(Skill skill) {
        return switch (skill) {
            case DECISIONS ->
                "Play by the plan page, or go through the round hole by hole: club, aim, what must not happen.";
            case READING -> "Say the break before every putt, then see how far off it was.";
            default -> "A new target for every ball, the whole routine before each.";
        };
    }

    public PracticeReasons(PracticePlan plan) {
        this.plan = plan;
    }

    /** Where the time goes and why, or that it cannot be said yet. */
    public List<String> first() {
        List<String> out = new ArrayList<>();
        plan.first().ifPresent(skill -> {
            if (!plan.canBeSaid()) {
                out.add(say(
                        "It cannot be said yet: %.0f %% of these hours rest on skills nobody has measured, so this is"
                                + " the split of any player of this level.",
                        100 * plan.unmeasuredShare()));
                out.add("Measure first: " + measureFirst() + ".");
            } else {
                out.add(why(skill));
            }
        });
        LearningTable.weaknesses(plan.player()).stream()
                .filter(s -> plan.canBeSaid() && isPlayedRound(s))
                .forEach(s -> out.add(say(
                        "%s: %.1f times as wide as usual at his level, but the plan plays round it: one step there is"
                                + " worth %+.1f points.",
                        capital(PracticeWords.of(s)),
                        LearningTable.besideLevel(s, plan.player()),
                        100 * plan.gradient().gain(s).chance())));
        List<Skill> tied = plan.gradient().tiedWithBest();
        if (!tied.isEmpty() && plan.canBeSaid()) {
            out.add("By a single step these cannot be told from the best one ("
                    + PracticeWords.of(plan.gradient().gains().get(0).skill()) + "): " + words(tied) + ".");
        }
        return out;
    }

    /** A weakness that gets no time, because a step there brings hardly anything. */
    private boolean isPlayedRound(Skill skill) {
        double best = plan.gradient().gains().get(0).chance();
        return plan.split().of(skill) == 0 && plan.gradient().gain(skill).chance() < HARDLY * best;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private String why(Skill skill) {
        double beside = LearningTable.besideLevel(skill, plan.player());
        String wide = beside > LearningTable.NOTABLY_WIDER
                ? say(", where he is %.1f times as wide as usual at his level", beside)
                : "";
        return say(
                "Most of the time goes to %s%s: %s a week are assumed to bring %.1f points of the chance by the end; one"
                        + " step is worth %+.1f, and %.0f hours bring most of what there is to gain.",
                PracticeWords.of(skill),
                wide,
                hours(plan.split().of(skill)),
                100 * plan.bring(skill),
                100 * plan.gradient().gain(skill).chance(),
                plan.curves().get(skill).hours());
    }

    /** How robust the split is, what it hangs on, and what to measure. */
    public List<String> trust() {
        List<String> out = new ArrayList<>();
        for (PracticePlan.Beside b : plan.beside()) {
            out.add(say(
                    "Beside %s: %+.1f points on average over players and rates that may be as well; not better in %.0f"
                            + " of 100.",
                    PracticeWords.of(b.kind()), 100 * b.lead(), 100 * b.behind()));
        }
        out.add("Hours per skill in 8 of 10 of those: " + ranges() + ".");
        out.add(hangs());
        out.add("To know more, measure: " + measureFirst() + ".");
        return out;
    }

    private String hangs() {
        List<SplitDoubt.Moved> much = plan.doubt().hangsOn().stream()
                .filter(m -> m.share() >= MUCH_MOVES)
                .limit(3)
                .toList();
        if (much.isEmpty()) {
            return "No single assumed rate of learning, halved or doubled, moves a fifth of the hours.";
        }
        return "It hangs on how fast he learns (assumed): half or twice the hours to learn "
                + much.stream()
                        .map(m ->
                                say("%s would move %.0f %% of the week", PracticeWords.of(m.skill()), 100 * m.share()))
                        .collect(Collectors.joining(", "))
                + ".";
    }

    private String ranges() {
        return plan.curves().curves().keySet().stream()
                .filter(s -> plan.doubt().usual(s).high() > 0)
                .map(s -> say(
                        "%s %s to %s",
                        PracticeWords.of(s),
                        hours(plan.doubt().usual(s).low()),
                        hours(plan.doubt().usual(s).high())))
                .collect(Collectors.joining("; "));
    }

    private String measureFirst() {
        return words(plan.doubt().measure().stream()
                .map(g -> g.skill())
                .filter(s -> s != Skill.DECISIONS)
                .limit(2)
                .toList());
    }

    private static String words(List<Skill> skills) {
        return skills.stream().map(PracticeWords::of).collect(Collectors.joining(", "));
    }

    private static String hours(int blocks) {
        int minutes = blocks * PracticeHours.MINUTES;
        return say("%d:%02d", minutes / 60, minutes % 60);
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
