package loopwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.action.ApproachClubs;
import loopwright.action.PlanDay;
import loopwright.action.PublishedLength;
import loopwright.action.ReadLengths;
import loopwright.action.TeesAnswer;

/** Prints sets of tees side by side. */
final class TeesPage {
    private static final int PUBLISHED_HOLES = 18;

    private final PrintWriter out;
    private final ReadLengths lengths;

    TeesPage(PrintWriter out, ReadLengths lengths) {
        this.out = out;
        this.lengths = lengths;
    }

    void print(TeesAnswer a, PlanDay day) {
        line("%s, %d holes. Target: %s. Day: %s.", a.course(), a.holes(), a.target(), DayWords.of(day));
        new TodayPage(out, lengths).print(a.today());
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
                "%s: average drive %s, mishits included; published for it (USGA and PGA of America, 2011): %d to"
                        + " %s%s.",
                player,
                lengths.far(published.driveMetres()),
                lengths.course().whole(published.shortestMetres()),
                lengths.far(published.longestMetres()),
                holes == PUBLISHED_HOLES ? "" : " for 18 holes");
        boolean solved = sets.stream().anyMatch(r -> r.play().isPresent());
        if (solved) {
            line(
                    "%-34s %6s %7s %7s  %-27s  %-8s %-13s %5s",
                    "",
                    lengths.course().words(),
                    "expect",
                    "target",
                    "into par 4s, of 100 tee shots",
                    "par 4s",
                    "par 5s in",
                    "balls");
            line(
                    "%-34s %6s %7s %7s  %5s%5s%6s%6s%7s  %-8s %-6s %-6s %5s",
                    "tees", "", "", "", "long", "mid", "short", "wedge", "beyond", "in two", "two", "three", "lost");
        } else {
            line("%-34s %6s", "tees", lengths.course().words());
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
        double outside = published.outsideMetres(row.lengthMetres());
        line(
                "Its %s %s.",
                lengths.far(row.lengthMetres()),
                outside < lengths.course().inMetres()
                        ? "lie within the published length"
                        : "are " + lengths.far(outside)
                                + (row.lengthMetres() > published.longestMetres() ? " more" : " less")
                                + " than the published length");
    }

    private void row(TeesAnswer.Row r) {
        String name = r.variant().isEmpty() ? r.name() : "  " + lengths.told(r.variant());
        if (r.play().isEmpty()) {
            line("%-34s %6d", name, lengths.course().whole(r.lengthMetres()));
            return;
        }
        TeesAnswer.Play p = r.play().get();
        ApproachClubs c = p.approaches();
        line(
                "%-34s %6d %7.1f %7s  %5.0f%5.0f%6.0f%6.0f%7.0f  %-8s %-6s %-6s %5.1f",
                name,
                lengths.course().whole(r.lengthMetres()),
                p.expected(),
                Chances.column(p.chance()),
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
                            .map(f -> "hole " + f.hole() + ", " + lengths.far(f.metres()) + " (yours "
                                    + lengths.course().whole(f.longestMetres()) + ")")
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

    private void line(String format, Object... values) {
        out.println((values.length == 0 ? format : String.format(Locale.ROOT, format, values)).stripTrailing());
    }
}
