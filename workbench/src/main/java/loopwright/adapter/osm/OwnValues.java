package loopwright.adapter.osm;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;

/** Lists in our own properties, which are kept as their JSON text; what is no list gives an empty one. */
final class OwnValues {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private OwnValues() {}

    static List<String> texts(String json) {
        List<String> out = new ArrayList<>();
        parse(json).forEach(v -> out.add(v.asText()));
        return out;
    }

    static double[] numbers(String json) {
        JsonNode list = parse(json);
        double[] out = new double[list.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = list.path(i).isNumber() ? list.path(i).asDouble() : Double.NaN;
        }
        return out;
    }

    private static JsonNode parse(String json) {
        try {
            return MAPPER.readTree("[" + json + "]").path(0);
        } catch (JsonProcessingException e) {
            return MAPPER.createArrayNode();
        }
    }
}
