package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import loopwright.course.HoleSurvey;

/** The survey of a hole as one property: the names of what was looked at, split by semicolons as OSM lists are. */
final class SurveyTags {
    private SurveyTags() {}

    static void write(HoleSurvey survey, Map<String, Object> properties) {
        List<String> ticks = new ArrayList<>();
        if (survey.trees()) {
            ticks.add("trees");
        }
        if (survey.outOfBounds()) {
            ticks.add("out_of_bounds");
        }
        if (survey.penaltyAreas()) {
            ticks.add("penalty_areas");
        }
        if (survey.bunkers()) {
            ticks.add("bunkers");
        }
        properties.put(OwnKeys.SURVEYED, String.join(";", ticks));
    }

    static HoleSurvey read(MapElement hole) {
        List<String> ticks = Arrays.stream(hole.get(OwnKeys.SURVEYED).split(";", -1))
                .map(t -> t.strip().toLowerCase(Locale.ROOT))
                .toList();
        return new HoleSurvey(
                ticks.contains("trees"),
                ticks.contains("out_of_bounds"),
                ticks.contains("penalty_areas"),
                ticks.contains("bunkers"));
    }
}
