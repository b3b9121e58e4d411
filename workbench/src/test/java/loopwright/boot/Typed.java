package loopwright.boot;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import loopwright.cli.Terminal;
import picocli.CommandLine;

/** What a command line said and how it ended, run in this process. */
record Typed(int exitCode, String out, String err) {

    static Typed run(String... args) {
        return answering("", args);
    }

    /** The same with lines typed when asked. */
    static Typed answering(String typed, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = Main.commandLine(new StringReader(typed));
        line.setOut(new PrintWriter(out, true));
        line.setErr(new PrintWriter(err, true));
        return new Typed(Terminal.run(line, args), out.toString(), err.toString());
    }
}
