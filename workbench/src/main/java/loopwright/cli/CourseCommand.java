package loopwright.cli;

import picocli.CommandLine.Command;

/** The verb "course"; its own verbs are added by {@code boot}. */
@Command(
        name = "course",
        mixinStandardHelpOptions = true,
        description = "Reads courses from map files.",
        synopsisSubcommandLabel = "VERB")
public final class CourseCommand {}
