package loopwright.action;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.Club;
import loopwright.player.ShotPattern;
import loopwright.player.Swing;
import loopwright.strategy.Advice;
import loopwright.strategy.DayAbility;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ScoreDistribution;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;

/**
 * One hole from one place of tees, solved for comparing.
 *
 * @param byDay its score on every day that counts
 * @param approaches clubs left by the planned tee shot, where it stays in play
 * @param inTwo chance that the planned tee shot leaves the green in reach of one more stroke; {@code inThree}: of two more
 */
record TeeHole(
        int number,
        int par,
        List<ScoreDistribution> byDay,
        double lost,
        ApproachClubs approaches,
        double inTwo,
        double inThree,
        Optional<TeesAnswer.ForcedCarry> carryBeyond) {
    private static final double STEP_METRES = 2;
    /** A penalty area is carried, not gone round, where it covers the ground so far to both sides (assumed). */
    private static final double[] ACROSS_METRES = {-15, -10, -5, 0, 5, 10, 15};
    /** Water that begins nearer to the tee than this leaves no room to lay up (assumed). */
    private static final double NO_ROOM_METRES = 40;
    /** What is kept between a ball laid up and the water (assumed). */
    private static final double MARGIN_METRES = 5;

    /** Solves a hole. {@code days} begins with the ordinary one. */
    static TeeHole of(
            CourseMap map, Place tee, List<DayAbility> days, RoundGreens.Green green, List<Swing> swings, Watch watch) {
        Hole hole = map.hole();
        MeanSolution solution = MeanSolver.solve(
                new HoleProblem(
                        map, tee, days.get(0).ability(), SolverSettings.FOR_COMPARISON, ShotRules.FREE, green.odds()),
                watch);
        PolicyEvaluation evaluation = solution.evaluate(watch);
        double lost = evaluation.expectedLost();
        List<ScoreDistribution> byDay = evaluation.scoresOn(days, watch);
        Advice advice = new Advice(solution, evaluation);
        List<Advice.Rest> left = advice
                .rests(tee, Surface.TEE, Situation.ORDINARY, advice.chosen(tee, Surface.TEE, Situation.ORDINARY))
                .stream()
                .filter(r -> r.surface().isPlayable())
                .toList();
        double longest = longestNext(swings, ShotPattern::totalMetres);
        return new TeeHole(
                hole.number(),
                hole.par(),
                byDay,
                lost,
                approaches(left, hole, swings),
                within(left, hole, longest),
                within(left, hole, 2 * longest),
                beyond(map, tee, swings));
    }

    /** What a round of these holes counts, over good and bad days. */
    static ScoreDistribution total(List<TeeHole> holes, RoundSetup setup) {
        return setup.round()
                .total(IntStream.range(0, holes.size())
                        .mapToObj(i -> holes.get(i).byDay.stream()
                                .map(s -> s.countedBy(setup.tables().get(i)))
                                .toList())
                        .toList());
    }

    /** Mean score over the days. */
    double mean(double[] weights) {
        return IntStream.range(0, weights.length)
                .mapToDouble(d -> weights[d] * byDay.get(d).mean())
                .sum();
    }

    /** The longest club besides the driver, by total length or carry. */
    private static double longestNext(List<Swing> swings, ToDoubleFunction<ShotPattern> length) {
        return swings.stream()
                .filter(s -> s.club().family() != Club.Family.DRIVER)
                .map(Swing::pattern)
                .mapToDouble(length)
                .max()
                .orElse(0);
    }

    private static ApproachClubs approaches(List<Advice.Rest> left, Hole hole, List<Swing> swings) {
        double all = left.stream().mapToDouble(Advice.Rest::chance).sum();
        ApproachClubs out = ApproachClubs.NONE;
        for (Advice.Rest r : left) {
            double metres = r.surface() == Surface.GREEN ? 0 : r.place().distanceTo(hole.holeLocation());
            out = out.plus(ApproachClubs.of(metres, swings), r.chance() / all);
        }
        return out;
    }

    private static double within(List<Advice.Rest> left, Hole hole, double metres) {
        return left.stream()
                .filter(r -> r.place().distanceTo(hole.holeLocation()) <= metres)
                .mapToDouble(Advice.Rest::chance)
                .sum();
    }

    /** The first carry along the line of play that the player cannot make and cannot go round. */
    private static Optional<TeesAnswer.ForcedCarry> beyond(CourseMap map, Place tee, List<Swing> swings) {
        double fromTee = swings.stream()
                .mapToDouble(s -> s.pattern().carryMetres())
                .max()
                .orElse(0);
        double next = longestNext(swings, ShotPattern::carryMetres);
        Line line = map.hole().lineFrom(tee);
        double near = Double.NaN;
        for (double s = STEP_METRES; s < line.lengthMetres(); s += STEP_METRES) {
            boolean closed = closed(map, line, s);
            if (closed && Double.isNaN(near)) {
                near = s;
            }
            if (!closed && !Double.isNaN(near)) {
                boolean atOnce = near < NO_ROOM_METRES;
                double carry = atOnce ? s : s - near + MARGIN_METRES;
                double most = atOnce ? fromTee : next;
                if (carry > most) {
                    return Optional.of(new TeesAnswer.ForcedCarry(map.hole().number(), carry, most));
                }
                near = Double.NaN;
            }
        }
        return Optional.empty();
    }

    private static boolean closed(CourseMap map, Line line, double along) {
        Place here = line.placeAt(along);
        double bearing = line.placeAt(along - STEP_METRES).bearingTo(here);
        return IntStream.range(0, ACROSS_METRES.length)
                .allMatch(i ->
                        map.surfaceAt(here.offset(bearing, 0, ACROSS_METRES[i])).isPenaltyArea());
    }
}
