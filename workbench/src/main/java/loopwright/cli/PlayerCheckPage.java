package loopwright.cli;

import java.io.PrintWriter;
import java.util.Locale;
import loopwright.action.Calibration;
import loopwright.action.PlayerCheck;

/** Prints a player beside his real scores. */
final class PlayerCheckPage {
    private final PrintWriter out;

    PlayerCheckPage(PrintWriter out) {
        this.out = out;
    }

    void print(PlayerCheck check) {
        Calibration c = check.calibration();
        line(
                "%s on %s, %s tees, %s, par %d: played by habit, good and bad days included.",
                check.player(), check.course(), check.tees(), holes(check.holes()), check.par());
        check.setAside().forEach(s -> line("Set aside: %s", s));
        if (check.converted() > 0) {
            line(
                    "Brought here from other tees by course rating and slope: %d of %d scores.",
                    check.converted(), check.scores().size());
        }
        out.println();
        if (check.scores().isEmpty()) {
            line("Modelled: mean %.1f, spread %.1f.", c.modelledMean(), c.modelledSd());
        } else {
            table(check, c);
        }
        out.println();
        line("%s.", capital(c.mark()));
        verdict(check, c);
    }

    private void table(PlayerCheck check, Calibration c) {
        line("%-30s %7s  %8s", "", "real", "modelled");
        line("%-30s %7d  %8s", "rounds", c.rounds(), "");
        line("%-30s %7.1f  %8.1f", "mean", c.realMean(), c.modelledMean());
        if (c.rounds() > 1) {
            line("%-30s %7.1f  %8.1f", "spread (standard deviation)", c.realSd(), c.modelledSd());
        }
        if (c.rounds() >= 4) {
            line(
                    "%-30s %7.1f  %8d",
                    "one round in four is at most", check.realQuantile(0.25), check.modelledQuantile(0.25));
            line("%-30s %7.1f  %8d", "one in four is at least", check.realQuantile(0.75), check.modelledQuantile(0.75));
        }
    }

    private void verdict(PlayerCheck check, Calibration c) {
        switch (c.verdict()) {
            case NO_SCORES -> line("Chances are the model's own until real scores are entered.");
            case TOO_FEW -> line("Enter more scores; ten usually tell.");
            case AGREES -> line("Chances of beating a target can be taken as they are printed.");
            case GAP -> {
                line(
                        "Chances of beating a target come out too %s until the gap is found.",
                        c.gap() > 0 ? "high" : "low");
                line(
                        c.gap() > 0
                                ? "Look first at what costs real rounds strokes: mishits and lost balls (fit counted balls), chips and"
                                        + " putts (log them), and habits (a club off the tee he does not really take)."
                                : "Look first at the level he was set up with, and at spreads that are still assumed (fit shows them).");
            }
        }
        String spread = check.spreadInWords();
        if (!spread.isEmpty()) {
            line("%s", spread);
        }
        line("Beside the best play for the average his habits cost %.1f strokes a round.", check.habitCost());
    }

    private static String holes(int count) {
        return count == 1 ? "1 hole" : count + " holes";
    }

    private static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private void line(String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values).stripTrailing());
    }
}
