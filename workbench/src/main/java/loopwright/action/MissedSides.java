package loopwright.action;

import loopwright.course.CourseMap;
import loopwright.geo.Place;
import loopwright.strategy.PolicyEvaluation;

/** What it costs to miss on one side or the other: strokes to hole out from the ground there, penalties included. */
final class MissedSides {
    /** Shots that aim nearer to the hole than this are meant to reach the green. */
    private static final double REACHES_METRES = 25;
    /** Misses are looked at from one to two half widths that hold 8 of 10 shots. */
    private static final double[] HALF_WIDTHS = {1, 1.5, 2};

    private static final double STEP_METRES = 1;

    private final CourseMap map;
    private final PolicyEvaluation values;

    MissedSides(CourseMap map, PolicyEvaluation values) {
        this.map = map;
        this.values = values;
    }

    boolean isMeantForTheGreen(RoundPlan.ShotPlan shot) {
        return shot.aim().distanceTo(map.hole().holeLocation()) < REACHES_METRES;
    }

    /** Left against right of a shot's aim, at its distance. */
    HoleBriefing.SideMiss beside(RoundPlan.ShotPlan shot) {
        double half = Math.max(8, halfWidth(shot));
        double left = 0;
        double right = 0;
        for (double widths : HALF_WIDTHS) {
            left += strokes(shot, -widths * half) / HALF_WIDTHS.length;
            right += strokes(shot, widths * half) / HALF_WIDTHS.length;
        }
        return new HoleBriefing.SideMiss(right < left, Math.abs(right - left));
    }

    private double strokes(RoundPlan.ShotPlan shot, double aside) {
        double bearing = shot.from().bearingTo(shot.aim());
        double back = shot.aimMetres() * 0.06;
        double sum = 0;
        for (double along : new double[] {-back, 0, back}) {
            sum += at(shot.aim().offset(bearing, along, aside), shot) / 3;
        }
        return sum;
    }

    private static double halfWidth(RoundPlan.ShotPlan shot) {
        double bearing = shot.from().bearingTo(shot.aim());
        double[] off = shot.sample().stream()
                .mapToDouble(p -> Math.abs((p.x() - shot.aim().x()) * Math.cos(bearing)
                        - (p.y() - shot.aim().y()) * Math.sin(bearing)))
                .sorted()
                .toArray();
        return off.length == 0 ? 0 : off[(int) (0.8 * (off.length - 1))];
    }

    /** Strokes to hole out after a ball came to a place; a lost one goes back to where the shot was played. */
    private double at(Place place, RoundPlan.ShotPlan shot) {
        double strokes = values.expectedFrom(place);
        if (Double.isFinite(strokes)) {
            return strokes;
        }
        if (map.surfaceAt(place).isPenaltyArea()) {
            return afterDrop(place, shot);
        }
        return 1 + shot.expected();
    }

    /** One stroke, and on from the first ground in play on the way back to the ball: near enough to compare sides. */
    private double afterDrop(Place place, RoundPlan.ShotPlan shot) {
        double bearing = place.bearingTo(shot.from());
        double most = place.distanceTo(shot.from());
        for (double s = STEP_METRES; s < most; s += STEP_METRES) {
            double strokes = values.expectedFrom(place.along(bearing, s));
            if (Double.isFinite(strokes)) {
                return 1 + strokes;
            }
        }
        return 1 + shot.expected();
    }
}
