package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.random.RandomGenerator;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.player.SituationTable;
import loopwright.player.StrikeModel;
import loopwright.putting.LevelGreenOdds;
import loopwright.rules.Relief;
import loopwright.strategy.Choice;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.Policy;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;

/** Plays a hole stroke by stroke with the referee and writes every stroke down as a careful player would. */
final class PlayedHole {
    private final HoleProblem problem;
    private final LocalFrame frame;
    private final StrikeModel strikes;
    private final Policy plan;
    private final LevelGreenOdds green;
    private final boolean lucky;
    private final List<ShotRecord> shots = new ArrayList<>();

    /** {@code plan} decides between reliefs; where {@code lucky}, every ball lies as well as it can. */
    PlayedHole(HoleProblem problem, StrikeModel strikes, Policy plan, LevelGreenOdds green, boolean lucky) {
        this.problem = problem;
        this.strikes = strikes;
        this.plan = plan;
        this.green = green;
        this.lucky = lucky;
        frame = new LocalFrame(problem.map().course().origin());
    }

    /** What a player decides off the green. */
    interface Decider {
        Choice.Stroke choose(Place ball, Surface surface, Situation situation);
    }

    /** Where the ball lies after a stroke, thrown to stop the referee there. */
    private static final class Lies extends RuntimeException {
        private static final long serialVersionUID = 1L;
        final transient Place ball;
        final Surface surface;
        final Situation situation;
        final int strokes;

        Lies(Place ball, Surface surface, Situation situation, int strokes) {
            super(null, null, false, false);
            this.ball = ball;
            this.surface = surface;
            this.situation = situation;
            this.strokes = strokes;
        }
    }

    HoleRecord play(Decider decider, RandomGenerator random) {
        Place ball = problem.tee();
        Surface surface = Surface.TEE;
        Situation situation = Situation.ORDINARY;
        while (surface != Surface.GREEN) {
            Choice.Stroke choice = decider.choose(ball, surface, situation);
            Lies next = stroke(choice, ball, surface, situation, random);
            shots.add(new ShotRecord(
                    Optional.of(strikes.label(choice.shot())),
                    BenchmarkMaker.lieOf(surface),
                    toHole(ball),
                    Optional.of(frame.toLatLon(ball)),
                    next == null ? 0 : next.strokes - 1,
                    surface == Surface.TEE ? Optional.empty() : Optional.of(situation),
                    new Intent(
                            Optional.empty(),
                            Optional.of(frame.toLatLon(choice.target())),
                            Optional.empty(),
                            Optional.empty())));
            if (next == null) {
                return record();
            }
            ball = next.ball;
            surface = next.surface;
            situation = lucky ? best(surface) : next.situation;
        }
        putts(ball, random);
        return record();
    }

    /** The stroke as the referee sees it; null if it was holed. */
    private @Nullable Lies stroke(
            Choice.Stroke choice, Place ball, Surface surface, Situation situation, RandomGenerator random) {
        Stopping stop = new Stopping(0);
        PlayOut referee = new PlayOut(problem.map(), problem.tee(), strikes, stop, stop);
        try {
            referee.playFirst(choice, ball, surface, situation, random);
            return null;
        } catch (Lies lies) {
            return lies;
        }
    }

    private static Situation best(Surface surface) {
        List<Situation> good = List.of(Situation.SITTING_UP, Situation.CLEAR, Situation.ORDINARY);
        return good.stream()
                .filter(s -> SituationTable.of(surface).stream().anyMatch(c -> c.situation() == s))
                .findFirst()
                .orElseThrow();
    }

    private void putts(Place first, RandomGenerator random) {
        Place hole = problem.hole();
        double bearing = hole.bearingTo(first);
        double left = first.distanceTo(hole);
        while (left > 0) {
            Place ball = hole.along(bearing, left);
            shots.add(new ShotRecord(
                    Optional.of("putter"), Lie.GREEN, toHole(ball), Optional.of(frame.toLatLon(ball)), 0));
            left = green.putt()
                    .play(left, green.bestOvershootMetres(left), random.nextGaussian(), random.nextGaussian());
        }
    }

    private Distance toHole(Place ball) {
        return Distance.ofMetres(ball.distanceTo(problem.hole()));
    }

    private HoleRecord record() {
        return new HoleRecord(
                problem.map().hole().number(),
                OptionalInt.of(problem.map().hole().par()),
                Optional.empty(),
                OptionalInt.empty(),
                HoleEnd.HOLED,
                Set.of(),
                HoleCounts.NONE,
                shots,
                Optional.empty());
    }

    /** Stops the referee at the first choice or putt after a stroke. */
    private final class Stopping implements Policy, GreenPlay {
        private final int strokes;

        Stopping(int strokes) {
            this.strokes = strokes;
        }

        @Override
        public Policy afterStrokes(int n) {
            return new Stopping(n);
        }

        @Override
        public Choice choose(Place ball, Surface surface, Situation situation) {
            throw new Lies(ball, surface, situation, strokes);
        }

        @Override
        public int putts(Place ball, Place hole, RandomGenerator random) {
            throw new IllegalStateException("the referee tells the strokes");
        }

        @Override
        public int putts(Place ball, Place hole, int n, RandomGenerator random) {
            throw new Lies(ball, Surface.GREEN, Situation.ORDINARY, n);
        }

        @Override
        public double value(Place ball, Surface surface, Situation situation) {
            return plan.value(ball, surface, situation);
        }

        @Override
        public double valueOfDrop(Place place, Surface surface) {
            return plan.valueOfDrop(place, surface);
        }

        @Override
        public double costOfReplay(Place from, Surface surface, Situation situation) {
            return plan.costOfReplay(from, surface, situation);
        }

        @Override
        public double costOfDrop(Relief.Option drop, Surface surface) {
            return plan.costOfDrop(drop, surface);
        }
    }
}
