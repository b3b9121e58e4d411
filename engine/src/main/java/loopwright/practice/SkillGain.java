package loopwright.practice;

/**
 * What one skill is worth.
 *
 * @param strokes fewer strokes a round after one honest step, the plan staying what it is
 * @param chance how much the chance of the target rises by it
 * @param strokesSd standard deviation of {@code strokes} from what is not known of the player
 * @param chanceSd of {@code chance}
 */
public record SkillGain(Skill skill, double strokes, double chance, double strokesSd, double chanceSd) {
    /** Standard deviations of a normal law that hold 90 % either side. */
    private static final double NINETY = 1.645;

    public double chanceLow() {
        return chance - NINETY * chanceSd;
    }

    public double chanceHigh() {
        return chance + NINETY * chanceSd;
    }
}
