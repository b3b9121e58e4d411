package loopwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Optional;

/** A question on one line and its answer from the keyboard; the end of the input answers nothing. */
final class Asked {
    private final BufferedReader in;
    private final PrintWriter out;

    Asked(BufferedReader in, PrintWriter out) {
        this.in = in;
        this.out = out;
    }

    Optional<String> line(String question) {
        out.print(question);
        out.flush();
        try {
            return Optional.ofNullable(in.readLine()).map(String::strip);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void say(String text) {
        out.println(text);
        out.flush();
    }
}
