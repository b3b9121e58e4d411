package loopwright.course;

import java.util.ArrayList;
import java.util.List;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.units.Distance;

/**
 * Holes as they are played while a temporary green is in use: a circle 12 yd across where the survey puts it, else
 * 30 m short of the green on the line of play. The closed green counts as fairway (Rule 13.1f gives free relief).
 */
public final class TemporaryGreen {
    private static final double RADIUS_METRES = 6 * Distance.METRES_PER_YARD;
    private static final double SHORT_OF_GREEN_METRES = 30;
    private static final double STEP_METRES = 1;

    private TemporaryGreen() {}

    /** The course with the temporary greens of its survey in play. */
    public static Course inPlay(Course course) {
        return course.withHoles(
                course.holes().stream().map(h -> isInUse(h) ? played(h) : h).toList());
    }

    public static boolean isInUse(Hole hole) {
        return hole.survey().notes().localRules().contains(LocalRule.TEMPORARY_GREEN);
    }

    private static Hole played(Hole hole) {
        Place middle = hole.survey().notes().temporaryGreen().orElseGet(() -> shortOfTheGreen(hole));
        return new Hole(
                hole.number(),
                hole.par(),
                hole.parSource(),
                hole.strokeIndex(),
                lineTo(hole.line(), middle),
                Region.circle(middle, RADIUS_METRES),
                false,
                middle,
                hole.survey());
    }

    private static Place shortOfTheGreen(Hole hole) {
        Line line = hole.line();
        double at = line.lengthMetres();
        while (at > 0 && hole.green().contains(line.placeAt(at))) {
            at -= STEP_METRES;
        }
        return line.placeAt(Math.max(line.lengthMetres() / 2, at - SHORT_OF_GREEN_METRES));
    }

    /** The line up to its place nearest to the temporary green, and from there into it. */
    private static Line lineTo(Line line, Place middle) {
        List<Place> out = new ArrayList<>(List.of(line.start()));
        double end = line.along(middle);
        for (Place bend : line.places().subList(1, line.places().size() - 1)) {
            if (line.along(bend) < end) {
                out.add(bend);
            }
        }
        out.add(middle);
        return new Line(out);
    }
}
