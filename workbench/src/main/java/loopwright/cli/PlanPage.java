package loopwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import loopwright.action.Counting;
import loopwright.action.HolePicture;
import loopwright.action.HowSure;
import loopwright.action.LocalRuleWords;
import loopwright.action.ReadLengths;
import loopwright.action.RoundPlan;
import loopwright.course.Course;
import loopwright.ground.Surface;

/** Prints a plan for a person to read: first what to change, then hole by hole, then the round. */
final class PlanPage {
    /** Below this a choice is told as a toss-up: assumed. */
    private static final double TOSS_UP = 0.7;

    private final PrintWriter out;
    private final ReadLengths lengths;
    private final String remark;

    /** The remark is a sentence about how the day was read, or empty. */
    PlanPage(PrintWriter out, ReadLengths lengths, String remark) {
        this.out = out;
        this.lengths = lengths;
        this.remark = remark;
    }

    void print(RoundPlan plan, boolean lastHoles) {
        assumedGreens(plan);
        line(
                "%s, %s, %d %s, par %d, %s. Target: %s%s.",
                plan.course().name(),
                plan.tees().name().startsWith("tee ")
                        ? plan.tees().name()
                        : plan.tees().name() + " tees",
                plan.holes().size(),
                plan.holes().size() == 1 ? "hole" : "holes",
                plan.par(),
                lengths.far(plan.lengthMetres()),
                plan.counting().words(plan.target()),
                playingHandicap(plan.counting()));
        line("Day: %s.", DayWords.of(plan.day()));
        if (!remark.isEmpty()) {
            line("%s", remark);
        }
        new TodayPage(out, lengths).print(plan.today());
        measuredGreens(plan);
        unsurveyed(plan);
        decisions(plan);
        out.println();
        line("Left and right in brackets are counted from the line of play.");
        plan.holes().forEach(h -> hole(plan.course(), h));
        round(plan);
        plan.howSure().ifPresent(s -> howSure(plan, s));
        plan.stateOfPlay().ifPresent(s -> new TargetPage(out, lengths).print(plan, s, lastHoles));
        line("A plan is preparation. The Rules, the committee and local rules decide; never play while people are"
                + " within reach, and stop for lightning and heat.");
    }

    private void measuredGreens(RoundPlan plan) {
        List<Integer> measured = plan.holes().stream()
                .filter(RoundPlan.HolePlan::greenMeasured)
                .map(RoundPlan.HolePlan::number)
                .toList();
        if (!measured.isEmpty()) {
            boolean all = measured.size() == plan.holes().size();
            line(
                    "Greens measured on hole %s: putts are played on their slope%s.",
                    numbers(measured), all ? "" : "; elsewhere no break is claimed");
        }
    }

    private void otherDays(RoundPlan plan) {
        if (!plan.otherDays().isEmpty()) {
            out.println();
            line(
                    "How the choices change (aims in %s beside the line of play):",
                    lengths.course().words());
            new DayTable(plan, lengths.course()).lines().forEach(out::println);
        }
    }

    /** The very first line: a plan for a green that is not there is worth little. */
    private void assumedGreens(RoundPlan plan) {
        List<Integer> assumed = plan.holes().stream()
                .filter(RoundPlan.HolePlan::greenAssumed)
                .map(RoundPlan.HolePlan::number)
                .toList();
        if (!assumed.isEmpty()) {
            line(
                    "ASSUMED GREEN on hole %s: the map has none there, a circle %s across stands in.",
                    numbers(assumed), lengths.told("12 yd"));
        }
    }

    private void unsurveyed(RoundPlan plan) {
        if (!plan.unsurveyed().isEmpty()) {
            line(
                    "UNSURVEYED, not open: on %s nobody has confirmed trees, out of bounds and penalty areas;"
                            + " what the map lacks, this plan lacks.",
                    plan.unsurveyed().size() == plan.holes().size()
                                    && plan.holes().size() > 1
                            ? "every hole"
                            : "hole " + numbers(plan.unsurveyed()));
        }
    }

