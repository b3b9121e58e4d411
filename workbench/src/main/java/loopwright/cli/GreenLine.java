package loopwright.cli;

import java.util.Arrays;
import java.util.List;
import loopwright.action.HoleLocations;
import loopwright.action.SurveyCourse;
import loopwright.action.UserFault;
import loopwright.course.Course;
import loopwright.course.GreenSurvey;
import loopwright.course.Hole;
import loopwright.course.HoleNotes;
import loopwright.geo.Place;
import loopwright.units.Distance;

/** The lines of a survey that measure a green; heights in them are feet, slopes per cent, directions degrees. */
final class GreenLine {
    static final List<String> HELP = List.of(
            "7 spot 12,5 0.4         12 paces from the front and 5 from the left edge green 7 is 0.4 ft high (any level)",
            "7 arrow 12,5 2.5 140    there it falls by 2.5 % toward 140 degrees (place also as LAT LON)",
            "7 nine 2/180 ...        a sheet of nine spots: front row first, left to right, each per cent / degrees clockwise"
                    + " from the way to the back",
            "7 slopes none           forgets what was measured of green 7");

    private GreenLine() {}

    /** The course after a line about the slopes of a green. */
    static Course apply(Course course, int number, String what, String value) {
        Hole hole = SurveyCourse.getHole(course, number);
        String[] words = value.strip().replaceAll("(left|right)\\s+", "$1").split("\\s+", -1);
        return switch (what) {
            case "spot" -> {
                Spotted at = spotted(course, hole, words, 1);
                double feet = at.numbers.get(0);
                yield measured(
                        course,
                        number,
                        g -> g.withSpot(new GreenSurvey.Spot(
                                at.place, Distance.ofFeet(feet).metres())));
            }
            case "arrow" -> {
                Spotted at = spotted(course, hole, words, 2);
                double downhill = Math.toRadians(at.numbers.get(1));
                yield measured(
                        course,
                        number,
                        g -> g.withArrow(new GreenSurvey.Arrow(at.place, at.numbers.get(0) / 100, downhill)));
            }
            case "nine" -> nine(course, hole, words);
            default -> forget(course, number, value);
        };
    }

    private static Course measured(Course course, int hole, java.util.function.UnaryOperator<GreenSurvey> change) {
        try {
            return SurveyCourse.withNotes(course, hole, (HoleNotes n) -> n.withGreen(change.apply(n.green())));
        } catch (IllegalArgumentException e) {
            throw new UserFault("That cannot be: " + e.getMessage() + ".", e);
        }
    }

    private static Course forget(Course course, int hole, String value) {
        if (!value.strip().equalsIgnoreCase("none")) {
            throw new UserFault("\"" + hole + " slopes none\" forgets what was measured of a green; \"" + value.strip()
                    + "\" means nothing here.");
        }
        return measured(course, hole, g -> GreenSurvey.NOTHING);
    }

    private static Course nine(Course course, Hole hole, String[] words) {
        double[] slopes = new double[9];
        double[] turns = new double[9];
        if (words.length != 9) {
            throw new UserFault("A sheet of nine spots needs nine pairs SLOPE/DIRECTION, not " + words.length + ".");
        }
        for (int i = 0; i < 9; i++) {
            String[] pair = words[i].split("/", -1);
            slopes[i] = Double.parseDouble(pair[0]) / 100;
            turns[i] = Math.toRadians(Double.parseDouble(pair[1]));
        }
        return measured(course, hole.number(), g -> g.withNineSpots(hole, slopes, turns));
    }

    /** A place on a green and the numbers after it. */
    private record Spotted(Place place, List<Double> numbers) {}

    private static Spotted spotted(Course course, Hole hole, String[] words, int count) {
        boolean paces = words[0].contains(",");
        int first = paces ? 1 : 2;
        if (words.length != first + count) {
            throw new UserFault("\"" + String.join(" ", words) + "\" should be a place (paces 12,5 or latitude and"
                    + " longitude) and then "
                    + (count == 1 ? "a height in feet." : "a slope in per cent and a direction."));
        }
        List<Double> numbers =
                Arrays.stream(words, first, words.length).map(Double::valueOf).toList();
        return new Spotted(
                paces ? HoleLocations.find(hole, words[0]) : SurveyLine.place(course, words[0] + " " + words[1]),
                numbers);
    }
}
