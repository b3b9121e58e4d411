package loopwright.handicap;

/** The rounding of the Rules of Handicapping: to the nearest, halves upward, that is towards zero below it. */
final class Rounding {
    /**
     * Values are quotients of numbers with one or two decimals by a slope of at most 155, so a true value is a half or
     * at least 1e-6 away from one; a gap of 1e-9 is the rounding of the machine.
     */
    private static final double MACHINE = 1e-9;

    private Rounding() {}

    /** To a tenth, a half tenth upward: -1.54 and -1.55 become -1.5 (Rule 5.1c). */
    static double toTenth(double value) {
        return (Math.floor(value * 10 + 0.5 + MACHINE) + 0.0) / 10;
    }

    /** To a whole number, .5 upward. */
    static int toWhole(double value) {
        return (int) Math.floor(value + 0.5 + MACHINE);
    }
}
