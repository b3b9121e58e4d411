package loopwright.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;

/** What a script of a page reads, as JSON. */
final class JsonText {
    private static final ObjectMapper JSON = new ObjectMapper();

    private JsonText() {}

    static String of(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
