package loopwright.course;

/**
 * What somebody has looked at on a hole and confirmed, so that an empty map means "none" and not "unknown".
 *
 * @param notes what he noted besides
 */
public record HoleSurvey(boolean trees, boolean outOfBounds, boolean penaltyAreas, boolean bunkers, HoleNotes notes) {
    public static final HoleSurvey NOTHING = new HoleSurvey(false, false, false, false);

    /** Ticks without notes. */
    public HoleSurvey(boolean trees, boolean outOfBounds, boolean penaltyAreas, boolean bunkers) {
        this(trees, outOfBounds, penaltyAreas, bunkers, HoleNotes.NOTHING);
    }

    /** True if trees, out of bounds and penalty areas were all looked at; else the hole counts as unsurveyed. */
    public boolean complete() {
        return trees && outOfBounds && penaltyAreas;
    }

    public HoleSurvey withNotes(HoleNotes newNotes) {
        return new HoleSurvey(trees, outOfBounds, penaltyAreas, bunkers, newNotes);
    }

    public HoleSurvey withTicks(boolean newTrees, boolean newOutOfBounds, boolean newPenaltyAreas, boolean newBunkers) {
        return new HoleSurvey(newTrees, newOutOfBounds, newPenaltyAreas, newBunkers, notes);
    }
}
