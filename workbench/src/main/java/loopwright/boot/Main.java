package loopwright.boot;

import loopwright.action.HandicapSums;
import loopwright.action.ResultFile;
import loopwright.adapter.table.JsonResultFile;
import loopwright.cli.HandicapVerb;
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
        ResultFile results = new JsonResultFile();
        CommandLine line = new CommandLine(new Loopwright());
        line.addSubcommand(new HandicapVerb(new HandicapSums(), results));
        return line;
    }
}
