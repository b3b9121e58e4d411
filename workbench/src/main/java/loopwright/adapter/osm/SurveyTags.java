package loopwright.adapter.osm;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loopwright.course.AreaSurvey;
import loopwright.course.HoleNotes;
import loopwright.course.HoleSurvey;
import loopwright.course.LocalRule;
import loopwright.course.SkylineTarget;
import loopwright.course.TreeCover;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;

/** The survey as properties of holes and areas; lists of words are split by semicolons, as OSM lists are. */
final class SurveyTags {
    static final String SURVEYED = OwnKeys.PREFIX + "surveyed";
    static final String LOCAL_RULES = OwnKeys.PREFIX + "local_rules";
    static final String SKYLINE = OwnKeys.PREFIX + "skyline";
    static final String DROP_ZONES = OwnKeys.PREFIX + "drop_zones";
    static final String TEMPORARY_GREEN = OwnKeys.PREFIX + "temporary_green";
    static final String DEPTH = OwnKeys.PREFIX + "depth_m";
    static final String LIP = OwnKeys.PREFIX + "lip_m";
    static final String TREE_HEIGHT = OwnKeys.PREFIX + "tree_height_m";
    static final String BRANCH_GAP = OwnKeys.PREFIX + "branch_gap_m";
    static final String TREE_DENSITY = OwnKeys.PREFIX + "tree_density";

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final LocalFrame frame;

    SurveyTags(LocalFrame frame) {
        this.frame = frame;
    }

    void write(HoleSurvey survey, Map<String, Object> properties) {
        List<String> ticks = new ArrayList<>();
        addIf(survey.trees(), "trees", ticks);
        addIf(survey.outOfBounds(), "out_of_bounds", ticks);
        addIf(survey.penaltyAreas(), "penalty_areas", ticks);
        addIf(survey.bunkers(), "bunkers", ticks);
        properties.put(SURVEYED, String.join(";", ticks));
        HoleNotes notes = survey.notes();
        if (!notes.localRules().isEmpty()) {
            properties.put(
                    LOCAL_RULES,
                    notes.localRules().stream()
                            .map(r -> r.name().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(";")));
        }
        if (!notes.skylineTargets().isEmpty()) {
            properties.put(
                    SKYLINE,
                    notes.skylineTargets().stream()
                            .map(t -> {
                                List<Object> item = new ArrayList<>(position(t.place()));
                                item.add(t.name());
                                return item;
                            })
                            .toList());
        }
        if (!notes.dropZones().isEmpty()) {
            properties.put(
                    DROP_ZONES, notes.dropZones().stream().map(this::position).toList());
        }
        new GreenTags(this).write(notes.green(), properties);
        notes.temporaryGreen().ifPresent(p -> properties.put(TEMPORARY_GREEN, position(p)));
    }

    private static void addIf(boolean tick, String word, List<String> ticks) {
        if (tick) {
            ticks.add(word);
        }
    }

    List<Double> position(Place place) {
        LatLon at = frame.toLatLon(place);
        return List.of(CourseWriter.rounded(at.longitudeDegrees()), CourseWriter.rounded(at.latitudeDegrees()));
    }

    static void write(AreaSurvey survey, Map<String, Object> properties) {
        survey.depthMetres().ifPresent(v -> properties.put(DEPTH, v));
        survey.lipMetres().ifPresent(v -> properties.put(LIP, v));
        survey.trees().ifPresent(t -> {
            properties.put(TREE_HEIGHT, t.heightMetres());
            properties.put(BRANCH_GAP, t.gapMetres());
            properties.put(TREE_DENSITY, t.density());
        });
    }

    /** Fails with the reason if a property cannot be understood. */
    HoleSurvey read(MapElement hole) {
        List<String> ticks = words(hole.get(SURVEYED));
        return new HoleSurvey(
                ticks.contains("trees"),
                ticks.contains("out_of_bounds"),
                ticks.contains("penalty_areas"),
                ticks.contains("bunkers"),
                notes(hole));
    }

    private HoleNotes notes(MapElement hole) {
        Set<LocalRule> rules = new TreeSet<>();
        for (String word : words(hole.get(LOCAL_RULES))) {
            rules.add(Arrays.stream(LocalRule.values())
                    .filter(r -> r.name().equalsIgnoreCase(word))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(LOCAL_RULES + ": \"" + word + "\" is not one of "
                            + Arrays.toString(LocalRule.values()).toLowerCase(Locale.ROOT))));
        }
        List<SkylineTarget> skyline = new ArrayList<>();
        for (JsonNode item : list(hole.get(SKYLINE))) {
            skyline.add(new SkylineTarget(item.path(2).asText(), place(item, SKYLINE)));
        }
        List<Place> zones = new ArrayList<>();
        for (JsonNode item : list(hole.get(DROP_ZONES))) {
            zones.add(place(item, DROP_ZONES));
        }
        Optional<Place> temporary = hole.find(TEMPORARY_GREEN).map(at -> place(list(at), TEMPORARY_GREEN));
        return new HoleNotes(skyline, rules, zones, temporary, new GreenTags(this).read(hole));
    }

    AreaSurvey readArea(MapElement area) {
        Optional<TreeCover> trees = area.find(TREE_HEIGHT).isEmpty()
                ? Optional.empty()
                : Optional.of(new TreeCover(
                        number(area, TREE_HEIGHT).orElseThrow(),
                        number(area, BRANCH_GAP).orElse(0),
                        number(area, TREE_DENSITY).orElse(1)));
        return new AreaSurvey(number(area, DEPTH), number(area, LIP), trees);
    }

    private static OptionalDouble number(MapElement e, String key) {
        String text = e.get(key);
        try {
            return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException x) {
            throw new IllegalArgumentException(key + ": \"" + text + "\" is not a number", x);
        }
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.split(";", -1))
                .map(t -> t.strip().toLowerCase(Locale.ROOT))
                .filter(t -> !t.isEmpty())
                .toList();
    }

    static JsonNode list(String json) {
        try {
            return MAPPER.readTree(json.isEmpty() ? "[]" : json);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("\"" + json + "\" is not a list", e);
        }
    }

    Place place(JsonNode item, String key) {
        if (!item.path(0).isNumber() || !item.path(1).isNumber()) {
            throw new IllegalArgumentException(key + ": a position must be [longitude, latitude]");
        }
        return frame.toPlace(new LatLon(item.path(1).asDouble(), item.path(0).asDouble()));
    }
}
