package loopwright.cli;

import picocli.CommandLine.Command;

/** The verb "practice"; its own verbs are added by {@code boot}. */
@Command(
        name = "practice",
        mixinStandardHelpOptions = true,
        description = "Splits practice time by what raises the chance of the target, measures it with drills and shows"
                + " whether it works.",
        synopsisSubcommandLabel = "VERB")
public final class PracticeCommand {}
