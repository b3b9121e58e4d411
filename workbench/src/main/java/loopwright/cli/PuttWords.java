package loopwright.cli;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.UserFault;
import loopwright.putting.GreenRoll;
import loopwright.putting.GreenSpeed;
import loopwright.putting.PlaneGreen;
import loopwright.units.Distance;

/** Reads a putt as a golfer says it: "12 ft", "10", "2% falling left and 1% uphill". */
final class PuttWords {
    private static final Pattern LENGTH = Pattern.compile("(\\d{1,5}(?:[.,]\\d{1,4})?)\\s*([a-z'\"]*)");
    private static final Map<String, Double> METRES = Map.ofEntries(
            Map.entry("ft", Distance.METRES_PER_FOOT),
            Map.entry("feet", Distance.METRES_PER_FOOT),
            Map.entry("foot", Distance.METRES_PER_FOOT),
            Map.entry("'", Distance.METRES_PER_FOOT),
            Map.entry("in", 0.0254),
            Map.entry("inches", 0.0254),
            Map.entry("\"", 0.0254),
            Map.entry("yd", Distance.METRES_PER_YARD),
            Map.entry("yards", Distance.METRES_PER_YARD),
            Map.entry("paces", Distance.METRES_PER_YARD),
            Map.entry("m", 1.0),
            Map.entry("metres", 1.0),
            Map.entry("meters", 1.0),
            Map.entry("cm", 0.01));
    private static final double SHORTEST_FEET = 0.5;
    private static final double LONGEST_FEET = 120;
    private static final double SLOWEST_FEET = 4;
    private static final double FASTEST_FEET = 16;

    private static final Pattern PART = Pattern.compile(
            "(?:(\\d{1,3}(?:[.,]\\d{1,3})?)\\s*(?:%|percent|per cent)\\s*)?(?:falling|falls|fall|sloping|slope)?\\s*"
                    + "(?:to the |to )?([a-z ]+)");
    private static final Map<String, double[]> FALLS = Map.ofEntries(
            Map.entry("left", new double[] {-1, 0}),
            Map.entry("right", new double[] {1, 0}),
            Map.entry("away", new double[] {0, 1}),
            Map.entry("downhill", new double[] {0, 1}),
            Map.entry("down", new double[] {0, 1}),
            Map.entry("towards", new double[] {0, -1}),
            Map.entry("toward", new double[] {0, -1}),
            Map.entry("towards me", new double[] {0, -1}),
            Map.entry("uphill", new double[] {0, -1}),
            Map.entry("up", new double[] {0, -1}));

    private PuttWords() {}

    static double distanceMetres(String text) {
        Matcher m = LENGTH.matcher(text.strip().toLowerCase(Locale.ROOT));
        Double unit = m.matches() ? METRES.get(m.group(2)) : null;
        if (unit == null) {
            throw new UserFault(
                    "--distance \"" + text + "\" is no length of a putt; 0.5 to 120 ft are accepted, written"
                            + " with the unit: \"12 ft\", \"3.5 m\", \"40 in\" or \"4 yd\".");
        }
        double metres = decimal(m.group(1)) * unit;
        double feet = Distance.ofMetres(metres).feet();
        if (!(feet >= SHORTEST_FEET - 1e-9 && feet <= LONGEST_FEET + 1e-9)) {
            throw new UserFault("--distance \"" + text + "\" is no putt; 0.5 to 120 ft are accepted.");
        }
        return metres;
    }

    static GreenSpeed greenSpeed(String text) {
        Matcher m = LENGTH.matcher(text.strip().toLowerCase(Locale.ROOT));
        boolean number = m.matches() && (m.group(2).isEmpty() || m.group(2).matches("ft|feet|'"));
        double feet = number ? decimal(m.group(1)) : Double.NaN;
        if (!(feet >= SLOWEST_FEET && feet <= FASTEST_FEET)) {
            throw new UserFault("--green-speed \"" + text
                    + "\" is no green speed; it is the roll from a Stimpmeter in feet, 4 (slow) to 16 (fast).");
        }
        return GreenSpeed.ofRollMetres(Distance.ofFeet(feet).metres());
    }

    /** The plane of a putt played north, from how it falls as seen along the putt. */
    static PlaneGreen slope(String text, GreenSpeed speed) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        if (plain.matches("level|flat|0\\s*%?|none")) {
            return PlaneGreen.LEVEL;
        }
        double right = 0;
        double away = 0;
        double size = Double.NaN;
        double[] sum = new double[2];
        for (String part : plain.split("\\s*(?:,|\\band\\b)\\s*", -1)) {
            Matcher m = PART.matcher(part.strip());
            double[] fall = m.matches() ? FALLS.get(m.group(2).strip()) : null;
            boolean sized = m.matches() && m.group(1) != null;
            if (fall == null || (!sized && Double.isNaN(size))) {
                throw notUnderstood(text);
            }
            if (sized) {
                double[] done = scaled(text, size, sum);
                right += done[0];
                away += done[1];
                size = decimal(Optional.ofNullable(m.group(1)).orElse("0")) / 100;
                sum = new double[2];
            }
            sum[0] += fall[0];
            sum[1] += fall[1];
        }
        double[] done = scaled(text, size, sum);
        return plane(text, right + done[0], away + done[1], speed);
    }

    private static double[] scaled(String text, double size, double[] sum) {
        if (Double.isNaN(size)) {
            return new double[2];
        }
        double length = Math.hypot(sum[0], sum[1]);
        if (length == 0) {
            throw new UserFault("--slope \"" + text
                    + "\" falls two opposite ways at once; say one of left or right, and one of uphill or downhill.");
        }
        return new double[] {size * sum[0] / length, size * sum[1] / length};
    }

    private static PlaneGreen plane(String text, double fallsRight, double fallsAway, GreenSpeed speed) {
        double held = GreenRoll.steepestPlayable(speed);
        if (Math.hypot(fallsRight, fallsAway) > held) {
            throw new UserFault(String.format(
                    Locale.ROOT,
                    "--slope \"%s\" is too steep: at a green speed of %.1f ft a ball comes to rest on slopes up to %.1f %%;"
                            + " 0 to %.1f %% are accepted.",
                    text,
                    Distance.ofMetres(speed.rollMetres()).feet(),
                    100 * GreenRoll.steepestHeld(speed),
                    Math.floor(1000 * held) / 10));
        }
        return new PlaneGreen(-fallsRight, -fallsAway);
    }

    private static UserFault notUnderstood(String text) {
        return new UserFault("--slope \"" + text
                + "\" is not understood; write per cent and which way the green falls as you look at the hole:"
                + " \"2% falling left\" (or right, away, towards), \"1% uphill\", \"2% downhill and 1% falling right\","
                + " or \"level\".");
    }

    private static double decimal(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }
}
