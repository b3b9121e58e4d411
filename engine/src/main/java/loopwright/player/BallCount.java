package loopwright.player;

/**
 * So many balls of one club came to rest in one zone: "6 of 10 drives inside 30 yd".
 *
 * @param balls how many, 1 or more
 * @param session number of the session, from 0
 * @param ageDays days before the newest ball of the log
 */
public record BallCount(Club club, String effort, int balls, Zone zone, Setting setting, int session, double ageDays) {
    public BallCount {
        if (balls < 1) {
            throw new IllegalArgumentException("a count is one ball or more, not " + balls);
        }
        if (session < 0 || !(ageDays >= 0)) {
            throw new IllegalArgumentException("session and age are zero or more");
        }
    }
}
