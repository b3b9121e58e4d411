package loopwright.player;

import java.util.OptionalDouble;

/**
 * One measured ball. At least a length is known; what was not measured is empty.
 *
 * @param club with which it was hit
 * @param effort "full", "three-quarter", "half"
 * @param carryMetres straight from the player to where it landed
 * @param totalMetres straight from the player to where it stopped
 * @param sideMetres distance from the line of aim, + right, where it landed (where it stopped if no carry is known)
 * @param setting ball and ground
 * @param session number of the session it belongs to, from 0
 * @param ageDays days before the newest ball of the log, 0 or more; 0 where no date is known
 */
public record Shot(
        Club club,
        String effort,
        OptionalDouble carryMetres,
        OptionalDouble totalMetres,
        OptionalDouble sideMetres,
        Setting setting,
        int session,
        double ageDays) {
    public Shot {
        if (carryMetres.isEmpty() && totalMetres.isEmpty()) {
            throw new IllegalArgumentException("a shot needs a carry or a total length");
        }
        requireLength(carryMetres);
        requireLength(totalMetres);
        if (sideMetres.isPresent() && !Double.isFinite(sideMetres.getAsDouble())) {
            throw new IllegalArgumentException("a side is a finite number, not " + sideMetres.getAsDouble());
        }
        if (session < 0 || !(ageDays >= 0)) {
            throw new IllegalArgumentException("session and age are zero or more");
        }
    }

    /** A ball of which carry and side are known, hit on a course. */
    public static Shot onCourse(Club club, double carryMetres, double sideMetres) {
        return new Shot(
                club,
                Swing.FULL,
                OptionalDouble.of(carryMetres),
                OptionalDouble.empty(),
                OptionalDouble.of(sideMetres),
                Setting.COURSE,
                0,
                0);
    }

    /** Finish direction relative to the aim, + right, where the side is known. */
    public OptionalDouble directionRadians() {
        if (sideMetres.isEmpty()) {
            return OptionalDouble.empty();
        }
        double length = carryMetres.orElse(totalMetres.orElse(0));
        double sine = sideMetres.getAsDouble() / Math.max(length, Math.abs(sideMetres.getAsDouble()) + 1e-9);
        return OptionalDouble.of(Math.asin(sine));
    }

    private static void requireLength(OptionalDouble length) {
        if (length.isPresent() && !(length.getAsDouble() >= 0 && length.getAsDouble() < 1000)) {
            throw new IllegalArgumentException("a shot is 0 to 1000 m long, not " + length.getAsDouble());
        }
    }
}
