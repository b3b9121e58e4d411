package loopwright.drawing;

import java.util.Locale;

/**
 * The inks of the chart: paper, one line ink with two paler tones, a few flat washes, two accents. Nothing is told by
 * ink alone: every lie has its texture and every accent its own shape, so that a grey print says the same.
 */
public enum Ink {
    PAPER(0xFBF8EF),
    LINE(0x23282C),
    SOFT(0x6E716C),
    FAINT(0xB9B7AB),
    FAIRWAY(0xE1E8CF),
    GREEN(0xC8D9B2),
    GREEN_LINE(0x4A6B3C),
    WATER(0xDCE8ED),
    WATER_LINE(0x4B7187),
    SAND(0xF7EBC9),
    SAND_DOT(0x84652B),
    ROUGH_LINE(0x8F9678),
    CROWN(0x4F6349),
    CROWN_GROUND(0xEEF0E2),
    CONTOUR(0x96643C),
    ROAD(0xE9E4D8),
    BUILDING(0x8B857B),
    DO_THIS(0x213F99),
    BEWARE(0xB4351B);

    private final int rgb;
    private final String hex;

    Ink(int rgb) {
        this.rgb = rgb;
        this.hex = String.format(Locale.ROOT, "#%06x", rgb);
    }

    public int rgb() {
        return rgb;
    }

    /** As in "#23282c". */
    public String hex() {
        return hex;
    }
}
