package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Box;
import loopwright.geo.Line;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.SituationTable;
import loopwright.strategy.Ability;
import loopwright.strategy.Advice;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.PolicyEvaluation;
import loopwright.units.Distance;

/** A hole that is solved and kept, so that a question about any spot or aim is answered from it at once. */
public final class SolvedHole {
    /** Ground beside the line of play over which strokes are drawn. */
    private static final double FIELD_MARGIN_METRES = 45;

    private static final double FIELD_CELL_METRES = 4;
    private static final double LINE_STEP_METRES = 0.5;
    private static final double AIM_GRID = 0.5 * Distance.METRES_PER_YARD;

    private final Course course;
    private final String tees;
    private final PlannedShots shots;
    private final MeanSolution solution;
    private final PolicyEvaluation evaluation;
    private final Advice advice;
    private final HabitPlay habit;
    private final RoundPlan.HolePlan plan;
    private final Supplier<List<Ability>> drawn;
    private final boolean first;
    /** While an aim is dragged the ball stays, and several may look at one hole. */
    private static final int KEPT_SPOTS = 200;

    private final Remembered<Place, Spot> spots = new Remembered<>(KEPT_SPOTS);

    SolvedHole(
            Course course,
            String tees,
            PlannedShots shots,
            MeanSolution solution,
            PolicyEvaluation evaluation,
            HabitPlay habit,
            RoundPlan.HolePlan plan,
            Supplier<List<Ability>> drawn,
            boolean first) {
        this.first = first;
        this.solution = solution;
        this.drawn = drawn;
        this.course = course;
        this.tees = tees;
        this.shots = shots;
        this.evaluation = evaluation;
        this.advice = new Advice(solution, evaluation);
        this.habit = habit;
        this.plan = plan;
    }

    /** What can be done from a spot: the best in full, and all clubs beside it, cheapest first. */
    public record Spot(
            Place ball,
            Surface lie,
            double toHoleMetres,
            RoundPlan.ShotPlan best,
            double bestError,
            List<RoundPlan.Alternative> ways) {
        public Spot {
            ways = List.copyOf(ways);
        }
    }

    /** True for a first, coarse answer that is to be refined. */
    public boolean isFirst() {
        return first;
    }

    public RoundPlan.HolePlan plan() {
        return plan;
    }

    public Course course() {
        return course;
    }

    public Hole hole() {
        return course.getHole(plan.number());
    }

    public String tees() {
        return tees;
    }

    /** The surface at a place; at the tee the tee, whatever the map has there. */
    public Surface lieAt(Place ball) {
        return ball.distanceTo(plan.tee()) < 1 ? Surface.TEE : shots.surfaceAt(ball);
    }

    /** Everything that can be played from a spot off the green. */
    public Spot at(Place ball) {
        return spots.get(ball, () -> search(ball));
    }

    private synchronized Spot search(Place ball) {
        Surface lie = playableLie(ball);
        Situation situation = SituationTable.of(lie).get(0).situation();
        List<Advice.Rated> rated = advice.byShot(ball, lie, situation);
        Advice.Rated best = rated.get(0);
        List<RoundPlan.Alternative> ways = new ArrayList<>();
        rated.forEach(r -> ways.add(shots.alternative(ball, r, best)));
        return new Spot(
                ball,
                lie,
                ball.distanceTo(hole().holeLocation()),
                shots.shot(advice, habit, ball, lie, situation, best, advice.finish(ball, lie, situation, best)),
                best.standardError(),
                ways);
    }

    /** Where a club is aimed if the hand points here: at its own length, on a grid of half a yard, so that aims repeat. */
    public Place aimToward(Place ball, String club, Place pointed) {
        Place aim = shots.reach(ball, shots.shotNamed(club), pointed);
        return new Place(AIM_GRID * Math.rint(aim.x() / AIM_GRID), AIM_GRID * Math.rint(aim.y() / AIM_GRID));
    }

    /** One club at one aim from a spot: where it finishes and what it is worth, without a search for better ones. */
    public synchronized Aimed aimed(Place ball, String club, Place aim) {
        Surface lie = playableLie(ball);
        Situation situation = SituationTable.of(lie).get(0).situation();
        int shot = shots.shotNamed(club);
        Advice.Rated rated = advice.rate(ball, lie, situation, shot, shots.reach(ball, shot, aim));
        Advice.Finish finish = advice.finish(ball, lie, situation, rated);
        return new Aimed(
                shots.offset(ball, rated.target()), rated.target(), rated.expected(), rated.standardError(), finish);
    }

