package loopwright.putting;

import java.util.OptionalDouble;

/**
 * One putt of a player's record.
 *
 * @param metres its length, above the hole's radius
 * @param leaveMetres of a miss, where noted: the distance left, at least the hole's radius
 * @param side of a miss, where noted
 * @param straightDrill true if it was played on a line known to be straight, so that nothing was to be read
 */
public record LoggedPutt(double metres, boolean holed, OptionalDouble leaveMetres, Side side, boolean straightDrill) {
    /** Where a miss stopped as seen along the putt. */
    public enum Side {
        NOT_NOTED,
        SHORT,
        LONG,
        LEFT,
        RIGHT
    }

    public LoggedPutt {
        if (!(metres > Cup.RADIUS_METRES && metres < 100)) {
            throw new IllegalArgumentException(
                    "a putt's length lies between the hole's radius and 100 m, not " + metres);
        }
        if (leaveMetres.isPresent() && (holed || !(leaveMetres.getAsDouble() >= Cup.RADIUS_METRES))) {
            throw new IllegalArgumentException("only a miss has a leave, and it lies outside the hole");
        }
        if (holed && side != Side.NOT_NOTED) {
            throw new IllegalArgumentException("only a miss has a side");
        }
    }

    public static LoggedPutt holed(double metres) {
        return new LoggedPutt(metres, true, OptionalDouble.empty(), Side.NOT_NOTED, false);
    }

    public static LoggedPutt missed(double metres) {
        return new LoggedPutt(metres, false, OptionalDouble.empty(), Side.NOT_NOTED, false);
    }

    public static LoggedPutt missed(double metres, double leaveMetres) {
        return new LoggedPutt(metres, false, OptionalDouble.of(leaveMetres), Side.NOT_NOTED, false);
    }

    public LoggedPutt withSide(Side newSide) {
        return new LoggedPutt(metres, holed, leaveMetres, newSide, straightDrill);
    }

    public LoggedPutt inStraightDrill() {
        return new LoggedPutt(metres, holed, leaveMetres, side, true);
    }
}
