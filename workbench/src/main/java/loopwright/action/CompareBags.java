package loopwright.action;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.numerics.Watch;
import loopwright.player.Club;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.strategy.ScoreDistribution;

/**
 * Sets other bags beside a player's own: the round is solved with each, with the same seeds. Two seeds tell how much of a
 * difference is noise.
 */
public final class CompareBags {
    private static final int SEEDS = 2;
    private static final int MOST_HOLES = 3;
    private static final double LEAST_GAIN = 0.005;

    private final CourseFiles courses;
    private final PlayerFiles players;

    public CompareBags(CourseFiles courses, PlayerFiles players) {
        this.courses = courses;
        this.players = players;
    }

    /** {@code swaps} as {@link BagSwap} reads them, at least one. */
    public BagAnswer compare(PlanRequest request, List<String> swaps, LengthUnit unit, Watch watch) {
        if (swaps.isEmpty()) {
            throw new UserFault("Nothing is changed; add for example --swap \"5-iron=7-wood 190 yd carry\".");
        }
        Course course = courses.read(request.course()).course();
        PlayerProfile profile = players.read(request.player());
        List<BagSwap> changes =
                swaps.stream().map(s -> BagSwap.read(s, profile.player(), unit)).toList();
        List<Player> bags = new ArrayList<>(List.of(profile.player()));
        changes.forEach(c -> bags.add(c.apply(profile.player())));
        List<List<Round>> rounds = rounds(request, course, profile, bags, watch);
        RoundSetup setup =
                RoundSetup.of(course, profile, request, request.days().get(0));
        List<String> clubs = new ArrayList<>(
                profile.player().clubs().stream().map(Club::name).toList());
        clubs.add("putter");
        return new BagAnswer(
                course.name(),
                setup.tees().name(),
                request.counting().words(request.target()),
                profile.player().name(),
                clubs,
                worth(rounds.get(0)),
                IntStream.range(0, changes.size())
                        .mapToObj(i -> change(changes.get(i), rounds.get(0), rounds.get(i + 1), setup))
                        .toList());
    }

    /**
     * A bag solved with one seed: what the round counts, the chance, how much of it a stroke is worth, and each hole's mean
     * score.
     */
    private record Round(double expected, double chance, double chancePerStroke, List<Double> holes) {}

    private record Piece(int bag, int seed, int hole) {}

    private static List<List<Round>> rounds(
            PlanRequest request, Course course, PlayerProfile profile, List<Player> bags, Watch watch) {
        List<List<RoundSetup>> setups = new ArrayList<>();
        for (Player bag : bags) {
            PlayerProfile with = new PlayerProfile(bag, profile.day(), profile.habit());
            setups.add(IntStream.range(0, SEEDS)
                    .mapToObj(s -> RoundSetup.of(
                            course,
                            with,
                            request.withSeed(request.seed() + s),
                            request.days().get(0)))
                    .toList());
        }
        int holes = setups.get(0).get(0).holes().size();
        request.counting().checkTarget(request.target(), holes);
        List<Piece> pieces = new ArrayList<>();
        for (int bag = 0; bag < bags.size(); bag++) {
            for (int seed = 0; seed < SEEDS; seed++) {
                for (int hole = 0; hole < holes; hole++) {
                    pieces.add(new Piece(bag, seed, hole));
                }
            }
        }
        List<TeeHole> solved =
                Cores.all(pieces, p -> hole(setups.get(p.bag).get(p.seed), p.hole, watch.withoutProgress()), watch);
        List<List<Round>> out = new ArrayList<>();
        for (int bag = 0; bag < bags.size(); bag++) {
            List<Round> seeds = new ArrayList<>();
            for (int seed = 0; seed < SEEDS; seed++) {
                int first = (bag * SEEDS + seed) * holes;
                seeds.add(round(request, setups.get(bag).get(seed), solved.subList(first, first + holes)));
            }
            out.add(seeds);
        }
        return out;
    }

    private static TeeHole hole(RoundSetup setup, int i, Watch watch) {
        CourseMap map = new CourseMap(setup.course(), setup.holes().get(i));
        return TeeHole.of(
                map,
                setup.tees().getPlace(map.hole().number()).place(),
                setup.round().days(),
                setup.greens().of(map.hole()),
                setup.profile().player().swings(),
                watch);
    }

    private static Round round(PlanRequest request, RoundSetup setup, List<TeeHole> holes) {
        ScoreDistribution total = TeeHole.total(holes, setup);
        double mean = request.counting().form() == Counting.Form.STABLEFORD ? -total.mean() : total.mean();
        double[] weights = setup.round().weights();
        int limit = request.counting().limit(request.target());
        return new Round(
                mean,
                total.probabilityAtMost(limit),
                (total.probability(limit) + total.probability(limit + 1)) / 2,
                holes.stream().map(h -> h.mean(weights)).toList());
    }

    private static BagAnswer.Worth worth(List<Round> seeds) {
        return new BagAnswer.Worth(
                seeds.stream().mapToDouble(Round::expected).average().orElseThrow(),
                seeds.stream().mapToDouble(Round::chance).average().orElseThrow());
    }

    private static BagAnswer.Change change(BagSwap swap, List<Round> now, List<Round> then, RoundSetup setup) {
        double gain = worth(then).chance() - worth(now).chance();
        List<BagAnswer.HoleGain> holes = IntStream.range(0, setup.holes().size())
                .mapToObj(
                        i -> new BagAnswer.HoleGain(setup.holes().get(i).number(), strokes(now, i) - strokes(then, i)))
                .filter(h -> h.strokes() > LEAST_GAIN)
                .sorted(Comparator.comparingDouble(BagAnswer.HoleGain::strokes).reversed())
                .limit(MOST_HOLES)
                .toList();
        return new BagAnswer.Change(
                swap.words(),
                worth(then),
                gain,
                strokesError(now, then) * now.get(0).chancePerStroke,
                swap.in().isEmpty() ? 0 : swap.in().get(0).pattern().carryMetres(),
                holes);
    }

    /** Standard error of the strokes gained: what the two seeds say of each hole's gain differs by noise alone. */
    private static double strokesError(List<Round> now, List<Round> then) {
        double squares = 0;
        for (int h = 0; h < now.get(0).holes.size(); h++) {
            double first = now.get(0).holes.get(h) - then.get(0).holes.get(h);
            double second = now.get(1).holes.get(h) - then.get(1).holes.get(h);
            squares += (first - second) * (first - second);
        }
        return Math.sqrt(squares) / 2;
    }

    private static double strokes(List<Round> seeds, int hole) {
        return seeds.stream().mapToDouble(r -> r.holes.get(hole)).average().orElseThrow();
    }
}