    private static String numbers(List<Integer> holes) {
        return holes.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private void decisions(RoundPlan plan) {
        out.println();
        if (plan.decisions().isEmpty()) {
            line("Nowhere does leaving your habit pay beyond doubt.");
            return;
        }
        line("Where leaving your habit pays most (strokes a round):");
        for (RoundPlan.Decision d : plan.decisions()) {
            RoundPlan.ShotPlan s = d.plan();
            line(
                    "  %.2f  hole %d, shot %d: %s%s%s, instead of %s%s.",
                    d.cost(),
                    d.hole(),
                    d.shot(),
                    s.club(),
                    aim(s),
                    lengths.bracketed(s.offsetMetres()),
                    s.habit().club(),
                    lengths.bracketed(s.habit().offsetMetres()));
        }
    }

    private static String playingHandicap(Counting counting) {
        return counting.handicap().isEmpty()
                ? ""
                : ", playing handicap "
                        + DecimalList.handicap(counting.handicap().getAsInt());
    }

    private void hole(Course course, RoundPlan.HolePlan h) {
        out.println();
        line(
                "Hole %d, par %d, %s: expect %.2f (par or better %s, bogey %s, double or worse %s, a penalty %s)",
                h.number(),
                h.par(),
                lengths.far(h.lengthMetres()),
                h.expected(),
                Chances.percent(h.probability(0, h.par())),
                Chances.percent(h.probability(h.par() + 1, h.par() + 1)),
                Chances.percent(h.probability(h.par() + 2, h.scores().size())),
                Chances.percent(h.penalty()));
        if (!h.surveyed()) {
            line("  unsurveyed");
        }
        LocalRuleWords.of(course.getHole(h.number())).forEach(r -> line("  local rule: %s", r));
        if (!h.standIn().isEmpty()) {
            line("  no tee of this set here: the %s tee stands in", h.standIn());
        }
        h.lockCost().ifPresent(c -> line("  your locks cost %.2f strokes here", c));
        for (int i = 0; i < h.shots().size(); i++) {
            shot(h.shots().get(i));
            if (i == 0) {
                new StartWords(lengths).otherLines(h).ifPresent(text -> line("      %s", text));
            }
        }
    }

    private void shot(RoundPlan.ShotPlan s) {
        line(
                "  %s from the %s: %s%s, aim %s%s%s. Expect %.2f from here.",
                lengths.far(s.toHoleMetres()),
                word(s.lie()),
                s.club(),
                s.assumedSkill() ? " (not measured)" : "",
                lengths.far(s.aimMetres()),
                aim(s),
                lengths.bracketed(s.offsetMetres()),
                s.expected());
        s.playing()
                .map(p -> PlayingWords.of(p, lengths))
                .filter(text -> !text.isEmpty())
                .ifPresent(text -> line("      %s", text));
        new StartWords(lengths).of(s).forEach(text -> line("      %s", text));
        line("      finishes: %s", finish(s.finish()));
        if (!s.hazards().isEmpty()) {
            line(
                    "      carry: %s",
                    s.hazards().stream()
                            .map(c -> lengths.far(c.metres()) + " over the " + c.hazard())
                            .collect(Collectors.joining(", ")));
        }
        s.room().ifPresent(this::room);
        List<RoundPlan.Risk> flagged =
                s.risks().stream().filter(RoundPlan.Risk::isFlagged).toList();
        if (!flagged.isEmpty()) {
            line(
                    "      BEWARE: may finish %s. Wait until nobody is within reach, and call out.",
                    flagged.stream()
                            .map(r -> r.where() + " " + Chances.percent(r.chance()))
                            .collect(Collectors.joining(", ")));
        }
        line(
                "      else: %s",
                s.alternatives().stream()
                        .map(a -> a.club() + lengths.bracketed(a.offsetMetres()) + " " + a.costInWords())
                        .collect(Collectors.joining("; ")));
    }

    private String aim(RoundPlan.ShotPlan s) {
        return (RoundPlan.isBeside(s.line()) ? ", " : " ")
                + lengths.told(s.blind() ? s.line() : RoundPlan.toward(s.line()));
    }

    private void room(HolePicture.Room r) {
        line(
                "      room there: %s (%s to %s); 8 in 10 of yours need %s, 19 in 20 need %s",
                lengths.far(r.left().distanceTo(r.right())),
                r.leftName(),
                r.rightName(),
                lengths.far(r.eightInTenMetres()),
                lengths.far(r.nineteenInTwentyMetres()));
    }

    private void round(RoundPlan plan) {
        boolean points = plan.counting().form() == Counting.Form.STABLEFORD;
        out.println();
        line(
                "Round: expect %.1f%s, spread (SD) %.1f; the chance of %s is %s (playing for the average, over good and"
                        + " bad days).",
                points ? -plan.total().mean() : plan.total().mean(),
                plan.counting().unit(),
                plan.total().standardDeviation(),
                plan.counting().words(plan.target()),
                Chances.percent(plan.targetProbability()));
        line("Not yet calibrated: here no real score was held against this player (\"player check\" does it).");
        line("By habit: expect %.1f strokes%s.", plan.habitExpected(), inAll(plan));
        int middle = (int) Math.round(plan.total().mean());
        StringBuilder scores = new StringBuilder("Scores:");
        for (int s = middle - 6; s <= middle + 6; s += 2) {
            double chance = plan.total().probabilityAtMost(s);
            if (Chances.isOpen(chance)) {
                scores.append("  ")
                        .append(plan.counting().words(points ? -s : s))
                        .append(' ')
                        .append(Chances.percent(chance));
            }
        }
        out.println(scores);
        line(
                "Checked: %d rounds played out gave %.2f +- %.2f strokes%s; choices looked %.2f strokes too good on their own"
                        + " draws; %s.",
                plan.simulated().rounds(),
                plan.simulated().mean(),
                plan.simulated().standardError(),
                inAll(plan),
                plan.bias(),
                plan.searchLossInWords());
        otherDays(plan);
    }

    private static String inAll(RoundPlan plan) {
        return plan.counting().form() == Counting.Form.STROKES ? "" : " in all, however they count";
    }

    private void howSure(RoundPlan plan, HowSure sure) {
        boolean points = plan.counting().form() == Counting.Form.STABLEFORD;
        line(
                "How sure: by what is known of your skill, expect %.1f to %.1f%s, and the chance lies between %s and %s"
                        + " (9 in 10).",
                points ? -sure.expectedHigh() : sure.expectedLow(),
                points ? -sure.expectedLow() : sure.expectedHigh(),
                plan.counting().unit(),
                Chances.percent(sure.targetLow()),
                Chances.percent(sure.targetHigh()));
        if (!sure.assumed().isEmpty()) {
            line(
                    "Not measured, mostly assumed: %s. Advice that hangs on them is only as good.",
                    String.join(", ", sure.assumed()));
        }
        if (sure.assumed().stream().anyMatch(PlanPage::isPartial)) {
            line("Your partial swings have not been measured.");
        }
        sure.beats().stream()
                .filter(b -> b.probability() < TOSS_UP)
                .forEach(b -> line(
                        "Hole %d: %s beats %s with %.0f of 100, by what is known of your skill; no more than a toss-up.",
                        b.hole(), b.club(), b.next(), 100 * b.probability()));
        sure.measureNext()
                .ifPresent(m -> line(
                        "Measure next: %s; what is not known of its spread is worth %.2f strokes a round.",
                        m.swing(), m.strokes()));
    }

    private static boolean isPartial(String swing) {
        return swing.endsWith("three-quarter") || swing.endsWith("half");
    }

    private static String finish(Map<Surface, Double> share) {
        return share.entrySet().stream()
                .filter(e -> e.getValue() >= 0.005)
                .sorted(Map.Entry.<Surface, Double>comparingByValue().reversed())
                .map(e -> word(e.getKey()) + " " + Chances.percent(e.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String word(Surface surface) {
        return surface.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private void line(String format, Object... values) {
        out.println(values.length == 0 ? format : String.format(Locale.ROOT, format, values));
    }
}
