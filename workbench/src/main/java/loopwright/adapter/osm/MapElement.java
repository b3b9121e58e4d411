package loopwright.adapter.osm;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One tagged element of a map file, the same for every format.
 *
 * @param id type and number, "way/440119300"; for features without one "feature/12", counted from 1
 */
record MapElement(String id, Map<String, String> tags, MapShape shape) {
    MapElement {
        tags = java.util.Collections.unmodifiableMap(new TreeMap<>(tags));
    }

    Optional<String> find(String key) {
        return Optional.ofNullable(tags.get(key)).map(String::strip).filter(v -> !v.isEmpty());
    }

    String get(String key) {
        return find(key).orElse("");
    }

    /** True if the key has one of the values, or, without values, any value but "no". */
    boolean has(String key, String... values) {
        String value = get(key).toLowerCase(Locale.ROOT);
        if (values.length == 0) {
            return !value.isEmpty() && !value.equals("no");
        }
        return Arrays.asList(values).contains(value);
    }

    boolean golf(String... values) {
        return has("golf", values);
    }
}
