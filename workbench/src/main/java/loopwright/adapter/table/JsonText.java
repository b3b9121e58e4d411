package loopwright.adapter.table;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import loopwright.action.UserFault;

/** Reads a JSON file whole; what is wrong with it is said with what was expected. */
final class JsonText {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private JsonText() {}

    /** {@code expected} completes "... is expected". */
    static JsonField read(Path file, String expected) {
        if (!Files.isRegularFile(file)) {
            throw new UserFault(file + " does not exist or is not a file; " + expected + " is expected.");
        }
        try {
            JsonNode node = MAPPER.readTree(Files.readAllBytes(file));
            if (node == null || node.isMissingNode()) {
                throw new UserFault(file + " is empty; " + expected + " is expected.");
            }
            return new JsonField(file.toString(), "", node);
        } catch (JsonProcessingException e) {
            var at = e.getLocation();
            throw new UserFault(
                    file + ", line " + at.getLineNr() + ", column " + at.getColumnNr() + " is not JSON ("
                            + e.getOriginalMessage() + "); " + expected + " is expected.",
                    e);
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read (" + e.getMessage() + ").", e);
        }
    }
}
