package loopwright.boot;

import loopwright.cli.Loopwright;
import loopwright.cli.Terminal;
import picocli.CommandLine;

/** Starts Loopwright from the command line. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(Terminal.run(commandLine(), args));
    }

    /** The whole command line, wired. */
    static CommandLine commandLine() {
        return new CommandLine(new Loopwright());
    }
}
