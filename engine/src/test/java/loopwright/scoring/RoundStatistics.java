package loopwright.scoring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import loopwright.course.CourseMap;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.Habit;
import loopwright.player.Player;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.strategy.Ability;
import loopwright.strategy.Choice;
import loopwright.strategy.HabitPlay;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.Policy;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import loopwright.units.Distance;

/** Plays one golfer's rounds on some holes with the referee and counts what golfers count. */
final class RoundStatistics {
    /** Coarser than a plan: an error of a few hundredths a round is small beside what is compared. */
    private static final SolverSettings ROUGHLY = new SolverSettings(16, 8, 8, 32, 64, 512);

    private static final double NEAR_METRES = Distance.ofYards(30).metres();

    /** By surface: how often it was played from near the green, and how often saved. */
    private final Map<Surface, double[]> saves = new EnumMap<>(Surface.class);

    private final int rounds;
    double score;
    double squares;
    double greens;
    double drives;
    double fairways;
    double replayedDrives;
    double putts;
    double threePutts;
    double penalties;
    double doubles;

    private RoundStatistics(int rounds) {
        this.rounds = rounds;
    }

    /** Rounds by habit, or by the plan. */
    static RoundStatistics of(List<ReferenceCourse.Ground> holes, Player player, boolean habit, int rounds) {
        LevelGreenOdds odds = new LevelGreenOdds(player.putting(), GreenSpeed.ofRollMetres(3.048));
        StrikeModel strikes = new StrikeModel(player);
        Ability ability = new Ability(strikes, odds, 1);
        RoundStatistics out = new RoundStatistics(rounds);
        double[] total = new double[rounds];
        for (ReferenceCourse.Ground g : holes) {
            CourseMap map = new CourseMap(g.course(), g.hole());
            MeanSolution plan =
                    MeanSolver.solve(new HoleProblem(map, g.tee(), ability, ROUGHLY, ShotRules.FREE), Watch.NONE);
            MeanSolution played = habit ? new HabitPlay(plan, Habit.USUAL).played() : plan;
            PolicyEvaluation worth = played.evaluate(Watch.NONE);
            Counting policy = new Counting(played.policy(worth));
            PlayOut referee = new PlayOut(map, g.tee(), strikes, new LevelGreenPlay(odds), policy);
            RandomGenerator random = new SplittableRandom(g.hole().number());
            for (int i = 0; i < rounds; i++) {
                policy.seen.clear();
                PlayOut.HoleScore s = referee.play(random);
                total[i] += s.strokes();
                out.count(g, s, policy.seen);
            }
        }
        for (double t : total) {
            out.score += t / rounds;
            out.squares += t * t / rounds;
        }
        return out;
    }

    private record Seen(Place place, Surface surface) {}

    private void count(ReferenceCourse.Ground g, PlayOut.HoleScore s, List<Seen> seen) {
        int par = g.hole().par();
        greens += s.strokes() - s.putts() <= par - 2 && s.putts() > 0 ? 1 : 0;
        putts += s.putts();
        threePutts += s.putts() >= 3 ? 1 : 0;
        penalties += s.penaltyStrokes();
        doubles += s.strokes() >= par + 2 ? 1 : 0;
        if (par > 3) {
            drives++;
            if (seen.size() > 1) {
                fairways += seen.get(1).surface == Surface.FAIRWAY ? 1 : 0;
                replayedDrives += seen.get(1).surface == Surface.TEE ? 1 : 0;
            }
        }
        countSave(g.hole().holeLocation(), s, seen);
    }

    /** The first stroke from within 30 yd off the green: saved if the ball is down with it and at most one putt. */
    private void countSave(Place location, PlayOut.HoleScore s, List<Seen> seen) {
        for (int i = 0; i < seen.size(); i++) {
            if (seen.get(i).place.distanceTo(location) < NEAR_METRES) {
                double[] saved = saves.computeIfAbsent(seen.get(i).surface, x -> new double[2]);
                saved[0]++;
                saved[1] += i == seen.size() - 1 && s.putts() <= 1 ? 1 : 0;
                return;
            }
        }
    }

    double deviation() {
        return Math.sqrt(squares - score * score);
    }

    double standardError() {
        return deviation() / Math.sqrt(rounds);
    }

    double greensShare(int holes) {
        return greens / (rounds * holes);
    }

    double replayedShare() {
        return replayedDrives / drives;
    }

    String line(String name, int holes) {
        StringBuilder saved = new StringBuilder();
        saves.forEach((k, v) ->
                saved.append(String.format(Locale.ROOT, " %s %.0f%% of %.1f", k, 100 * v[1] / v[0], v[0] / rounds)));
        return String.format(
                Locale.ROOT,
                "%-28s score %.2f (SD %.2f)  greens %.1f%%  fairways %.1f%%  replayed %.2f%%  putts %.1f  three-putts %.2f"
                        + "  penalties %.2f  doubles %.2f  saved within 30 yd:%s",
                name,
                score,
                deviation(),
                100 * greensShare(holes),
                100 * fairways / drives,
                100 * replayedShare(),
                putts / rounds,
                threePutts / rounds,
                penalties / rounds,
                doubles / rounds,
                saved);
    }

    /** Notes where every stroke off the green was played from. */
    private static final class Counting implements Policy {
        private final Policy policy;
        private final List<Seen> seen = new ArrayList<>();

        Counting(Policy policy) {
            this.policy = policy;
        }

        @Override
        public Choice choose(Place ball, Surface surface, Situation situation) {
            seen.add(new Seen(ball, surface));
            return policy.choose(ball, surface, situation);
        }

        @Override
        public double value(Place ball, Surface surface, Situation situation) {
            return policy.value(ball, surface, situation);
        }

        @Override
        public double valueOfDrop(Place place, Surface surface) {
            return policy.valueOfDrop(place, surface);
        }
    }
}
