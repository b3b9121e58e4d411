package loopwright.action;

import java.util.Locale;
import java.util.regex.Pattern;
import loopwright.units.Distance;

/** The unit in which a player reads lengths; a pace is one of it. */
public enum LengthUnit {
    YARDS("yd", "yards", Distance.METRES_PER_YARD),
    METRES("m", "metres", 1);

    /** What a length can gain on its way into metres and back. */
    private static final double ROUNDING = 1e-9;

    private static final Pattern LENGTH = Pattern.compile("(\\d+) (yd|paces)");

    private final String sign;
    private final String words;
    private final double metres;

    LengthUnit(String sign, String words, double metres) {
        this.sign = sign;
        this.words = words;
        this.metres = metres;
    }

    /** "yards" or "metres", as it is typed. */
    public static LengthUnit named(String text) {
        for (LengthUnit unit : values()) {
            if (unit.words.equals(text.toLowerCase(Locale.ROOT))) {
                return unit;
            }
        }
        throw new UserFault("The unit \"" + text + "\" is not known; it is yards or metres.");
    }

    public double inMetres() {
        return metres;
    }

    public String words() {
        return words;
    }

    public String sign() {
        return sign;
    }

    /** The wind that second choices are prepared for, as weather is told where this unit is used. */
    String windWords() {
        double speed = BriefHoles.WIND_METRES_PER_SECOND;
        return this == METRES ? Math.round(speed * 3.6) + " km/h" : Math.round(speed / 0.44704) + " mph";
    }

    /** Words in which lengths stand as "90 yd" or "9 paces", with the lengths in this unit. */
    public String told(String words) {
        if (this == YARDS) {
            return words;
        }
        return LENGTH.matcher(words)
                .replaceAll(m -> whole(Integer.parseInt(m.group(1)) * Distance.METRES_PER_YARD)
                        + (m.group(2).equals("yd") ? " " + sign : " " + m.group(2)));
    }

    /** The least whole number of it that is no shorter than a length: where a range is told, it is accepted. */
    public int atLeast(double lengthMetres) {
        return (int) Math.ceil(lengthMetres / metres - ROUNDING);
    }

    /** The largest that is no longer. */
    public int atMost(double lengthMetres) {
        return (int) Math.floor(lengthMetres / metres + ROUNDING);
    }

    /** The nearest whole number: 152. */
    public long whole(double lengthMetres) {
        return Math.round(lengthMetres / metres);
    }

    /** "152 yd". */
    public String of(double lengthMetres) {
        return whole(lengthMetres) + " " + sign;
    }

    /** A place beside a line, "6 left"; empty where it is on it. */
    public String beside(double rightMetres) {
        long number = Math.abs(whole(rightMetres));
        return number == 0 ? "" : number + (rightMetres < 0 ? " left" : " right");
    }
}
