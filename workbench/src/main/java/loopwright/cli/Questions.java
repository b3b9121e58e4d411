package loopwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;

/** Asks at the terminal, one question a line; an empty line or the end of input takes the default. */
final class Questions {
    private final PrintWriter out;
    private final BufferedReader in = new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));

    Questions(PrintWriter out) {
        this.out = out;
    }

    String text(String question, String otherwise) {
        out.print(question + (otherwise.isEmpty() ? ": " : " [" + otherwise + "]: "));
        out.flush();
        try {
            String line = in.readLine();
            return line == null || line.isBlank() ? otherwise : line.strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Nullable
    Double number(String question) {
        String text = text(question, "");
        if (text.isEmpty()) {
            return null;
        }
        try {
            return Double.valueOf(text.replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new UserFault("\"" + text + "\" is no number; answer \"" + question + "\" with one.", e);
        }
    }

    List<Integer> wholeNumbers(String question) {
        List<Integer> out = new ArrayList<>();
        for (String part : text(question, "").split("[,; ]+", -1)) {
            if (part.isBlank()) {
                continue;
            }
            try {
                out.add(Integer.valueOf(part));
            } catch (NumberFormatException e) {
                throw new UserFault("\"" + part + "\" is no whole number; answer \"" + question + "\" with some.", e);
            }
        }
        return out;
    }
}
