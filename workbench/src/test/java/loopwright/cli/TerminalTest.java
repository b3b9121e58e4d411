package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class TerminalTest {
    /** A verb that ends as it is told to. */
    @CommandLine.Command(name = "ends")
    private static final class Ends implements Runnable {
        private final Runnable how;

        Ends(Runnable how) {
            this.how = how;
        }

        @Override
        public void run() {
            how.run();
        }
    }

    private static String said(Runnable how) {
        StringWriter err = new StringWriter();
        CommandLine line = new CommandLine(new Ends(how));
        line.setErr(new PrintWriter(err, true));
        assertThat(Terminal.run(line)).isEqualTo(1);
        return err.toString().strip();
    }

    @Test
    void tooLittleMemoryIsOneSentenceWhereverItIsMet() {
        String here = said(() -> {
            throw new OutOfMemoryError("Java heap space");
        });
        String inAnotherThread = said(() -> {
            throw new CompletionException(new OutOfMemoryError("Java heap space"));
        });
        assertThat(here)
                .isEqualTo("The memory does not suffice for this; ask for less at once, for example fewer holes.");
        assertThat(inAnotherThread).isEqualTo(here);
    }
}