    /** Expected strokes over the aims from a spot, round the planned one; every {@code unit} has round numbers of its own. */
    public AimField aims(Place ball, LengthUnit unit) {
        Spot spot = at(ball);
        Place middle = ball.distanceTo(plan.tee()) < 1
                ? plan.shots().get(0).aim()
                : spot.best().aim();
        Situation situation = SituationTable.of(spot.lie()).get(0).situation();
        return new AimSurvey(shots, () -> new Advice(solution, evaluation))
                .around(middle, ball, spot.lie(), situation, spot.ways(), unit);
    }

    /** A club at an aim. */
    public record Meant(String club, Place aim) {}

    /** Two choices from a spot. */
    public record Pair(Place ball, Meant first, Meant second) {}

    /**
     * Probability that the first of two choices costs fewer strokes than the second, given how well the player is known:
     * both are valued for the same drawn players, as in {@link HowSure.Beats}.
     */
    public double chanceFirstIsBetter(Pair pair, Watch watch) {
        Surface lie = playableLie(pair.ball());
        Situation situation = SituationTable.of(lie).get(0).situation();
        return DrawnPlayers.beats(Cores.all(drawn.get(), a -> cost(pair, lie, situation, a), watch));
    }

    private double cost(Pair pair, Surface lie, Situation situation, Ability player) {
        Advice his = new Advice(solution, evaluation, player);
        Advice.Rated planned = rated(his, pair.ball(), lie, situation, pair.first());
        return rated(his, pair.ball(), lie, situation, pair.second()).costBeside(planned);
    }

    private Advice.Rated rated(Advice by, Place ball, Surface lie, Situation situation, Meant meant) {
        return by.rate(ball, lie, situation, shots.shotNamed(meant.club()), meant.aim());
    }

    /** A place so far from the hole, and so far beside the line of play, + right as the hole is looked at. */
    public Place placeAt(double toHoleMetres, double rightMetres) {
        Place pin = hole().holeLocation();
        Line line = hole().lineFrom(plan.tee());
        double along = line.lengthMetres();
        while (along > 0 && line.placeAt(along).distanceTo(pin) < toHoleMetres) {
            along -= LINE_STEP_METRES;
        }
        double turn = Math.asin(Math.max(-1, Math.min(1, rightMetres / Math.max(LINE_STEP_METRES, toHoleMetres))));
        return pin.along(pin.bearingTo(line.placeAt(Math.max(0, along))) - turn, toHoleMetres);
    }

    /** The aim of a club so far beside the line of play, + right. */
    public Place aimBeside(Place ball, String club, double offsetMetres) {
        return shots.aimBeside(ball, shots.shotNamed(club), offsetMetres);
    }

    /** A club at an aim, rated. */
    public record Aimed(double offsetMetres, Place aim, double expected, double standardError, Advice.Finish finish) {}

    private Surface playableLie(Place ball) {
        Surface lie = lieAt(ball);
        if (lie == Surface.GREEN || !lie.isPlayable()) {
            throw new UserFault(String.format(
                    Locale.ROOT,
                    "No club is played from here (%s); put the ball where a shot can be played.",
                    Rooms.words(lie)));
        }
        return lie;
    }

    /** A planned shot as it is drawn. */
    public static HolePicture.Shot drawn(RoundPlan.ShotPlan shot) {
        return PlanPictures.shot(shot);
    }

    /** A place on the green as a hole location is typed: "7:12,5". */
    public String locationAt(Place place) {
        return HoleLocations.describe(hole(), place);
    }

    /** Strokes to hole out over the ground of the hole. */
    public HolePicture.StrokesField strokes() {
        List<Place> places = new ArrayList<>(hole().lineFrom(plan.tee()).places());
        hole().green().polygons().forEach(p -> places.addAll(p.get(0)));
        return new HolePicture.StrokesField(
                Box.around(places).grown(FIELD_MARGIN_METRES), FIELD_CELL_METRES, evaluation::expectedFrom);
    }

    /** The hole as it is drawn, with these shots. */
    public HolePicture picture(List<HolePicture.Shot> shots) {
        return new HolePicture(
                course,
                hole(),
                tees,
                plan.tee(),
                plan.lengthMetres(),
                "",
                shots,
                List.of(),
                Optional.empty(),
                List.of());
    }
}
