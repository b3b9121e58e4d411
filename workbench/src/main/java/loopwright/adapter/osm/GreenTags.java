package loopwright.adapter.osm;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.course.GreenSurvey;
import loopwright.geo.Place;

/** The measured slopes of a green as properties of its hole; numbers have nine decimals, as positions do. */
final class GreenTags {
    static final String SPOTS = OwnKeys.PREFIX + "green_spots";
    static final String ARROWS = OwnKeys.PREFIX + "green_arrows";

    private final SurveyTags tags;

    GreenTags(SurveyTags tags) {
        this.tags = tags;
    }

    void write(GreenSurvey green, Map<String, Object> properties) {
        if (!green.spots().isEmpty()) {
            properties.put(
                    SPOTS,
                    green.spots().stream()
                            .map(s -> at(s.place(), s.heightMetres()))
                            .toList());
        }
        if (!green.arrows().isEmpty()) {
            properties.put(
                    ARROWS,
                    green.arrows().stream()
                            .map(a -> at(a.place(), 100 * a.slope(), bearing(a)))
                            .toList());
        }
    }

    /** Degrees from 0 to 360. */
    private static double bearing(GreenSurvey.Arrow arrow) {
        double degrees = Math.toDegrees(arrow.downhillRadians()) % 360;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private List<Double> at(Place place, double... values) {
        List<Double> out = new ArrayList<>(tags.position(place));
        for (double v : values) {
            out.add(CourseWriter.rounded(v));
        }
        return out;
    }

    /** Fails with the reason if a property cannot be understood. */
    GreenSurvey read(MapElement hole) {
        GreenSurvey out = GreenSurvey.NOTHING;
        for (JsonNode item : SurveyTags.list(hole.get(SPOTS))) {
            out = out.withSpot(new GreenSurvey.Spot(tags.place(item, SPOTS), number(item, 2, SPOTS)));
        }
        for (JsonNode item : SurveyTags.list(hole.get(ARROWS))) {
            double slope = number(item, 2, ARROWS) / 100;
            double downhill = Math.toRadians(number(item, 3, ARROWS));
            out = out.withArrow(new GreenSurvey.Arrow(tags.place(item, ARROWS), slope, downhill));
        }
        return out;
    }

    private static double number(JsonNode item, int index, String key) {
        if (!item.path(index).isNumber()) {
            throw new IllegalArgumentException(key + ": item " + item + " lacks a number");
        }
        return item.path(index).asDouble();
    }
}
