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

    /** A bare number that was typed, in metres; the range is stated in yards, and told in the unit. */
    double metres(String option, double typed, String what, double leastYards, double mostYards) {
        double least = Distance.ofYards(leastYards).metres();
        double most = Distance.ofYards(mostYards).metres();
        double metres = typed * unit().inMetres();
        if (!(metres >= least && metres <= most)) {
            throw new UserFault(String.format(
                    Locale.ROOT,
                    "%s %s %s; give %d to %s.",
                    option,
                    UserFault.typed(typed),
                    what,
                    unit().whole(least),
                    unit().of(most)));
        }
        return metres;
    }
}
