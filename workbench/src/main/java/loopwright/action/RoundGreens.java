package loopwright.action;

import java.util.Optional;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TemporaryGreen;
import loopwright.geo.Place;
import loopwright.putting.GreenOdds;
import loopwright.putting.GreenSpeed;
import loopwright.putting.GreenSurface;
import loopwright.putting.LevelGreenOdds;
import loopwright.putting.PuttingSkill;
import loopwright.putting.SlopedGreenOdds;
import loopwright.putting.SlopedPutt;
import loopwright.scoring.GreenPlay;
import loopwright.scoring.LevelGreenPlay;
import loopwright.scoring.SlopedGreenPlay;
import loopwright.strategy.MeasuredGreen;
import loopwright.units.Distance;

/** The greens of a round on one day for one player: measured ones on their slope, all others level. */
final class RoundGreens {
    /** Green speed of a temporary green, cut into a fairway: 6 ft, assumed. */
    private static final GreenSpeed TEMPORARY_GREENS = GreenSpeed.ofRollMetres(6 * Distance.METRES_PER_FOOT);

    private final Course course;
    private final PuttingSkill skill;
    private final GreenSpeed speed;
    private final Flights known;

    /** One green as the solver reads it and as the referee plays it. */
    record Green(GreenOdds odds, GreenPlay play, boolean measured) {}

    /** {@code known} may know putting on these greens already. */
    RoundGreens(Course course, PuttingSkill skill, GreenSpeed speed, Flights known) {
        this.course = course;
        this.skill = skill;
        this.speed = speed;
        this.known = known;
    }

    /** Odds of a level green. */
    LevelGreenOdds level() {
        return known.putting(skill, speed);
    }

    /** The green of a hole; working out a measured one takes about a second. */
    Green of(Hole hole) {
        Place cup = hole.holeLocation();
        Optional<GreenSurface> measured =
                TemporaryGreen.isInUse(hole) ? Optional.empty() : MeasuredGreen.find(course, hole);
        if (measured.isPresent()) {
            SlopedGreenOdds odds = new SlopedGreenOdds(measured.get(), speed, skill, cup.x(), cup.y());
            SlopedPutt putt = new SlopedPutt(measured.get(), speed, skill, cup.x(), cup.y());
            return new Green(odds, new SlopedGreenPlay(odds, putt), true);
        }
        LevelGreenOdds odds = TemporaryGreen.isInUse(hole) ? known.putting(skill, TEMPORARY_GREENS) : level();
        return new Green(GreenOdds.level(odds, cup.x(), cup.y()), new LevelGreenPlay(odds), false);
    }
}
