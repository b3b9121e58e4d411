package loopwright.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.action.HoleScreens.Ground;
import loopwright.action.MendMarks.Changes;
import loopwright.action.MendMarks.Gone;
import loopwright.action.MendMarks.Kind;
import loopwright.action.MendMarks.Mark;
import loopwright.action.UserFault;
import loopwright.course.TreeCover;
import loopwright.geo.Place;

/** Marks as the chart shows them, places on the screen and numbers in the reader's units, and back. */
final class DrawnMarks {
    private static final int MOST = 5_000;
    private static final int LONGEST = 80;
    /** A single tree as a map without sizes is read: assumed. */
    private static final double CROWN_METRES = 4;

    private static final double SLOPE = 0.02;

    private final Ground ground;
    private final Units units;

    DrawnMarks(Ground ground, Units units) {
        this.ground = ground;
        this.units = units;
    }

    /** The marks in view. */
    List<Map<String, Object>> shown(List<Mark> marks) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (Mark mark : marks) {
            double[] at = ground.at(mark.at());
            if (at[0] >= 0 && at[1] >= 0 && at[0] <= ground.width() && at[1] <= ground.height()) {
                Map<String, Object> shown = new LinkedHashMap<>();
                shown.put("id", mark.id());
                shown.put("kind", mark.kind().name());
                shown.put("at", at);
                shown.put("name", mark.name());
                shown.put("numbers", read(mark.numbers()));
                out.add(shown);
            }
        }
        return out;
    }

    /** The numbers of a new mark, by kind. */
    Map<String, Map<String, Double>> fresh() {
        TreeCover cover = TreeCover.WOODS_DEFAULT;
        return Map.of(
                Kind.TREE.name(),
                read(Map.of(
                        "crown",
                        CROWN_METRES,
                        "height",
                        cover.heightMetres(),
                        "gap",
                        cover.gapMetres(),
                        "density",
                        1.0)),
                Kind.SPOT.name(),
                read(Map.of("level", 0.0)),
                Kind.ARROW.name(),
                read(Map.of("slope", SLOPE, "toward", 0.0)));
    }

    /** Numbers in the units of {@link #unit}. */
    Map<String, Double> read(Map<String, Double> numbers) {
        Map<String, Double> out = new TreeMap<>();
        numbers.forEach((what, value) -> out.put(
                what,
                switch (what) {
                    case "crown", "height", "gap" -> units.heightNumber(value);
                    case "level" -> units.greenNumber(value);
                    case "slope" -> 100 * value;
                    case "toward" -> (Math.toDegrees(value) + 360) % 360;
                    default -> value;
                }));
        return out;
    }

    private double kept(String what, double value) {
        return switch (what) {
            case "crown", "height", "gap" -> units.heightMetres(value);
            case "level" -> units.greenMetres(value);
            case "slope" -> value / 100;
            case "toward" -> Math.toRadians(value);
            default -> value;
        };
    }

    /** What follows the words for a number; empty where the words say it. */
    String unit(String what) {
        return switch (what) {
            case "crown", "height", "gap" -> ", " + units.heightUnit();
            case "level" -> ", " + units.greenUnit();
            default -> "";
        };
    }

    Changes changes(JsonNode body) {
        List<Mark> set = new ArrayList<>();
        for (JsonNode node : few(body.path("marks"))) {
            set.add(new Mark(text(node, "id"), kind(node), place(node.path("at")), text(node, "name"), numbers(node)));
        }
        List<Gone> gone = new ArrayList<>();
        few(body.path("gone")).forEach(node -> gone.add(new Gone(kind(node), text(node, "id"))));
        List<Place> line = new ArrayList<>();
        few(body.path("line")).forEach(node -> line.add(place(node)));
        return new Changes(set, gone, body.path("line").isArray() ? Optional.of(line) : Optional.empty());
    }

    private static JsonNode few(JsonNode list) {
        if (list.size() > MOST) {
            throw unreadable();
        }
        return list;
    }

    private static UserFault unreadable() {
        return new UserFault(Texts.say("course.badShapes"));
    }

    private static Kind kind(JsonNode node) {
        String wanted = node.path("kind").asText();
        return Arrays.stream(Kind.values())
                .filter(k -> k.name().equals(wanted))
                .findFirst()
                .orElseThrow(DrawnMarks::unreadable);
    }

    private static String text(JsonNode node, String name) {
        String text = node.path(name).asText().strip();
        if (text.length() > LONGEST || !text.matches("[^\\p{Cntrl}]*")) {
            throw unreadable();
        }
        return text;
    }

    private Place place(JsonNode at) {
        double x = at.path(0).asDouble(Double.NaN);
        double y = at.path(1).asDouble(Double.NaN);
        if (!(Math.abs(x) < 1e5 && Math.abs(y) < 1e5)) {
            throw unreadable();
        }
        return ground.placeAt(x, y);
    }

    private Map<String, Double> numbers(JsonNode node) {
        Map<String, Double> out = new TreeMap<>();
        node.path("numbers").properties().forEach(e -> {
            double value = e.getValue().asDouble(Double.NaN);
            if (!Double.isFinite(value)) {
                throw unreadable();
            }
            out.put(e.getKey(), kept(e.getKey(), value));
        });
        return out;
    }
}
