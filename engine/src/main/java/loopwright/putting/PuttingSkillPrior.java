package loopwright.putting;

/**
 * What a player's putting is taken to be from the score level alone.
 *
 * <p>Two free parameters at each of two levels, direction spread and pace spread, are set so that {@link LevelGreenOdds}
 * at a green speed of 10 ft meets two published anchors each (Broadie 2012 and "Every Shot Counts", 2014, as
 * transcribed): the tour (level 71) holes half from 8.06 ft and takes two putts on average from 32.8 ft; a 90-golfer
 * holes half from 5 ft and takes two from 19 ft. Between and above the two levels both are linear in the score, below 71
 * they are held; nothing is published beyond 90. Everything else (one putts at other distances, three putts) is
 * predicted and listed in the ledger.
 *
 * <p>Reading is assumed: 15 % of the break at level 71 and 30 % at 90, linear, at most 50 %; the start line is what then
 * remains of the direction spread. No source was found for the split; it matters only on measured slopes.
 */
public final class PuttingSkillPrior {
    static final double TOUR_LEVEL = 71;
    static final double NINETY_LEVEL = 90;
    static final double TOUR_DIRECTION_DEGREES = 1.338;
    static final double TOUR_PACE = 0.0919;
    static final double NINETY_DIRECTION_DEGREES = 2.308;
    static final double NINETY_PACE = 0.1000;
    private static final double TOUR_READING = 0.15;
    private static final double NINETY_READING = 0.30;
    private static final double MOST_READING = 0.5;

    private PuttingSkillPrior() {}

    /**
     * The prior of a score level.
     *
     * @param level average 18-hole score, 60 to 130
     */
    public static PuttingSkill ofLevel(double level) {
        if (!(level >= 60 && level <= 130)) {
            throw new IllegalArgumentException("a level is an average score between 60 and 130, not " + level);
        }
        double direction = Math.toRadians(at(level, TOUR_DIRECTION_DEGREES, NINETY_DIRECTION_DEGREES));
        double reading = Math.min(MOST_READING, at(level, TOUR_READING, NINETY_READING));
        double read = reading * PuttingSkill.TYPICAL_BREAK_RADIANS;
        double startLine = Math.sqrt(direction * direction - read * read);
        return new PuttingSkill(startLine, at(level, TOUR_PACE, NINETY_PACE), reading, 0);
    }

    private static double at(double level, double tour, double ninety) {
        double share = (Math.max(level, TOUR_LEVEL) - TOUR_LEVEL) / (NINETY_LEVEL - TOUR_LEVEL);
        return tour + share * (ninety - tour);
    }
}
