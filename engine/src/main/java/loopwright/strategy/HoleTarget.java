package loopwright.strategy;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loopwright.geo.Place;
import loopwright.putting.GreenOdds;
import loopwright.putting.LevelGreenOdds;

/** One hole solved for the target: what is played in every lane, and the chances that follow. */
public final class HoleTarget {
    final TargetHole hole;
    final TargetOptions options;
    final LaneTable table;
    final LaneChoice choice;
    final PaceChoice paces;
    /** Chances on the ordinary day, where they are kept. */
    private final Optional<LaneField> field;

    private final List<HandOver> before;
    private final List<Double> whenChosen;
    private final List<ScoreDistribution> meanPlay;
    private final double fall;
    private final int asked;
    private final List<Double> usualOnTee;
    private final List<Double> chosenOnTee;

    HoleTarget(
            TargetHole hole,
            TargetOptions options,
            LaneTable table,
            LaneChoice choice,
            PaceChoice paces,
            LaneEvaluation evaluation,
            List<HandOver> before,
            List<Double> whenChosen,
            List<double[]> meanScores,
            boolean keepsPlay) {
        this.hole = hole;
        this.options = options;
        this.table = table;
        this.choice = choice;
        this.paces = paces;
        this.whenChosen = List.copyOf(whenChosen);
        field = keepsPlay ? Optional.of(evaluation.fields.get(0)) : Optional.empty();
        this.before = before;
        meanPlay = meanScores.stream()
                .map(s -> ScoreDistribution.of(0, s).countedBy(hole.table()))
                .toList();
        List<Double> tee = evaluation.onTee.get(0);
        asked = tee.size();
        usualOnTee = List.copyOf(evaluation.usualOnTee);
        chosenOnTee = List.copyOf(tee);
        fall = IntStream.range(1, tee.size())
                .mapToDouble(i -> tee.get(i - 1) - tee.get(i))
                .max()
                .orElse(0);
    }

    /** By day: the chance on this tee for every number of strokes in hand. */
    List<HandOver> before() {
        return before;
    }

    /** By day: what the hole counts under mean play. */
    List<ScoreDistribution> meanPlay() {
        return meanPlay;
    }

    /** The largest fall of the evaluated chance from one number of strokes in hand to the next, 0 or less if none. */
    double largestFall() {
        return fall;
    }

    /** The chance on this tee as the clouds for choosing saw it: a little too good. */
    double whenChosen(int inHand) {
        int i = inHand - table.lowestInHand();
        return i < 0 ? 0 : i >= whenChosen.size() ? 1 : whenChosen.get(i);
    }

    /** The fewest strokes in hand on this tee with which there is hope. */
    public int lowestInHand() {
        return table.lowestInHand();
    }

    /** The most that were asked about: with more the target is as good as certain. */
    public int highestInHand() {
        return table.lowestInHand() + asked - 1;
    }

    /**
     * A tee shot that target play prefers to the one with the best average.
     *
     * @param shot number of the shot in {@code StrikeModel}
     * @param aim where it is aimed
     * @param gain in the chance of the target, both followed by target play, on the ordinary day
     */
    public record TeeShot(int shot, Place aim, double gain) {}

    /** The tee shot with so many strokes in hand, where it is another than the one with the best average. */
    public Optional<TeeShot> findOtherTeeShot(int inHand) {
        int i = inHand - table.lowestInHand();
        int option = i < 0 || i >= asked ? 0 : choice.option(lane(inHand), 0);
        if (option == 0) {
            return Optional.empty();
        }
        Option o = options.options.get(0).get(option);
        Place aim = hole.mean().problem.raster.place(o.column(), o.row());
        return Optional.of(new TeeShot(o.shot(), aim, chosenOnTee.get(i) - usualOnTee.get(i)));
    }

    /** Chances on the ordinary day; only where the play was kept. */
    LaneField field() {
        return field.orElseThrow(() -> new IllegalStateException("solved for chances alone; nothing can be played"));
    }

    /** The play of this hole begun with so many strokes in hand; only where it was kept. */
    public Policy policy(int inHand) {
        return new TargetPolicy(this, lane(inHand));
    }

    /** True if the green offers paces to choose from; a measured one is putted for fewest putts. */
    public boolean choosesPaces() {
        return findPaces().isPresent();
    }

    private Optional<LevelGreenOdds> findPaces() {
        return hole.mean().problem.green instanceof GreenOdds.Level level
                        && level.odds() instanceof LevelGreenOdds offered
                ? Optional.of(offered)
                : Optional.empty();
    }

    /** How far past the hole to putt from a distance after so many strokes on this hole. */
    public double overshootMetres(int inHand, int strokes, double metres) {
        LevelGreenOdds odds = findPaces().orElseThrow();
        Lane lane = lane(inHand).after(strokes);
        if (lane.settled() || !paces.has(lane)) {
            return odds.bestOvershootMetres(metres);
        }
        int node = odds.nearestNode(metres);
        int pace = paces.at(lane, node);
        return pace == odds.bestPaceIndex(node)
                ? odds.bestOvershootMetres(metres)
                : odds.paces(node).get(pace).overshootMetres();
    }

    /** With more in hand than was ever asked about the play is that of the most. */
    private synchronized Lane lane(int inHand) {
        return table.start(Math.min(inHand, table.lowestInHand() + asked - 1));
    }
}
