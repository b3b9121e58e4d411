package loopwright.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.RoundDay;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.scoring.ShotAttribution.Knowledge;
import loopwright.strategy.Ability;
import loopwright.strategy.Choice;
import loopwright.strategy.HoleProblem;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.MeanSolver;
import loopwright.strategy.Policy;
import loopwright.strategy.PolicyEvaluation;
import loopwright.strategy.ShotRules;
import loopwright.strategy.SolverSettings;
import loopwright.strategy.TestCourses;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rounds played out with a known cause of every lost stroke; the split must find it, and say when it cannot. */
class AttributionTest {
    private static final double EXACT = 1e-9; // sums of a hundred numbers below 10
    private static final int HOLES = 120;
    private static final int SEEDS = 30;
    /** Of 99.7 %: each seed and cause is looked at once. */
    private static final double ERRORS = 3;
    /** What raster, nodes and clouds of coarse settings leave between plan and referee on a hole, measured 0.01. */
    private static final double MODEL = 0.02;

    private static final Player PLAYER = PlayerPrior.of(92, Player.Hand.RIGHT).player("test");

    private static final HoleProblem PROBLEM = hole();
    private static final MeanSolution SOLUTION = MeanSolver.solve(PROBLEM, Watch.NONE);
    private static final PolicyEvaluation EVALUATION = SOLUTION.evaluate(Watch.NONE);

    /** A par 3 of 150 m, the hole near the right edge of its green and a pond beside it: aiming at it costs. */
    private static HoleProblem hole() {
        Place end = new Place(8, 150);
        List<Area> areas = List.of(
                TestCourses.area("tee", AreaKind.TEE, TestCourses.rectangle(-5, -6, 5, 6)),
                TestCourses.area("pond", AreaKind.RED_PENALTY_AREA, TestCourses.rectangle(13, 110, 60, 175)),
                TestCourses.area("bunker", AreaKind.BUNKER, Region.circle(new Place(-20, 146), 6)));
        Course course = TestCourses.courseWithGreen(
                areas,
                List.of(new Place(0, 0), end),
                3,
                TestCourses.rectangle(-90, -60, 90, 230),
                Region.circle(new Place(0, 150), 12));
        return new HoleProblem(
                new CourseMap(course, course.getHole(1)),
                new Place(0, 0),
                ability(PLAYER),
                new SolverSettings(16, 8, 4, 32, 64, 512),
                ShotRules.FREE);
    }

    private static Ability ability(Player player) {
        return new Ability(new StrikeModel(player), odds(), 1);
    }

    private static LevelGreenOdds odds() {
        return new LevelGreenOdds(PLAYER.putting(), GreenSpeed.ofRollMetres(10 * 0.3048));
    }

    /** How a synthetic player differs from the one the plan knows. */
    private enum Cause {
        NONE,
        AIMS_AT_THE_HOLE,
        WIDER,
        LUCKY;

        /** Which of decision, execution and luck it belongs to; -1 none. */
        int part() {
            return ordinal() - 1;
        }
    }

    private static List<HoleRecord> play(Cause cause, long seed, int holes) {
        SplittableRandom random = new SplittableRandom(seed);
        Policy plan = SOLUTION.policy(EVALUATION);
        Player who = cause == Cause.WIDER ? PLAYER.on(new RoundDay(0, 1.2, 1)) : PLAYER;
        StrikeModel strikes = new StrikeModel(who);
        LevelGreenOdds green = odds();
        List<HoleRecord> out = new ArrayList<>();
        for (int i = 0; i < holes; i++) {
            PlayedHole hole = new PlayedHole(PROBLEM, strikes, plan, green, cause == Cause.LUCKY);
            out.add(hole.play((b, on, in) -> choose(plan, cause, b, on, in), random));
        }
        return out;
    }

    private static Choice.Stroke choose(Policy plan, Cause cause, Place ball, Surface surface, Situation situation) {
        Choice chosen = plan.choose(ball, surface, situation);
        if (!(chosen instanceof Choice.Stroke stroke)) {
            throw new IllegalStateException("this hole has no unplayable lie");
        }
        if (cause != Cause.AIMS_AT_THE_HOLE || surface != Surface.TEE) {
            return stroke;
        }
        double reach = ball.distanceTo(stroke.target());
        return new Choice.Stroke(stroke.shot(), ball.along(ball.bearingTo(PROBLEM.hole()), reach));
    }

    private static Attribution attribution(boolean inferAims) {
        return new Attribution(
                SOLUTION, EVALUATION, new LocalFrame(PROBLEM.map().course().origin()), inferAims);
    }

