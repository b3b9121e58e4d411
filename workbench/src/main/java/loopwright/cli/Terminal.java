package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.concurrent.ThreadLocalRandom;
import loopwright.action.UserFault;
import loopwright.action.WholeFile;
import picocli.CommandLine;

/** Runs a command line and turns every kind of trouble into one sentence and an exit code. */
public final class Terminal {
    private static final int OUR_FAULT = 1;
    private static final int USER_FAULT = 2;

    private Terminal() {}

    public static int run(CommandLine line, String... args) {
        line.registerConverter(Integer.class, Terminal::wholeNumber);
        line.registerConverter(int.class, Terminal::wholeNumber);
        line.registerConverter(Long.class, Terminal::longNumber);
        line.registerConverter(long.class, Terminal::longNumber);
        line.registerConverter(Double.class, Terminal::number);
        line.registerConverter(double.class, Terminal::number);
        line.registerConverter(LocalDate.class, Terminal::day);
        line.setParameterExceptionHandler((e, a) -> {
            PrintWriter err = e.getCommandLine().getErr();
            err.println(oneLine(String.valueOf(e.getMessage())) + " Try: "
                    + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
            return USER_FAULT;
        });
        line.setExecutionExceptionHandler((e, command, parsed) -> report(e, command));
        line.setExecutionStrategy(Terminal::run);
        try {
            return line.execute(args);
        } catch (OutOfMemoryError e) {
            return noMemory(line);
        }
    }

    private static int noMemory(CommandLine line) {
        line.getErr().println("The memory does not suffice for this; ask for less at once, for example fewer holes.");
        return OUR_FAULT;
    }

    /** Runs what was asked, unless its numbers could not be written where they shall go: told before the long work. */
    private static int run(CommandLine.ParseResult parsed) {
        CommandLine.ParseResult last = parsed;
        while (last.hasSubcommand()) {
            last = last.subcommand();
        }
        if (last.matchedOptionValue("--json", null) instanceof Path json) {
            try {
                WholeFile.checkPlace(json);
            } catch (UserFault e) {
                return report(e, last.commandSpec().commandLine());
            }
        }
        return new CommandLine.RunLast().execute(parsed);
    }

    private static int report(Exception e, CommandLine command) {
        if (e instanceof UserFault) {
            command.getErr().println(oneLine(String.valueOf(e.getMessage())));
            return USER_FAULT;
        }
        for (Throwable cause = e.getCause(); cause != null; cause = cause.getCause()) {
            if (cause instanceof OutOfMemoryError) {
                return noMemory(command);
            }
        }
        String id =
                String.format(Locale.ROOT, "%08x", ThreadLocalRandom.current().nextInt());
        command.getErr()
                .println("Something went wrong inside Loopwright (fault " + id
                        + "); nothing was written. Please report it with this id; details are in "
                        + FaultLog.append(id, e) + ".");
        return OUR_FAULT;
    }

    private static Integer wholeNumber(String text) {
        if (!text.matches("[+-]?\\d{1,9}")) {
            throw new CommandLine.TypeConversionException("\"" + text + "\" is not a whole number.");
        }
        return Integer.valueOf(text);
    }

    private static Long longNumber(String text) {
        if (!text.matches("[+-]?\\d{1,18}")) {
            throw new CommandLine.TypeConversionException("\"" + text + "\" is not a whole number.");
        }
        return Long.valueOf(text);
    }

    private static Double number(String text) {
        try {
            return Double.valueOf(text);
        } catch (NumberFormatException e) {
            throw new CommandLine.TypeConversionException("\"" + text + "\" is not a number written like 12 or 12.5.");
        }
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new CommandLine.TypeConversionException("\"" + text + "\" is not a day written like 2026-05-31.");
        }
    }

    private static String oneLine(String message) {
        return message.replaceAll("\\s*\\R\\s*", " ");
    }
}
