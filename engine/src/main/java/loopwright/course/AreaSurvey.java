package loopwright.course;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What somebody has measured at an area and a map cannot say.
 *
 * @param depthMetres of a bunker's floor below the ground round it
 * @param lipMetres height of the edge that a shot toward the hole must clear
 * @param trees of a wood: height, gap under the branches, density
 */
public record AreaSurvey(OptionalDouble depthMetres, OptionalDouble lipMetres, Optional<TreeCover> trees) {
    public static final AreaSurvey NOTHING =
            new AreaSurvey(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    private static final double DEEPEST_METRES = 15;

    public AreaSurvey {
        check(depthMetres, "a bunker's depth");
        check(lipMetres, "a bunker's lip");
    }

    private static void check(OptionalDouble value, String what) {
        if (value.isPresent() && !(value.getAsDouble() >= 0 && value.getAsDouble() <= DEEPEST_METRES)) {
            throw new IllegalArgumentException(what + " lies between 0 and 15 m, not " + value.getAsDouble() + " m");
        }
    }

    public AreaSurvey withBunker(double newDepthMetres, double newLipMetres) {
        return new AreaSurvey(OptionalDouble.of(newDepthMetres), OptionalDouble.of(newLipMetres), trees);
    }

    public AreaSurvey withTrees(TreeCover cover) {
        return new AreaSurvey(depthMetres, lipMetres, Optional.of(cover));
    }
}
