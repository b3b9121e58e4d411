package loopwright.adapter.osm;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import loopwright.action.UserFault;

/** Goes through the objects of one array of a JSON file, one at a time, so that a large file is never held whole. */
final class JsonObjects {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private JsonObjects() {}

    /** Calls {@code each} for every object in the named array of the outermost object. */
    static void forEach(Path file, String array, Consumer<JsonNode> each) {
        JsonFactory factory = MAPPER.getFactory();
        try (JsonParser json = factory.createParser(file.toFile())) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                throw new UserFault(file + " is not a JSON object; export the course as GeoJSON or Overpass JSON.");
            }
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                boolean wanted = json.currentName().equals(array);
                JsonToken value = json.nextToken();
                if (wanted && value == JsonToken.START_ARRAY) {
                    readArray(json, each);
                } else {
                    json.skipChildren();
                }
            }
            if (json.currentToken() != JsonToken.END_OBJECT) {
                throw new JsonParseException(json, "unexpected end");
            }
        } catch (JsonProcessingException e) {
            throw new UserFault(
                    file + ", line "
                            + (e.getLocation() == null ? 1 : e.getLocation().getLineNr())
                            + ": the JSON breaks off or is malformed there; export or download the file again.",
                    e);
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read: " + e.getMessage() + ".", e);
        }
    }

    private static void readArray(JsonParser json, Consumer<JsonNode> each) throws IOException {
        while (json.nextToken() != JsonToken.END_ARRAY) {
            if (json.currentToken() == JsonToken.START_OBJECT) {
                each.accept(MAPPER.readTree(json));
            } else if (json.currentToken() == null) {
                throw new JsonParseException(json, "unexpected end");
            } else {
                json.skipChildren();
            }
        }
    }
}
