package loopwright.putting;

/**
 * How a player putts.
 *
 * @param startLineSdRadians spread of the start direction, stroke and alignment together
 * @param paceSd spread of the rolled distance as a share of the intended one
 * @param readingSd spread of the read break as a share of the true break (no effect on a level putt)
 * @param evidence number of putts the values rest on; 0: prior by level only
 */
public record PuttingSkill(double startLineSdRadians, double paceSd, double readingSd, int evidence) {
    public PuttingSkill {
        if (!(startLineSdRadians > 0 && startLineSdRadians < 0.5) || !(paceSd > 0 && paceSd < 1) || !(readingSd >= 0)) {
            throw new IllegalArgumentException(
                    "putting skill needs start line 0 to 0.5 rad, pace 0 to 1, reading >= 0");
        }
        if (evidence < 0) {
            throw new IllegalArgumentException("a number of putts is zero or more");
        }
    }
}
