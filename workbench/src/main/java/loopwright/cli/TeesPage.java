package loopwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.action.ApproachClubs;
import loopwright.action.PlanDay;
import loopwright.action.PublishedLength;
import loopwright.action.TeesAnswer;
import loopwright.units.Distance;

/** Prints sets of tees side by side. */
final class TeesPage {
    private static final int PUBLISHED_HOLES = 18;

    private final PrintWriter out;

    TeesPage(PrintWriter out) {
        this.out = out;
    }

    void print(TeesAnswer a, PlanDay day) {
        line("%s, %d holes. Target: %s. Day: %s.", a.course(), a.holes(), a.target(), DayWords.of(day));
        new TodayPage(out).print(a.today());
        side(a.player(), a.holes(), a.published(), a.sets(), a.choice());
        a.partner().ifPresent(p -> partner(a, p));
        if (a.sets().stream().anyMatch(r -> r.play().isPresent())) {
            line("Solved coarsely, to compare: a plan of one set is finer (docs/validation.md#answers-round-a-plan).");
        }
        line("The committee sets the course up; a score for a handicap needs rated tees.");
    }

    private void side(
            String player, int holes, PublishedLength published, List<TeesAnswer.Row> sets, TeesAnswer.Choice choice) {
        out.println();
        line(
                "%s: average drive %.0f yd, mishits included; published for it (USGA and PGA of America, 2011): %.0f to"
                        + " %.0f yd%s.",
                player,
                yards(published.driveMetres()),
                yards(published.shortestMetres()),
                yards(published.longestMetres()),
                holes == PUBLISHED_HOLES ? "" : " for 18 holes");
        boolean solved = sets.stream().anyMatch(r -> r.play().isPresent());
        if (solved) {
            line(
                    "%-34s %6s %7s %7s  %-27s  %-8s %-13s %5s",
                    "", "yards", "expect", "target", "into par 4s, of 100 tee shots", "par 4s", "par 5s in", "balls");
            line(
                    "%-34s %6s %7s %7s  %5s%5s%6s%6s%7s  %-8s %-6s %-6s %5s",
                    "tees", "", "", "", "long", "mid", "short", "wedge", "beyond", "in two", "two", "three", "lost");
        } else {
            line("%-34s %6s", "tees", "yards");
        }
        sets.forEach(this::row);
        line("Recommended: %s (%s).", choice.set(), choice.reason());
        sets.stream()
                .filter(r -> r.name().equals(choice.set()) && r.isCandidate())
                .findFirst()
                .ifPresent(r -> beside(r, holes, published));
    }

    private void beside(TeesAnswer.Row row, int holes, PublishedLength published) {
        if (holes != PUBLISHED_HOLES) {
            return;
        }
        double outside = yards(published.outsideMetres(row.lengthMetres()));
        line(
                "Its %.0f yd %s.",
                yards(row.lengthMetres()),
                outside < 1
                        ? "lie within the published length"
                        : String.format(
                                Locale.ROOT,
                                "are %.0f yd %s than the published length",
                                outside,
                                row.lengthMetres() > published.longestMetres() ? "more" : "less"));
    }

    private void row(TeesAnswer.Row r) {
        String name = r.variant().isEmpty() ? r.name() : "  " + r.variant();
        if (r.play().isEmpty()) {
            line("%-34s %6.0f", name, yards(r.lengthMetres()));
            return;
        }
        TeesAnswer.Play p = r.play().get();
        ApproachClubs c = p.approaches();
        line(
                "%-34s %6.0f %7.1f %6.1f%%  %5.0f%5.0f%6.0f%6.0f%7.0f  %-8s %-6s %-6s %5.1f",
                name,
                yards(r.lengthMetres()),
                p.expected(),
                100 * p.chance(),
                100 * c.longClub(),
                100 * c.middleIron(),
                100 * c.shortIron(),
                100 * c.wedge(),
                100 * c.outOfReach(),
                p.parFoursInTwo() + " of " + p.parFours(),
                p.parFivesInTwo() + " of " + p.parFives(),
                p.parFivesInThree() + " of " + p.parFives(),
                p.ballsLost());
        if (!p.carriesBeyond().isEmpty()) {
            line(
                    "    too long to carry: %s",
                    p.carriesBeyond().stream()
                            .map(f -> String.format(
                                    Locale.ROOT,
                                    "hole %d, %.0f yd (yours %.0f)",
                                    f.hole(),
                                    yards(f.metres()),
                                    yards(f.longestMetres())))
                            .collect(Collectors.joining("; ")));
        }
    }

    private void partner(TeesAnswer a, TeesAnswer.Partner p) {
        side(p.player(), a.holes(), p.published(), p.sets(), p.choice());
        out.println();
        boolean solved = p.sets().stream().anyMatch(r -> r.play().isPresent());
        line(
                "Together: %s from %s and %s from %s%s.",
                a.player(),
                p.pairOwn(),
                p.player(),
                p.pairOther(),
                solved
                        ? String.format(
                                Locale.ROOT,
                                "; %.0f of 100 approaches into par 4s then differ in kind of club",
                                100 * p.difference())
                        : "; by length over driving distance");
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }

    private void line(String format, Object... values) {
        out.println((values.length == 0 ? format : String.format(Locale.ROOT, format, values)).stripTrailing());
    }
}
