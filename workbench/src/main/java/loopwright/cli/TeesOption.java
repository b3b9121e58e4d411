package loopwright.cli;

import picocli.CommandLine.Option;

/** Option that says from which tees. */
final class TeesOption {
    @Option(
            names = "--tees",
            defaultValue = "middle",
            paramLabel = "NAME",
            description = "Set of tees: its name, or back, middle, forward. Default: ${DEFAULT-VALUE}.")
    String name = "middle";
}
