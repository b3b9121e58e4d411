package loopwright.handicap;

/**
 * What holds an index near the player's low index of the last 365 days (Rule 5.8, local guidance R5b): above low + 3.0
 * only half of the rise counts (soft cap), and never more than low + 5.0 (hard cap).
 *
 * @param index after the caps
 */
public record Caps(double calculated, double low, double index, boolean soft, boolean hard) {
    private static final double SOFT = 3.0;
    private static final double HARD = 5.0;

    public static Caps of(double calculated, double low) {
        double rise = calculated - low - SOFT;
        if (!(rise > 1e-9)) { // 13.0 - 10.0 - 3.0 must be no rise whatever the machine's last digit
            return new Caps(calculated, low, calculated, false, false);
        }
        double softened = Rounding.toTenth(low + SOFT + rise / 2);
        double ceiling = Rounding.toTenth(low + HARD);
        boolean hard = softened > ceiling;
        return new Caps(calculated, low, hard ? ceiling : softened, true, hard);
    }
}
