package loopwright.strategy;

import java.util.Optional;
import loopwright.course.Course;
import loopwright.course.GreenSurvey;
import loopwright.course.Hole;
import loopwright.geo.Place;
import loopwright.ground.HeightField;
import loopwright.putting.GreenSurface;
import loopwright.putting.SlopeArrows;
import loopwright.putting.SpotHeights;

/**
 * The slopes of a green where somebody has measured them: from spot heights, else from arrows, else from the course's
 * own heights where they are fine enough to show a green.
 */
public final class MeasuredGreen {
    private MeasuredGreen() {}

    /** The green's surface; empty if nothing about its slopes is known. */
    public static Optional<GreenSurface> find(Course course, Hole hole) {
        GreenSurvey measured = hole.survey().notes().green();
        if (measured.spotsShowThePlane()) {
            return Optional.of(SpotHeights.of(measured.spots().stream()
                    .map(s -> new SpotHeights.Spot(s.place().x(), s.place().y(), s.heightMetres()))
                    .toList()));
        }
        if (!measured.arrows().isEmpty()) {
            return Optional.of(SlopeArrows.of(measured.arrows().stream()
                    .map(a -> new SlopeArrows.Arrow(a.place().x(), a.place().y(), a.slope(), a.downhillRadians()))
                    .toList()));
        }
        return course.heights().filter(HeightField::showsGreens).map(Heights::new);
    }

    /** Slopes read from the heights themselves. */
    private record Heights(HeightField field) implements GreenSurface {
        @Override
        public double slopeEast(double x, double y) {
            return field.slopeEast(new Place(x, y));
        }

        @Override
        public double slopeNorth(double x, double y) {
            return field.slopeNorth(new Place(x, y));
        }
    }
}
