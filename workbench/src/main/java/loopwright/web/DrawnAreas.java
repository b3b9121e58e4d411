package loopwright.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.HoleScreens.Ground;
import loopwright.action.MendCourse.Changes;
import loopwright.action.MendCourse.Drawn;
import loopwright.action.UserFault;
import loopwright.course.AreaKind;
import loopwright.geo.Place;

/** Reads what was drawn on the chart of a hole back into places. */
final class DrawnAreas {
    private static final int MOST_CORNERS = 20_000;

    /** Id and kind under which the chart shows the border. */
    static final String BORDER = "boundary";

    static final String BORDER_KIND = "BOUNDARY";

    private final Ground screen;
    private final DrawnNumbers numbers;
    private int corners;

    DrawnAreas(Ground screen, Units units) {
        this.screen = screen;
        numbers = new DrawnNumbers(units);
    }

    Changes changes(JsonNode body) {
        List<String> removed = new ArrayList<>();
        body.path("removed").forEach(n -> removed.add(n.asText()));
        removed.remove(BORDER);
        return new Changes(drawn(body.path("drawn")), removed, drawn(body.path("cuts")));
    }

    /** The border as it was drawn, nothing left of it if it was removed; empty if it is as it was. */
    Optional<List<List<List<Place>>>> border(JsonNode body) {
        for (JsonNode node : body.path("drawn")) {
            if (isBorder(node)) {
                return Optional.of(polygons(node));
            }
        }
        for (JsonNode id : body.path("removed")) {
            if (id.asText().equals(BORDER)) {
                return Optional.of(List.of());
            }
        }
        return Optional.empty();
    }

    private static boolean isBorder(JsonNode node) {
        return node.path("id").asText().equals(BORDER);
    }

    private List<Drawn> drawn(JsonNode list) {
        List<Drawn> out = new ArrayList<>();
        for (JsonNode node : list) {
            if (!isBorder(node)) {
                out.add(new Drawn(id(node), kind(node), polygons(node), numbers(node.path("numbers"))));
            }
        }
        return out;
    }

    private List<List<List<Place>>> polygons(JsonNode node) {
        List<List<List<Place>>> polygons = new ArrayList<>();
        for (JsonNode polygon : node.path("polygons")) {
            List<List<Place>> rings = new ArrayList<>();
            polygon.forEach(ring -> rings.add(ring(ring)));
            polygons.add(rings);
        }
        if (polygons.isEmpty()) {
            throw new UserFault(Texts.say("course.badShapes"));
        }
        return polygons;
    }

    private Optional<Map<String, Double>> numbers(JsonNode node) {
        return node.isObject() ? Optional.of(numbers.kept(node)) : Optional.empty();
    }

    private static String id(JsonNode node) {
        String id = node.path("id").asText();
        if (!id.matches("[\\w./:@ -]{1,80}")) {
            throw new UserFault(Texts.say("course.badShapes"));
        }
        return id;
    }

    private static AreaKind kind(JsonNode node) {
        String wanted = node.path("kind").asText();
        return Arrays.stream(AreaKind.values())
                .filter(k -> k.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new UserFault(Texts.say("course.badShapes")));
    }

    private List<Place> ring(JsonNode ring) {
        List<Place> out = new ArrayList<>();
        for (JsonNode corner : ring) {
            double x = corner.path(0).asDouble(Double.NaN);
            double y = corner.path(1).asDouble(Double.NaN);
            if (!(Math.abs(x) < 1e5 && Math.abs(y) < 1e5) || ++corners > MOST_CORNERS) {
                throw new UserFault(Texts.say("course.badShapes"));
            }
            out.add(screen.placeAt(x, y));
        }
        return out;
    }
}
