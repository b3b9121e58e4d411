package loopwright.practice;

/**
 * Where practice happens, and how much of an hour there counts for a skill against an hour at the best place. All shares are
 * assumed: the course gives few balls an hour but every one as in a round; a mat at home shows the start line and the strike
 * of a chip, not where the ball ends.
 */
public enum Facility {
    RANGE,
    SHORT_GAME_AREA,
    GREEN,
    COURSE,
    HOME;

    /** Share of an hour here that counts for a skill, 0 where it cannot be practised, 1 at the best place. */
    public double counts(Skill skill) {
        return switch (skill) {
            case DRIVER_DIRECTION, DRIVER_DISTANCE, MISHITS, LONG_APPROACH, MIDDLE_APPROACH, SHORT_APPROACH ->
                among(1, 0, 0, 0.4, 0);
            case FULL_WEDGES -> among(1, 0.5, 0, 0.4, 0);
            case PARTIAL_WEDGES -> among(0.9, 1, 0, 0.4, 0);
            case CHIP -> among(0, 1, 0, 0.5, 0.4);
            case PITCH -> among(0.3, 1, 0, 0.5, 0);
            case BUNKER_SHOT -> among(0, 1, 0, 0.3, 0);
            case START_LINE -> among(0, 0, 1, 0.4, 0.8);
            case PACE -> among(0, 0, 1, 0.5, 0.2);
            case READING -> among(0, 0, 1, 0.8, 0);
            case DECISIONS -> among(0, 0, 0, 1, 0.6);
        };
    }

    private double among(double range, double shortGame, double green, double course, double home) {
        return switch (this) {
            case RANGE -> range;
            case SHORT_GAME_AREA -> shortGame;
            case GREEN -> green;
            case COURSE -> course;
            case HOME -> home;
        };
    }

    /** True if a block of this skill here is full swings, which loads back, wrists and elbows. */
    public boolean loads(Skill skill) {
        return (this == RANGE || this == COURSE) && skill.isFullSwing();
    }
}
