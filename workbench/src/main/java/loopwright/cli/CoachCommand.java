package loopwright.cli;

import picocli.CommandLine.Command;

/** {@code loopwright coach}: who may log in to a bench that is open to others. */
@Command(
        name = "coach",
        mixinStandardHelpOptions = true,
        description = "Accounts for a bench that others reach: add, list, password, remove.")
public final class CoachCommand {}
