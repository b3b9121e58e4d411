package loopwright.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Numbers of marks and areas as a person of the bench reads and types them, by what they say. */
record DrawnNumbers(Units units) {
    Map<String, Double> read(Map<String, Double> numbers) {
        Map<String, Double> out = new TreeMap<>();
        numbers.forEach((what, value) -> out.put(
                what,
                switch (what) {
                    case "crown", "height", "gap", "depth", "lip" -> units.heightNumber(value);
                    case "level" -> units.greenNumber(value);
                    case "slope", "lost" -> 100 * value;
                    case "toward" -> (Math.toDegrees(value) + 360) % 360;
                    default -> value;
                }));
        return out;
    }

    /** The way back of {@link #read}. */
    Map<String, Double> kept(JsonNode numbers) {
        Map<String, Double> out = new TreeMap<>();
        numbers.properties().forEach(e -> {
            double value = e.getValue().asDouble(Double.NaN);
            if (!Double.isFinite(value)) {
                throw DrawnMarks.unreadable();
            }
            out.put(e.getKey(), kept(e.getKey(), value));
        });
        return out;
    }

    private double kept(String what, double value) {
        return switch (what) {
            case "crown", "height", "gap", "depth", "lip" -> units.heightMetres(value);
            case "level" -> units.greenMetres(value);
            case "slope", "lost" -> value / 100;
            case "toward" -> Math.toRadians(value);
            default -> value;
        };
    }

    /** Known numbers in words, as SI has them: "Height, m: 12.0; Density: 1.0". */
    String said(Map<String, Double> known) {
        return read(known).entrySet().stream()
                .map(e -> words(e.getKey()) + ": " + String.format(Locale.ROOT, "%.1f", e.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** The words for a number, with its unit. */
    String words(String what) {
        String words = Texts.say("mark." + what);
        return switch (what) {
            case "crown", "height", "gap", "depth", "lip" -> words + ", " + units.heightUnit();
            case "level" -> words + ", " + units.greenUnit();
            default -> words;
        };
    }
}
