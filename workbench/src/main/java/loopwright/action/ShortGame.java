package loopwright.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.course.AreaKind;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.StrikeModel;
import loopwright.player.TouchShot;
import loopwright.putting.ChipIn;
import loopwright.putting.GreenOdds;
import loopwright.putting.LevelGreenOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.Advice;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import loopwright.units.Distance;

/** Makes a player's short-game table: putt, chip, pitch, lob and bunker shot compete on plain greens. */
public final class ShortGame {
    private static final double YARD = Distance.METRES_PER_YARD;
    private static final double[] YARDS = {6, 10, 15, 20, 30, 40};
    private static final double[] ROOM_YARDS = {3, 7, 14};
    /** A ball so near the edge lies on it. */
    private static final double OFF_THE_GREEN_METRES = 1.5;

    private static final double TEE_METRES = 60;

    /** A lie of the table; {@code ground} is what lies between it and the green. */
    private record Lie(Surface surface, Situation situation, Optional<AreaKind> ground) {}

    private static final List<Lie> LIES = List.of(
            new Lie(Surface.FAIRWAY, Situation.ORDINARY, Optional.of(AreaKind.FAIRWAY)),
            new Lie(Surface.ROUGH, Situation.ORDINARY, Optional.empty()),
            new Lie(Surface.ROUGH, Situation.DOWN, Optional.empty()),
            new Lie(Surface.BUNKER, Situation.ORDINARY, Optional.of(AreaKind.BUNKER)));

    private final PlayerFiles players;

    public ShortGame(PlayerFiles players) {
        this.players = players;
    }

    public ShortGameTable table(Path playerFile, PlanDay day, long seed, Watch watch) {
        Player player = players.read(playerFile).player();
        LevelGreenOdds odds = new LevelGreenOdds(player.putting(), day.greens());
        Ability ability = new Ability(new StrikeModel(player), odds, seed);
        List<Piece> pieces = new ArrayList<>();
        for (Lie lie : LIES) {
            for (double room : ROOM_YARDS) {
                pieces.add(new Piece(lie, room * YARD));
            }
        }
        List<List<ShortGameTable.Spot>> spots =
                Cores.all(pieces, p -> spots(p, ability, odds, watch.withoutProgress()), watch);
        return new ShortGameTable(
                player.name(), spots.stream().flatMap(List::stream).toList(), assumed(ability.strikes()));
    }

    private record Piece(Lie lie, double room) {}

    private static List<String> assumed(StrikeModel strikes) {
        List<String> out = new ArrayList<>();
        for (int s = 0; s < strikes.shots(); s++) {
            if (strikes.isTouch(s)
                    && strikes.touch(s).kind() != TouchShot.Kind.PUNCH
                    && strikes.touch(s).evidence().isMostlyAssumed()) {
                out.add(strikes.label(s));
            }
        }
        return out;
    }

    private static List<ShortGameTable.Spot> spots(Piece piece, Ability ability, LevelGreenOdds odds, Watch watch) {
        PlainHole plain = PlainHole.of(TEE_METRES, piece.room, piece.lie.ground);
        Place hole = plain.hole().holeLocation();
        MeanSolution solution = MeanSolver.solve(
                new HoleProblem(
                        plain.map(),
                        plain.tee(),
                        ability,
                        SolverSettings.STANDARD,
                        ShotRules.FREE,
                        GreenOdds.level(odds, hole.x(), hole.y())),
                watch);
        Advice advice = new Advice(solution, solution.evaluate(watch));
        List<ShortGameTable.Spot> out = new ArrayList<>();
        for (double yards : YARDS) {
            double metres = yards * YARD;
            if (metres > piece.room + OFF_THE_GREEN_METRES) {
                watch.check();
                out.add(new ShortGameTable.Spot(
                        piece.lie.surface,
                        piece.lie.situation,
                        metres,
                        piece.room,
                        ways(advice, plain.shortOf(metres), hole, piece.lie, ability.strikes(), odds)));
            }
        }
        return out;
    }

    private static List<ShortGameTable.Way> ways(
            Advice advice, Place ball, Place hole, Lie lie, StrikeModel strikes, LevelGreenOdds odds) {
        List<ShortGameTable.Way> out = new ArrayList<>();
        for (Advice.Rated r : advice.byShot(ball, lie.surface, lie.situation)) {
            if (strikes.isTouch(r.shot()) || out.isEmpty()) {
                List<Advice.Rest> rests = advice.rests(ball, lie.surface, lie.situation, r);
                out.add(way(r, rests, ball, hole, strikes.label(r.shot()), odds));
            }
        }
        return out;
    }

    private static ShortGameTable.Way way(
            Advice.Rated rated, List<Advice.Rest> rests, Place ball, Place hole, String shot, LevelGreenOdds odds) {
        double three = 0;
        double six = 0;
        double upAndDown = 0;
        double off = 0;
        for (Advice.Rest r : rests) {
            double left = r.place().distanceTo(hole);
            if (r.surface() != Surface.GREEN) {
                off += r.chance();
            } else {
                three += left <= 3 * Distance.METRES_PER_FOOT ? r.chance() : 0;
                six += left <= 6 * Distance.METRES_PER_FOOT ? r.chance() : 0;
                upAndDown += r.chance() * (left <= ChipIn.RADIUS_METRES ? 1 : odds.probability(left, 1));
            }
        }
        double beyond = ball.distanceTo(rated.target()) - ball.distanceTo(hole);
        return new ShortGameTable.Way(
                shot, beyond, rated.expected(), rated.standardError(), three, six, upAndDown, off);
    }
}
