package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.LocalRule;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.PlayingLength;
import loopwright.player.SituationTable;
import loopwright.player.StrikeModel;
import loopwright.strategy.Advice;
import loopwright.strategy.Choice;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.HoleTarget;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ShotRules;
import loopwright.units.Distance;

/**
 * The shots of one hole in the coach's terms: club, aim and landmark, room, what else could be played and what it costs.
 */
final class PlannedShots {
    private static final int MOST_SHOTS = 4;
    private static final int ALTERNATIVES = 2;
    /** A usual choice that costs less than this is the plan's, strokes: the player knows it and can see the target. */
    private static final double PREFER_CONVENTIONAL = 0.05;
    /** A mapped edge may lie so far from the real one, metres: 4 yd, assumed. */
    private static final double MAP_ERROR_METRES = 4 * Distance.METRES_PER_YARD;
    /** Shares of a day's bias that a start line may be held against it. */
    private static final double[] HELD_AGAINST = {1, 0.5, 1.5};

    /** Choices that cost more do not turn on a few yards. */
    private static final double NEAR_ENOUGH_TO_TURN = 0.3;

    /** Shots that aim nearer to the hole than this are approaches: the room that counts is the green. */
    private static final double APPROACH_METRES = 25;

    private final CourseMap map;
    private final Hole hole;
    private final Place tee;
    private final StrikeModel strikes;
    private final ShotRules rules;
    /** What is known of today's bias: it is held against, also where the usual target is kept. */
    private final double todaysBiasRadians;

    private final SafetyCheck safety;

    PlannedShots(CourseMap map, Place tee, StrikeModel strikes, ShotRules rules, double todaysBiasRadians) {
        this.map = map;
        this.hole = map.hole();
        this.tee = tee;
        this.strikes = strikes;
        this.rules = rules;
        this.todaysBiasRadians = todaysBiasRadians;
        this.safety = new SafetyCheck(map);
    }

    CourseMap map() {
        return map;
    }

    /** The planned shots, each from where the one before typically ends. */
    List<RoundPlan.ShotPlan> fromTee(Advice advice, HabitPlay habit) {
        List<RoundPlan.ShotPlan> out = new ArrayList<>();
        Place ball = tee;
        Surface lie = Surface.TEE;
        while (out.size() < MOST_SHOTS && lie != Surface.GREEN) {
            Situation situation = SituationTable.of(lie, map.hasLocalRule(LocalRule.PREFERRED_LIES))
                    .get(0)
                    .situation();
            Advice.Rated chosen = conventional(advice, habit, ball, lie, situation);
            Advice.Finish finish = advice.finish(ball, lie, situation, chosen);
            out.add(shot(advice, habit, ball, lie, situation, chosen, finish));
            if (ball.distanceTo(finish.typical()) < 1) {
                break;
            }
            ball = finish.typical();
            lie = map.surfaceAt(ball);
            if (!lie.isPlayable()) {
                break;
            }
        }
        return out;
    }

    /** The plan's choice; or the player's usual one, where it may be played and costs next to nothing. */
    private Advice.Rated conventional(Advice advice, HabitPlay habit, Place ball, Surface lie, Situation situation) {
        Advice.Rated best = advice.chosen(ball, lie, situation);
        Choice.Stroke usual = habit.from(ball, lie, situation);
        boolean free = lie == Surface.TEE
                ? mayBePlayedFromTee(usual.shot())
                : !rules.forbidden().contains(usual.shot());
        if (!free) {
            return best;
        }
        double bearing = ball.bearingTo(usual.target()) - (strikes.isTouch(usual.shot()) ? 0 : todaysBiasRadians);
        Place target = ball.along(bearing, ball.distanceTo(usual.target()));
        Advice.Rated rated = advice.rate(ball, lie, situation, usual.shot(), target);
        return rated.costBeside(best) < PREFER_CONVENTIONAL ? rated : best;
    }

