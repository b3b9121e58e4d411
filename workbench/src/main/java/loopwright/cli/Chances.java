package loopwright.cli;

import java.util.Locale;

/** Chances in words: never a certainty that is only the rounding. */
final class Chances {
    /** Nearer than this to never or always would be printed as 0.0 or 100.0 per cent. */
    private static final double TOLD = 0.0005;

    private Chances() {}

    /** False where a chance is all but never or all but always. */
    static boolean isOpen(double chance) {
        return chance >= TOLD && chance <= 1 - TOLD;
    }

    /** "8.5 %", "34 %", "99.7 %", "over 99.9 %". */
    static String percent(double chance) {
        if (chance > 1 - TOLD && chance < 1) {
            return "over 99.9 %";
        }
        boolean fine = chance < 0.0995 || (chance >= 0.995 && chance < 1);
        return String.format(Locale.ROOT, fine ? "%.1f %%" : "%.0f %%", 100 * chance);
    }

    /** The same for a column, to a tenth: "34.2%", ">99.9%", "<0.1%". */
    static String column(double chance) {
        return isOpen(chance) ? String.format(Locale.ROOT, "%.1f%%", 100 * chance) : chance < 0.5 ? "<0.1%" : ">99.9%";
    }
}
