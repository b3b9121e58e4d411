package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.course.AreaKind;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.Evidence;
import loopwright.player.Player;
import loopwright.player.ShotPattern;
import loopwright.player.Swing;
import loopwright.putting.GreenOdds;
import loopwright.putting.LevelGreenOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.Advice;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import loopwright.units.Distance;

/** Makes the wedge table of a player: one plain hole is solved, and every distance in front of it is asked of it. */
public final class WedgeAdviser {
    private static final double YARD = Distance.METRES_PER_YARD;
    private static final int SHORTEST = 20;
    private static final int STEP = 5;
    private static final double LONGEST_METRES = 130 * YARD;
    /** Standard deviations either side that hold 8 of 10 of a normal law. */
    private static final double EIGHT_IN_TEN = 1.2816;

    private final PlayerFiles players;

    public WedgeAdviser(PlayerFiles players) {
        this.players = players;
    }

    /** The table from the fairway or from the rough as it usually lies, in steps of five of the reader's unit from twenty. */
    public WedgeTable table(Path playerFile, Surface lie, PlanDay day, LengthUnit unit, long seed, Watch watch) {
        if (lie != Surface.FAIRWAY && lie != Surface.ROUGH) {
            throw new UserFault("A wedge table is made for the fairway or the rough, not for the " + Rooms.words(lie)
                    + "; see the short-game table for the rest.");
        }
        Player player = players.read(playerFile).player();
        Ground ground = new Ground(player, lie, day, seed, watch);
        List<WedgeTable.Row> rows = new ArrayList<>();
        int count = (int) Math.round((LONGEST_METRES / unit.inMetres() - SHORTEST) / STEP) + 1;
        for (int i = 0; i < count; i++) {
            watch.check();
            rows.add(ground.row((SHORTEST + STEP * i) * unit.inMetres()));
            watch.at(i + 1, count + 1);
        }
        List<WedgeTable.Reach> reaches = reaches(player);
        List<WedgeTable.Gap> gaps = ground.gaps();
        watch.at(count + 1, count + 1);
        return new WedgeTable(player.name(), lie, unit, reaches, rows, gaps, measure(player, rows));
    }

    private static List<WedgeTable.Reach> reaches(Player player) {
        return player.swings().stream()
                .filter(s -> s.pattern().totalMetres() <= LONGEST_METRES + 2 * STEP * YARD)
                .map(WedgeAdviser::reach)
                .toList();
    }

    private static WedgeTable.Reach reach(Swing s) {
        ShotPattern p = s.pattern();
        return new WedgeTable.Reach(
                s,
                p.carryMetres(),
                p.runMetres(),
                2 * EIGHT_IN_TEN * p.carrySdMetres(),
                2 * EIGHT_IN_TEN * p.carryMetres() * Math.tan(p.directionSdRadians()),
                p.mishitRate());
    }

    private static List<String> measure(Player player, List<WedgeTable.Row> rows) {
        Map<String, Integer> uses = new LinkedHashMap<>();
        rows.forEach(r -> uses.merge(r.shot(), 1, Integer::sum));
        return player.swings().stream()
                .filter(s -> s.evidence().isMostlyAssumed() && uses.containsKey(s.label()))
                .map(Swing::label)
                .sorted(Comparator.comparingInt((String label) -> -uses.getOrDefault(label, 0)))
                .toList();
    }

    /** The solved plain hole. */
    private static final class Ground {
        private final Player player;
        private final Surface lie;
        private final PlanDay day;
        private final long seed;
        private final PlainHole plain =
                PlainHole.of(LONGEST_METRES + 20 * YARD, PlainHole.GREEN_RADIUS_METRES, Optional.of(AreaKind.FAIRWAY));
        private final LevelGreenOdds odds;
        private final Ability ability;
        private final MeanSolution solution;
        private final PolicyEvaluation evaluation;
        private final Advice advice;

