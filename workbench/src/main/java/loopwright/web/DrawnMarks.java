package loopwright.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.action.HoleScreens.Ground;
import loopwright.action.MendMarks.Changes;
import loopwright.action.MendMarks.Gone;
import loopwright.action.MendMarks.Kind;
import loopwright.action.MendMarks.Mark;
import loopwright.action.UserFault;
import loopwright.course.LocalRule;
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
    private final DrawnNumbers numbers;

    DrawnMarks(Ground ground, Units units) {
        this.ground = ground;
        numbers = new DrawnNumbers(units);
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
                shown.put("numbers", numbers.read(mark.numbers()));
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
                numbers.read(Map.of(
                        "crown",
                        CROWN_METRES,
                        "height",
                        cover.heightMetres(),
                        "gap",
                        cover.gapMetres(),
                        "density",
                        1.0)),
                Kind.SPOT.name(),
                numbers.read(Map.of("level", 0.0)),
                Kind.ARROW.name(),
                numbers.read(Map.of("slope", SLOPE, "toward", 0.0)));
    }

    Changes changes(JsonNode body) {
        List<Mark> set = new ArrayList<>();
        for (JsonNode node : few(body.path("marks"))) {
            set.add(new Mark(
                    text(node, "id"),
                    kind(node),
                    place(node.path("at")),
                    text(node, "name"),
                    numbers.kept(node.path("numbers"))));
        }
        List<Gone> gone = new ArrayList<>();
        few(body.path("gone")).forEach(node -> gone.add(new Gone(kind(node), text(node, "id"))));
        return new Changes(
                set,
                gone,
                body.path("line").isArray() ? Optional.of(places(body.path("line"))) : Optional.empty(),
                body.path("rules").isArray() ? Optional.of(rules(body.path("rules"))) : Optional.empty());
    }

    /** Places of a line. */
    List<Place> places(JsonNode list) {
        List<Place> out = new ArrayList<>();
        few(list).forEach(node -> out.add(place(node)));
        return out;
    }

    private static Set<LocalRule> rules(JsonNode list) {
        Set<LocalRule> out = new HashSet<>();
        for (JsonNode node : few(list)) {
            out.add(Arrays.stream(LocalRule.values())
                    .filter(r -> r.name().equals(node.asText()))
                    .findFirst()
                    .orElseThrow(DrawnMarks::unreadable));
        }
        return out;
    }

    private static JsonNode few(JsonNode list) {
        if (list.size() > MOST) {
            throw unreadable();
        }
        return list;
    }

    static UserFault unreadable() {
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
}
