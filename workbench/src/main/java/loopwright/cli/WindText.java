package loopwright.cli;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.UserFault;
import loopwright.flight.Wind;

/** Reads a wind: "15 mph from 270", "5 m/s from NW gusting 9". */
final class WindText {
    private static final Pattern PATTERN = Pattern.compile(
            "([\\d.]+\\s*(?:mph|m/s|km/h)?)\\s+from\\s+(\\d{1,3}(?:\\.\\d+)?|[nesw]{1,3})(?:\\s*(?:deg|°))?"
                    + "(?:\\s+gusting\\s+([\\d.]+\\s*(?:mph|m/s|km/h)?))?");
    private static final List<String> POINTS =
            List.of("n", "nne", "ne", "ene", "e", "ese", "se", "sse", "s", "ssw", "sw", "wsw", "w", "wnw", "nw", "nnw");
    private static final double MOST_MPH = 60;

    private WindText() {}

    static Wind parse(String option, String text) {
        String trimmed = text.strip().toLowerCase(Locale.ROOT);
        if (trimmed.equals("none") || trimmed.equals("still")) {
            return Wind.NONE;
        }
        Matcher m = PATTERN.matcher(trimmed);
        if (!m.matches()) {
            throw refusal(option, text);
        }
        double speed = speed(option, m.group(1));
        double from = bearing(option, text, m.group(2));
        if (m.group(3) == null) {
            return Wind.steady(speed, from);
        }
        String gust = m.group(3);
        // the unit may be said once
        boolean bare = !gust.matches(".*[a-z]");
        String unit = m.group(1).replaceAll("[\\d.\\s]", "");
        return Wind.gusting(speed, from, speed(option, bare ? gust + " " + unit : gust));
    }

    private static double speed(String option, String text) {
        return Measure.SPEED.parse(option, text, "a wind speed", 0, MOST_MPH, "mph", "15 mph from 270 gusting 22 mph");
    }

    private static double bearing(String option, String text, String word) {
        int point = POINTS.indexOf(word);
        if (point >= 0) {
            return point * Math.PI / 8;
        }
        if (!word.matches("[\\d.]+") || Double.parseDouble(word) > 360) {
            throw refusal(option, text);
        }
        return Math.toRadians(Double.parseDouble(word));
    }

    private static UserFault refusal(String option, String text) {
        return new UserFault(
                option + " \"" + text + "\" is not a wind of 0 to 60 mph from a bearing of 0 to 360 degrees (or N,"
                        + " NE, E ...); write it like \"15 mph from 270\" or \"15 mph from W gusting 22 mph\".");
    }
}