    /** Mean of a part over the holes, and its standard error. */
    private record Part(double mean, double error, double doubt) {
        static Part of(List<List<ShotAttribution>> holes, ToDoubleFunction<ShotAttribution> part) {
            double[] each = holes.stream()
                    .mapToDouble(h -> h.stream().mapToDouble(part).sum())
                    .toArray();
            double mean = 0;
            for (double e : each) {
                mean += e / each.length;
            }
            double squares = 0;
            for (double e : each) {
                squares += (e - mean) * (e - mean);
            }
            double doubt = holes.stream()
                            .flatMap(List::stream)
                            .mapToDouble(ShotAttribution::doubt)
                            .sum()
                    / each.length;
            return new Part(mean, Math.sqrt(squares / (each.length - 1) / each.length), doubt);
        }

        void assertIs(double truth, double model, String what) {
            assertThat(mean).as("%s: %s", what, this).isCloseTo(truth, within(ERRORS * error + model));
        }
    }

    private static List<List<ShotAttribution>> split(List<HoleRecord> holes, boolean inferAims) {
        Attribution attribution = attribution(inferAims);
        return holes.stream().map(attribution::of).toList();
    }

    private static HoleRecord without(HoleRecord hole, UnaryOperator<ShotRecord> change) {
        return new HoleRecord(
                hole.number(),
                hole.par(),
                hole.length(),
                hole.writtenScore(),
                hole.end(),
                hole.marks(),
                hole.counts(),
                hole.shots().stream().map(change).toList(),
                hole.conceded());
    }

    private static ShotRecord withoutAim(ShotRecord s) {
        return new ShotRecord(s.club(), s.lie(), s.toHole(), s.place(), s.penaltyStrokes(), s.situation(), Intent.NONE);
    }

    private static ShotRecord withoutClubAndAim(ShotRecord s) {
        return new ShotRecord(Optional.empty(), s.lie(), s.toHole(), s.place(), s.penaltyStrokes());
    }

    private static void assertAddsUp(List<HoleRecord> holes, boolean inferAims) {
        Attribution attribution = attribution(inferAims);
        for (HoleRecord hole : holes) {
            double lost = attribution.of(hole).stream()
                    .mapToDouble(ShotAttribution::lost)
                    .sum();
            assertThat(lost).isCloseTo(hole.score().orElseThrow() - attribution.start(), within(EXACT));
        }
    }