    RoundPlan.ShotPlan shot(
            Advice advice,
            HabitPlay habit,
            Place ball,
            Surface lie,
            Situation situation,
            Advice.Rated chosen,
            Advice.Finish finish) {
        double bearing = ball.bearingTo(chosen.target());
        Optional<PlayingLength> playing = strikes.findPlayingLength(
                chosen.shot(),
                strikes.lie(chosen.shot(), lie, situation),
                bearing,
                (forward, right) -> map.course().riseMetres(ball, ball.offset(bearing, forward, right)));
        // a swing has one length; where the day was flown it is known to the yard, hill and lie included
        Place aim = playing.map(p -> ball.along(bearing, p.finishMetres())).orElse(chosen.target());
        double length = ball.distanceTo(aim);
        boolean approach = aim.distanceTo(hole.holeLocation()) < APPROACH_METRES;
        Rooms rooms = new Rooms(map);
        double offset = offset(ball, aim);
        Landmarks.Line line = new Landmarks(map).line(ball, aim, offset);
        return new RoundPlan.ShotPlan(
                ball,
                lie,
                ball.distanceTo(hole.holeLocation()),
                strikes.label(chosen.shot()),
                aim,
                length,
                offset,
                line.words(),
                line.blind(),
                new StartReading(strikes).of(ball, bearing, length, chosen.shot(), playing),
                isAssumed(chosen.shot()),
                playing,
                chosen.expected(),
                finish.share(),
                finish.sample(),
                rooms.across(ball, bearing, length),
                approach ? Optional.empty() : rooms.at(ball, bearing, length, finish.sample()),
                alternatives(advice, ball, lie, situation, chosen),
                habitual(advice, habit, ball, lie, situation, chosen),
                safety.of(ball, finish.sample()));
    }

    private List<RoundPlan.Alternative> alternatives(
            Advice advice, Place ball, Surface lie, Situation situation, Advice.Rated chosen) {
        List<RoundPlan.Alternative> out = new ArrayList<>();
        for (Advice.Rated r : advice.byShot(ball, lie, situation)) {
            if (r.shot() != chosen.shot() && out.size() < ALTERNATIVES) {
                out.add(alternative(ball, r, chosen, turnsOnTheMap(advice, ball, lie, situation, r, chosen)));
            }
        }
        return out;
    }

    private RoundPlan.Alternative habitual(
            Advice advice, HabitPlay habit, Place ball, Surface lie, Situation situation, Advice.Rated chosen) {
        Choice.Stroke s = habit.from(ball, lie, situation);
        Advice.Rated rated = advice.rate(ball, lie, situation, s.shot(), s.target());
        return alternative(ball, rated, chosen, turnsOnTheMap(advice, ball, lie, situation, rated, chosen));
    }

    /** True if a tee shot beats the chosen one with everything on the map moved by its error to one side or along. */
    private boolean turnsOnTheMap(
            Advice advice, Place ball, Surface lie, Situation situation, Advice.Rated other, Advice.Rated chosen) {
        double cost = other.costBeside(chosen);
        if (lie != Surface.TEE || cost > NEAR_ENOUGH_TO_TURN || cost < 2 * other.costError(chosen)) {
            return false;
        }
        double bearing = ball.bearingTo(chosen.target());
        for (int quarter = 0; quarter < 4; quarter++) {
            double way = bearing + quarter * Math.PI / 2;
            Place from = ball.along(way, MAP_ERROR_METRES);
            Advice.Rated a = advice.rate(
                    from, lie, situation, chosen.shot(), chosen.target().along(way, MAP_ERROR_METRES));
            Advice.Rated b = advice.rate(
                    from, lie, situation, other.shot(), other.target().along(way, MAP_ERROR_METRES));
            if (b.costBeside(a) < 0) {
                return true;
            }
        }
        return false;
    }

