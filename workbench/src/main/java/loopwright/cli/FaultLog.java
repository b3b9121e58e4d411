package loopwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Keeps the details of our own faults in a file under the system's temporary folder, found by the printed id. */
final class FaultLog {
    private FaultLog() {}

    /** Appends the fault and returns where; a full disk must not hide a fault that is being reported. */
    static String append(String id, Throwable fault) {
        StringWriter text = new StringWriter();
        text.write("fault " + id + System.lineSeparator());
        fault.printStackTrace(new PrintWriter(text));
        Path file = Path.of(System.getProperty("java.io.tmpdir"), "loopwright-faults.log");
        try {
            Files.writeString(
                    file,
                    text.toString(),
                    StandardCharsets.UTF_8,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
            return file.toString();
        } catch (IOException e) {
            return "no file (" + e.getMessage() + ")";
        }
    }
}
