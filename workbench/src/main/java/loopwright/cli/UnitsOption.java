package loopwright.cli;

import java.util.Locale;
import loopwright.action.LengthUnit;
import loopwright.action.ReadLengths;
import loopwright.action.UserFault;
import loopwright.units.Distance;
import picocli.CommandLine.Option;

/** Option for the unit in which lengths are told, and in which bare numbers that are typed are read. */
final class UnitsOption {
    @Option(
            names = "--units",
            defaultValue = "yards",
            paramLabel = "UNIT",
            description =
                    "yards (and feet on greens) or metres, for what is told and for lengths that are typed as bare"
                            + " numbers. Default: ${DEFAULT-VALUE}.")
    private String name = "yards";

    LengthUnit unit() {
        return LengthUnit.named(name);
    }

    ReadLengths lengths() {
        return ReadLengths.in(unit());
    }

    /** A bare number that was typed, in metres; {@link #least} to {@link #most} are accepted. */
    double metres(String option, double typed, String what, double leastYards, double mostYards) {
        int least = least(leastYards);
        int most = most(mostYards);
        if (!(typed >= least && typed <= most)) {
            throw new UserFault(String.format(
                    Locale.ROOT,
                    "%s %s %s; give %d to %d %s.",
                    option,
                    UserFault.typed(typed),
                    what,
                    least,
                    most,
                    unit().sign()));
        }
        return typed * unit().inMetres();
    }

    /** The least whole number of the unit that is no shorter than this. */
    int least(double yards) {
        return unit().atLeast(Distance.ofYards(yards).metres());
    }

    /** The largest that is no longer. */
    int most(double yards) {
        return unit().atMost(Distance.ofYards(yards).metres());
    }
}
