package loopwright.web;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import loopwright.action.LengthUnit;
import loopwright.action.ReadLengths;
import loopwright.action.Workroom;
import loopwright.units.Distance;
import loopwright.units.Speed;

/**
 * Lengths, speeds and temperatures as the person of this bench likes to read them.
 *
 * @param metric lengths on the course in metres, else in yards
 * @param metricGreens lengths on the green in metres, else in feet
 */
record Units(boolean metric, boolean metricGreens, WindUnit wind, boolean celsius) {
    /** What is usual where nothing was chosen. */
    static final Units YARDS = new Units(false, false, WindUnit.MPH, false);

    static final String LENGTHS = "units";
    static final String GREENS = "units.green";
    static final String WIND = "units.wind";
    static final String AIR = "units.air";

    /** What can be chosen, by preference; the first is usual. */
    static final Map<String, List<String>> CHOICES = choices();

    private static final int PARTS = 4;

    enum WindUnit {
        MPH("mph", Speed.METRES_PER_SECOND_PER_MPH),
        KMH("km/h", 1 / 3.6),
        MS("m/s", 1);

        private final String word;
        private final double metresPerSecond;

        WindUnit(String word, double metresPerSecond) {
            this.word = word;
            this.metresPerSecond = metresPerSecond;
        }
    }

    private static Map<String, List<String>> choices() {
        Map<String, List<String>> out = new LinkedHashMap<>();
        out.put(LENGTHS, List.of("yards", "metres"));
        out.put(GREENS, List.of("feet", "metres"));
        out.put(WIND, Arrays.stream(WindUnit.values()).map(u -> u.word).toList());
        out.put(AIR, List.of("F", "C"));
        return out;
    }

    /** As the person of this room likes them. */
    static Units of(Workroom room) {
        return of(room.store().listPreferences());
    }

    static Units of(Map<String, String> preferences) {
        return new Units(
                "metres".equals(preferences.get(LENGTHS)),
                "metres".equals(preferences.get(GREENS)),
                windUnit(preferences.getOrDefault(WIND, "")),
                "C".equals(preferences.get(AIR)));
    }

    private static WindUnit windUnit(String word) {
        return Arrays.stream(WindUnit.values())
                .filter(u -> u.word.equals(word))
                .findFirst()
                .orElse(WindUnit.MPH);
    }

    /** All four in one word, which a form sends with its numbers so that its address means the same to everybody. */
    String code() {
        return (metric ? "m" : "yd") + "_" + (metricGreens ? "m" : "ft") + "_" + wind.word + "_"
                + (celsius ? "C" : "F");
    }

    /** The units of a {@link #code}; of anything else SI and degrees Celsius. */
    static Units ofCode(String code) {
        String[] parts = code.split("_", -1);
        return parts.length == PARTS
                ? new Units(parts[0].equals("m"), parts[1].equals("m"), windUnit(parts[2]), parts[3].equals("C"))
                : new Units(true, true, WindUnit.MS, true);
    }

    /** A length on the course: "172 yd". */
    String length(double metres) {
        return String.format(Locale.ROOT, "%.0f %s", number(metres), unit());
    }

    /** A length on the green: "12 ft". */
    String shortLength(double metres) {
        return metricGreens
                ? String.format(Locale.ROOT, "%.1f m", metres)
                : String.format(
                        Locale.ROOT, "%.0f ft", Distance.ofMetres(metres).feet());
    }

    /** A length as a bare number in the unit of {@link #unit}. */
    double number(double metres) {
        return metric ? metres : Distance.ofMetres(metres).yards();
    }

    double metres(double number) {
        return metric ? number : Distance.ofYards(number).metres();
    }

    LengthUnit lengths() {
        return metric ? LengthUnit.METRES : LengthUnit.YARDS;
    }

    /** How sentences of actions tell lengths. */
    ReadLengths sentences() {
        return new ReadLengths(lengths(), metricGreens);
    }

    String unit() {
        return metric ? "m" : "yd";
    }

    /** A place beside a line: " 6 yd left", or nothing where it is on the line. */
    String side(double offsetMetres) {
        String length = length(Math.abs(offsetMetres));
        if (length.startsWith("0 ")) {
            return "";
        }
        return length + " " + Texts.say(offsetMetres < 0 ? "side.left" : "side.right");
    }

    double greenNumber(double metres) {
        return metricGreens ? metres : Distance.ofMetres(metres).feet();
    }

    double greenMetres(double number) {
        return metricGreens ? number : Distance.ofFeet(number).metres();
    }

    String greenUnit() {
        return metricGreens ? "m" : "ft";
    }

    double windNumber(double metresPerSecond) {
        return metresPerSecond / wind.metresPerSecond;
    }

    double windMetresPerSecond(double number) {
        return number * wind.metresPerSecond;
    }

    String windUnit() {
        return wind.word;
    }

    double airNumber(double celsiusDegrees) {
        return celsius ? celsiusDegrees : 32 + 1.8 * celsiusDegrees;
    }

    double celsiusOf(double number) {
        return celsius ? number : (number - 32) / 1.8;
    }

    String airUnit() {
        return celsius ? "C" : "F";
    }

    /** Heights of ground: feet go with yards. */
    double heightNumber(double metres) {
        return metric ? metres : Distance.ofMetres(metres).feet();
    }

    double heightMetres(double number) {
        return metric ? number : Distance.ofFeet(number).metres();
    }

    String heightUnit() {
        return metric ? "m" : "ft";
    }
}
