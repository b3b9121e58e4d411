package loopwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import loopwright.action.UserFault;

/**
 * Asks, one question a line; an empty line or the end of input takes the default. A person at a terminal is asked again
 * after an answer that cannot be used, so that nothing is lost by a slip; a list of answers that is piped in ends there.
 */
final class Questions {
    private final PrintWriter out;
    private final BufferedReader in;
    private final boolean asksAgain;
    private boolean ended;

    // from Java 22 on there is a console for a pipe as well: its answers are then asked for until it ends
    @SuppressWarnings("SystemConsoleNull")
    Questions(PrintWriter out) {
        this(
                out,
                new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())),
                System.console() != null);
    }

    Questions(PrintWriter out, BufferedReader in, boolean asksAgain) {
        this.out = out;
        this.in = in;
        this.asksAgain = asksAgain;
    }

    /** The answer as it is read by {@code reading}, which refuses what cannot be used. */
    <T> T read(String question, String otherwise, Function<String, T> reading) {
        UserFault refused = null;
        while (true) {
            String answer = text(question, otherwise);
            if (refused != null && ended) {
                throw refused;
            }
            try {
                return reading.apply(answer);
            } catch (UserFault e) {
                if (!asksAgain) {
                    throw e;
                }
                out.println(e.getMessage());
                refused = e;
            }
        }
    }

    String text(String question, String otherwise) {
        out.print(question + (otherwise.isEmpty() ? ": " : " [" + otherwise + "]: "));
        out.flush();
        try {
            String line = in.readLine();
            ended = line == null;
            return line == null || line.isBlank() ? otherwise : line.strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A number that may be left out, from {@code low} to {@code high}. */
    Optional<Double> number(String question, double low, double high) {
        return read(question + " (empty: not known)", "", text -> {
            if (text.isEmpty()) {
                return Optional.empty();
            }
            String accepted = UserFault.typed(low) + " to " + UserFault.typed(high) + " is accepted.";
            try {
                double value = Double.parseDouble(text.replace(',', '.'));
                if (value >= low && value <= high) {
                    return Optional.of(value);
                }
            } catch (NumberFormatException e) {
                throw new UserFault(
                        "\"" + text + "\" is no number; answer \"" + question + "\" with one, " + accepted, e);
            }
            throw new UserFault("\"" + text + "\" is no answer to \"" + question + "\"; " + accepted);
        });
    }

    /** Whole numbers from {@code low} to {@code high}, none or more. */
    List<Integer> wholeNumbers(String question, int low, int high) {
        return read(question, "", text -> {
            List<Integer> numbers = new ArrayList<>();
            for (String part : text.split("[,; ]+", -1)) {
                if (part.isBlank()) {
                    continue;
                }
                if (!part.matches("\\d{1,4}") || Integer.parseInt(part) < low || Integer.parseInt(part) > high) {
                    throw new UserFault("\"" + part + "\" is no whole number from " + low + " to " + high
                            + "; answer \"" + question + "\" with some.");
                }
                numbers.add(Integer.valueOf(part));
            }
            return numbers;
        });
    }
}