    /** The planned tee club on the plan's line, and its best lines on days when all balls go left, and right. */
    List<RoundPlan.StartLine> startLines(
            RoundPlan.ShotPlan drive, MeanSolution solution, PolicyEvaluation evaluation, PlannedRound round) {
        List<RoundPlan.StartLine> out = new ArrayList<>();
        out.add(new RoundPlan.StartLine(
                RoundPlan.BallsGo.AS_USUAL, 0, drive.aim(), drive.offsetMetres(), drive.line(), 0, 0));
        int shot = shotNamed(drive.club());
        double bearing = drive.from().bearingTo(drive.aim());
        for (PlannedRound.BiasedDay day : round.biasedDays()) {
            Advice then = new Advice(solution, evaluation, day.ability());
            Advice.Rated usual = then.rate(drive.from(), Surface.TEE, Situation.ORDINARY, shot, drive.aim());
            Advice.Rated best = usual;
            for (double share : HELD_AGAINST) {
                Place held = drive.from().along(bearing - share * day.biasRadians(), drive.aimMetres());
                Advice.Rated rated = then.rate(drive.from(), Surface.TEE, Situation.ORDINARY, shot, held);
                best = rated.costBeside(best) < 0 ? rated : best;
            }
            Place aim = drive.from().along(drive.from().bearingTo(best.target()), drive.aimMetres());
            double offset = offset(drive.from(), aim);
            out.add(new RoundPlan.StartLine(
                    day.biasRadians() < 0 ? RoundPlan.BallsGo.LEFT : RoundPlan.BallsGo.RIGHT,
                    drive.aimMetres() * Math.tan(day.biasRadians()),
                    aim,
                    offset,
                    new Landmarks(map).line(drive.from(), aim, offset).words(),
                    usual.costBeside(best),
                    usual.costError(best)));
        }
        return out;
    }

    private boolean isAssumed(int shot) {
        return (strikes.isTouch(shot)
                        ? strikes.touch(shot).evidence()
                        : strikes.swing(shot).evidence())
                .isMostlyAssumed();
    }

    RoundPlan.Alternative alternative(Place ball, Advice.Rated r, Advice.Rated chosen) {
        return alternative(ball, r, chosen, false);
    }

    private RoundPlan.Alternative alternative(Place ball, Advice.Rated r, Advice.Rated chosen, boolean turnsOnTheMap) {
        return new RoundPlan.Alternative(
                strikes.label(r.shot()),
                r.target(),
                offset(ball, r.target()),
                r.costBeside(chosen),
                r.costError(chosen),
                turnsOnTheMap);
    }

    /** How far beside the line of play a target lies, seen from the ball: + right. */
    double offset(Place ball, Place target) {
        double length = ball.distanceTo(target);
        var line = hole.lineFrom(tee);
        Place ahead = length >= ball.distanceTo(hole.holeLocation()) - APPROACH_METRES
                ? hole.holeLocation()
                : line.placeAt(line.along(ball) + length);
        double turn = ball.bearingTo(target) - ball.bearingTo(ahead);
        return length * Math.sin(turn);
    }

    /** Where a shot is meant to end so far beside the line of play: {@link #offset} the other way round. */
    Place aimBeside(Place ball, int shot, double offsetMetres) {
        Place straight = reach(ball, shot, hole.holeLocation());
        double length = ball.distanceTo(straight);
        double turn = Math.asin(Math.max(-1, Math.min(1, offsetMetres / length)));
        return ball.along(
                ball.bearingTo(straight) - Math.asin(Math.max(-1, Math.min(1, offset(ball, straight) / length))) + turn,
                length);
    }

    /** True if the coach's locks leave a shot free on the tee. */
    boolean mayBePlayedFromTee(int shot) {
        return !rules.forbidden().contains(shot)
                && (rules.fromTee().isEmpty() || rules.fromTee().contains(shot));
    }

    Surface surfaceAt(Place ball) {
        return map.surfaceAt(ball);
    }

    /** The number of a shot by its label; see {@code StrikeModel}. */
    int shotNamed(String label) {
        for (int s = 0; s < strikes.shots(); s++) {
            if (strikes.label(s).equals(label)) {
                return s;
            }
        }
        throw new UserFault("\"" + label + "\" is no shot of this player.");
    }

    boolean isTouch(int shot) {
        return strikes.isTouch(shot);
    }

    /** Where a shot towards an aim is meant to end: a swing at its own length, a touch shot as near as it may. */
    Place reach(Place ball, int shot, Place aim) {
        double wanted = ball.distanceTo(aim);
        double metres = strikes.isTouch(shot) ? strikes.touch(shot).possibleMetres(wanted) : strikes.lengthMetres(shot);
        return ball.along(ball.bearingTo(aim), metres);
    }

    /** A tee shot of target play in words. */
    StateOfPlay.TeeShot word(HoleTarget.TeeShot shot) {
        double offset = offset(tee, shot.aim());
        String landmark = new Landmarks(map).line(tee, shot.aim(), offset).words();
        return new StateOfPlay.TeeShot(strikes.label(shot.shot()), shot.aim(), offset, landmark, shot.gain());
    }
}
