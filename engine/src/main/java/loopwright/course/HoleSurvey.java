package loopwright.course;

/** What somebody has looked at on a hole and confirmed, so that an empty map means "none" and not "unknown". */
public record HoleSurvey(boolean trees, boolean outOfBounds, boolean penaltyAreas, boolean bunkers) {
    public static final HoleSurvey NOTHING = new HoleSurvey(false, false, false, false);

    /** True if trees, out of bounds and penalty areas were all looked at; else the hole counts as unsurveyed. */
    public boolean complete() {
        return trees && outOfBounds && penaltyAreas;
    }
}
