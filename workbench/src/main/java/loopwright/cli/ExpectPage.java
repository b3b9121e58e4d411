package loopwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import loopwright.action.Expectation;
import loopwright.action.PlanDay;
import loopwright.action.ReadLengths;

/** Prints what to expect in two columns: usually, and when the target is beaten. */
final class ExpectPage {
    private final PrintWriter out;
    private final ReadLengths lengths;

    ExpectPage(PrintWriter out, ReadLengths lengths) {
        this.out = out;
        this.lengths = lengths;
    }

    void print(Expectation e, PlanDay day) {
        line(
                "%s, %s tees, %d holes, par %d: %,d rounds played out by the plan, on good and bad days.",
                e.course(), e.tees(), e.holes(), e.par(), e.rounds());
        line("Day: %s.", DayWords.of(day));
        new TodayPage(out, lengths).print(e.today());
        line("%d or better in %d of them (%.1f of 100).", e.target(), e.beaten(), 100.0 * e.beaten() / e.rounds());
        out.println();
        line("%-28s %9s  %s", "A round has", "usually", e.atTarget().isPresent() ? "when it beats the target" : "");
        row(e, "strokes", Expectation.Counts::strokes);
        row(e, "birdies or better", Expectation.Counts::birdiesOrBetter);
        row(e, "pars", Expectation.Counts::pars);
        row(e, "bogeys", Expectation.Counts::bogeys);
        row(e, "doubles", Expectation.Counts::doubles);
        row(e, "triples or worse", Expectation.Counts::triplesOrWorse);
        row(e, "fairways, of " + e.drivingHoles(), Expectation.Counts::fairways);
        row(e, "greens, of " + e.holes(), Expectation.Counts::greens);
        row(e, "chances to get up and down", Expectation.Counts::upAndDownTries);
        row(e, "  of 10 of them taken", c -> 10 * c.upAndDownShare());
        row(e, "putts", Expectation.Counts::putts);
        row(e, "three-putts or more", Expectation.Counts::threePutts);
        row(e, "penalty strokes", Expectation.Counts::penalties);
        out.println();
        if (e.atTarget().isEmpty()) {
            line("Too few of these rounds beat the target to say what they have in common.");
        }
        e.typical().ifPresent(m -> line("A typical %d: %s.", e.target(), makeUp(m)));
        putts(e);
        line("These are odds, not a promise; a real round also knows weather, pace of play and company.");
    }

    private void row(Expectation e, String name, ToDoubleFunction<Expectation.Counts> of) {
        String beaten = e.atTarget()
                .map(c -> String.format(Locale.ROOT, "%9.1f", of.applyAsDouble(c)))
                .orElse("");
        line("%-28s %9.1f  %s", name, of.applyAsDouble(e.usual()), beaten);
    }

    private static String makeUp(Expectation.MakeUp m) {
        StringBuilder s = new StringBuilder();
        add(s, m.birdiesOrBetter(), "birdie", "birdies");
        add(s, m.pars(), "par", "pars");
        add(s, m.bogeys(), "bogey", "bogeys");
        add(s, m.doubles(), "double", "doubles");
        add(s, m.triplesOrWorse(), "triple or worse", "triples or worse");
        return s.toString();
    }

    private static void add(StringBuilder s, int count, String one, String more) {
        if (count > 0) {
            s.append(s.length() > 0 ? ", " : "").append(count).append(' ').append(count == 1 ? one : more);
        }
    }

    private void putts(Expectation e) {
        line("Putts on a level green, of 100:");
        for (Expectation.Putt p : e.putts()) {
            line(
                    "  %6s: holed %3.0f, three or more %3.0f",
                    lengths.near(p.metres()), 100 * p.one(), 100 * p.threeOrMore());
        }
    }

    private void line(String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values).stripTrailing());
    }
}