    @Test
    void thePartsOfAHoleAddUpToTheScoreLessTheExpectation() {
        List<HoleRecord> holes = play(Cause.AIMS_AT_THE_HOLE, 1, 40);
        assertThat(holes).anyMatch(h -> h.penaltyStrokes().orElse(0) > 0);
        assertAddsUp(holes, true);
        assertAddsUp(play(Cause.LUCKY, 2, 20), true);
        List<HoleRecord> noAims =
                holes.stream().map(h -> without(h, AttributionTest::withoutAim)).toList();
        assertAddsUp(noAims, false);
        assertAddsUp(noAims.subList(0, 5), true);
        assertAddsUp(
                holes.stream()
                        .map(h -> without(h, AttributionTest::withoutClubAndAim))
                        .toList(),
                true);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12})
    void nothingIsFoundWhereNothingIsWrong(long seed) {
        List<List<ShotAttribution>> holes = split(play(Cause.NONE, seed, HOLES), true);
        Part.of(holes, ShotAttribution::decision).assertIs(0, MODEL, "decision");
        Part.of(holes, ShotAttribution::execution).assertIs(0, MODEL, "execution");
        Part.of(holes, ShotAttribution::luck).assertIs(0, MODEL, "luck");
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22})
    void aimingAtTheHoleIsADecision(long seed) {
        double truth = refereed(Cause.AIMS_AT_THE_HOLE) - EVALUATION.expected();
        List<List<ShotAttribution>> holes = split(play(Cause.AIMS_AT_THE_HOLE, seed, HOLES), true);
        Part decision = Part.of(holes, ShotAttribution::decision);
        assertThat(decision.mean()).isGreaterThan(0.05);
        decision.assertIs(truth, MODEL, "decision");
        Part.of(holes, ShotAttribution::execution).assertIs(0, MODEL, "execution");
    }

    /** Mean score of many rounds of one cause: what it costs, told by the referee alone. */
    private static double refereed(Cause cause) {
        return play(cause, 99, 4000).stream()
                .mapToInt(h -> h.score().orElseThrow())
                .average()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32})
    void aWiderPatternIsExecution(long seed) {
        double truth = refereed(Cause.WIDER) - EVALUATION.expected();
        List<List<ShotAttribution>> holes = split(play(Cause.WIDER, seed, HOLES), true);
        Part.of(holes, ShotAttribution::decision).assertIs(0, MODEL, "decision");
        Part execution = Part.of(holes, ShotAttribution::execution);
        execution.assertIs(truth, MODEL, "execution");
        assertThat(truth).isGreaterThan(0.05);
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42})
    void luckyLiesAreLuck(long seed) {
        List<List<ShotAttribution>> holes = split(play(Cause.LUCKY, seed, HOLES), true);
        Part luck = Part.of(holes, ShotAttribution::luck);
        assertThat(luck.mean() + ERRORS * luck.error()).isNegative();
        Part.of(holes, ShotAttribution::decision).assertIs(0, MODEL, "decision");
        Part.of(holes, ShotAttribution::execution).assertIs(0, MODEL, "execution");
    }

    /** How often the 90 % interval of a cause's mean holds what the referee says it costs, and nothing else is found. */
    @Test
    @Tag("long")
    void causesAreRecoveredOverThirtySeeds() {
        for (Cause cause : Cause.values()) {
            double whole = cause == Cause.NONE || cause == Cause.LUCKY ? 0 : refereed(cause) - EVALUATION.expected();
            int[] held = new int[3];
            double[] mean = new double[3];
            for (long seed = 100; seed < 100 + SEEDS; seed++) {
                List<List<ShotAttribution>> holes = split(play(cause, seed, HOLES), true);
                List<Part> parts = List.of(
                        Part.of(holes, ShotAttribution::decision),
                        Part.of(holes, ShotAttribution::execution),
                        Part.of(holes, ShotAttribution::luck));
                for (int i = 0; i < 3; i++) {
                    double truth = i == cause.part() ? whole : 0;
                    mean[i] += parts.get(i).mean() / SEEDS;
                    held[i] += Math.abs(parts.get(i).mean() - truth)
                                    <= 1.645 * parts.get(i).error() + MODEL
                            ? 1
                            : 0;
                }
            }
            System.out.printf(
                    "%s: costs %.3f a hole; decision %.3f (%d of 30), execution %.3f (%d), luck %.3f (%d)%n",
                    cause, whole, mean[0], held[0], mean[1], held[1], mean[2], held[2]);
            for (int i = 0; i < 3; i++) {
                if (cause != Cause.LUCKY || i < 2) {
                    // 27 of 30 are due; three standard errors of a binomial are 4.9
                    assertThat(held[i]).as("%s, part %d", cause, i).isGreaterThanOrEqualTo(22);
                }
            }
        }
    }

    @Test
    void withoutAimsItSaysSoAndItsDoubtHoldsTheTruth() {
        List<HoleRecord> noted = play(Cause.AIMS_AT_THE_HOLE, 51, 40);
        List<HoleRecord> noAims =
                noted.stream().map(h -> without(h, AttributionTest::withoutAim)).toList();
        Part truth = Part.of(split(noted, true), ShotAttribution::decision);
        List<List<ShotAttribution>> inferred = split(noAims, true);
        assertThat(knowledge(inferred)).containsExactlyInAnyOrder(Knowledge.INFERRED, Knowledge.PUTT);
        Part guessed = Part.of(inferred, ShotAttribution::decision);
        assertThat(guessed.doubt()).isGreaterThan(5 * truth.doubt());
        assertThat(guessed.mean()).isCloseTo(truth.mean(), within(1.645 * guessed.doubt() + MODEL));
        List<List<ShotAttribution>> two = split(noAims, false);
        assertThat(knowledge(two)).containsExactlyInAnyOrder(Knowledge.TWO_PARTS, Knowledge.PUTT);
        // the plan's own club: nothing to find in the club, so the aim's cost stands in the rest
        Part.of(two, ShotAttribution::decision).assertIs(0, MODEL, "decision of the club alone");
    }

    @Test
    void withoutClubAndAimNothingIsDivided() {
        List<HoleRecord> holes = play(Cause.AIMS_AT_THE_HOLE, 61, 10).stream()
                .map(h -> without(h, AttributionTest::withoutClubAndAim))
                .toList();
        List<List<ShotAttribution>> split = split(holes, true);
        assertThat(knowledge(split)).containsExactlyInAnyOrder(Knowledge.UNDIVIDED, Knowledge.PUTT);
        assertThat(Part.of(split, ShotAttribution::decision).mean()).isZero();
    }

    @Test
    void anOrdinaryMissIsOrdinary() {
        List<Double> shares = split(play(Cause.NONE, 71, HOLES), true).stream()
                .flatMap(List::stream)
                .flatMap(s -> s.fartherMisses().stream().boxed())
                .toList();
        // shares of a player's own pattern are spread evenly: mean 1/2, standard deviation 1/sqrt(12)
        double error = 1 / Math.sqrt(12.0 * shares.size());
        assertThat(shares.stream().mapToDouble(s -> s).average().orElseThrow())
                .isCloseTo(0.5, within(ERRORS * error + 0.03));
    }

    @Test
    void aHoleWithoutPlacesIsNotSplit() {
        HoleRecord hole = Records.ofShots(1, 3, Records.shot(Lie.TEE, 160, 0), Records.putt(12), Records.putt(2));
        assertThat(attribution(true).of(hole)).isEmpty();
    }

    private static Set<Knowledge> knowledge(List<List<ShotAttribution>> holes) {
        Set<Knowledge> out = EnumSet.noneOf(Knowledge.class);
        holes.forEach(h -> h.forEach(s -> out.add(s.knowledge())));
        return out;
    }
}
