package loopwright.player;

/** Which ball was hit from which ground: the range flatters, and its balls fly short. */
public record Setting(Ball ball, Ground ground) {

    /** Range balls fly short. */
    public enum Ball {
        OWN,
        RANGE
    }

    /** A mat hides fat shots; ten in a row groove; the course is what counts. */
    public enum Ground {
        MAT,
        GRASS,
        COURSE
    }

    public static final Setting COURSE = new Setting(Ball.OWN, Ground.COURSE);
    public static final Setting RANGE = new Setting(Ball.OWN, Ground.GRASS);

    public boolean onCourse() {
        return ground == Ground.COURSE;
    }
}
