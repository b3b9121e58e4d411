package loopwright.cli;

import picocli.CommandLine.Command;

/** The root of the command line; verbs are added by {@code boot}. */
@Command(
        name = "loopwright",
        mixinStandardHelpOptions = true,
        version = "loopwright 0.1.0",
        description = "Prepares a golfer to beat a target score: shot patterns, game plans, odds, review, practice.",
        synopsisSubcommandLabel = "VERB")
public final class Loopwright {}