        Ground(Player player, Surface lie, PlanDay day, long seed, Watch watch) {
            this.player = player;
            this.lie = lie;
            this.day = day;
            this.seed = seed;
            odds = new LevelGreenOdds(player.putting(), day.greens());
            ability = ability(player);
            Place hole = plain.hole().holeLocation();
            solution = MeanSolver.solve(
                    new HoleProblem(
                            plain.map(),
                            plain.tee(),
                            ability,
                            SolverSettings.STANDARD,
                            ShotRules.FREE,
                            GreenOdds.level(odds, hole.x(), hole.y())),
                    watch.withoutProgress());
            evaluation = solution.evaluate(watch.withoutProgress());
            advice = new Advice(solution, evaluation);
        }

        private Ability ability(Player whose) {
            return new Ability(RoundSetup.strikes(whose, day, plain.course()), odds, seed);
        }

        WedgeTable.Row row(double metres) {
            Place ball = plain.shortOf(metres);
            List<Advice.Rated> all = advice.byShot(ball, lie, Situation.ORDINARY);
            Advice.Rated best = all.get(0);
            Advice.Finish finish = advice.finish(ball, lie, Situation.ORDINARY, best);
            double[] left = finish.sample().stream()
                    .mapToDouble(p -> p.distanceTo(plain.hole().holeLocation()))
                    .sorted()
                    .toArray();
            return new WedgeTable.Row(
                    metres,
                    label(best),
                    best.expected(),
                    best.standardError(),
                    finish.share().getOrDefault(Surface.GREEN, 0.0),
                    left[(int) (0.8 * (left.length - 1))],
                    all.stream().skip(1).findFirst().map(r -> beside(ball, r, best)));
        }

        private RoundPlan.Alternative beside(Place ball, Advice.Rated r, Advice.Rated best) {
            double offset = ball.distanceTo(r.target())
                    * Math.sin(ball.bearingTo(r.target())
                            - ball.bearingTo(plain.hole().holeLocation()));
            return new RoundPlan.Alternative(
                    label(r), r.target(), offset, r.costBeside(best), r.costError(best), false);
        }

        private String label(Advice.Rated rated) {
            return ability.strikes().label(rated.shot());
        }

        /** Lengths between neighbours, touch shots being as long as they are meant. */
        List<WedgeTable.Gap> gaps() {
            double touch = player.touchShots().stream()
                    .mapToDouble(t -> t.maxMetres())
                    .max()
                    .orElse(0);
            List<Swing> shortestFirst = player.swings().stream()
                    .filter(s -> s.pattern().totalMetres() > touch)
                    .sorted(Comparator.comparingDouble(s -> s.pattern().totalMetres()))
                    .toList();
            List<WedgeTable.Gap> out = new ArrayList<>();
            for (int i = 1; i < shortestFirst.size(); i++) {
                Swing a = shortestFirst.get(i - 1);
                Swing b = shortestFirst.get(i);
                double from = a.pattern().totalMetres();
                double to = b.pattern().totalMetres();
                if (to <= LONGEST_METRES && to - from > WedgeTable.LEAST_GAP_METRES) {
                    out.add(gap(a, b));
                }
            }
            return out;
        }

        private WedgeTable.Gap gap(Swing shorter, Swing longer) {
            double from = shorter.pattern().totalMetres();
            double to = longer.pattern().totalMetres();
            double middle = (from + to) / 2;
            Swing made = new Swing(longer.club(), "made up", longer.pattern().longer(middle / to), Evidence.ASSUMED);
            List<Swing> more = new ArrayList<>(player.swings());
            more.add(made);
            Player with = new Player(
                    player.name(),
                    player.hand(),
                    player.level(),
                    more,
                    player.touchShots(),
                    player.putting(),
                    player.lostBallsPerRound());
            Place ball = plain.shortOf(middle);
            Advice.Rated now = advice.byShot(ball, lie, Situation.ORDINARY).get(0);
            Advice.Rated then = new Advice(solution, evaluation, ability(with))
                    .aimed(ball, lie, Situation.ORDINARY, more.size() - 1);
            return new WedgeTable.Gap(
                    shorter.label(), from, longer.label(), to, now.costBeside(then), now.costError(then));
        }
    }
}
