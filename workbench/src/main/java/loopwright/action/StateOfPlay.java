package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.geo.Place;
import loopwright.strategy.HoleTarget;
import loopwright.strategy.TargetSolution;

/**
 * What the round is worth when it is played for the target: the chances of every total, and of every number of strokes in
 * hand on every tee.
 *
 * @param meanPlay chance of the target when playing for the average
 * @param targetPlay chance when playing for the target
 * @param byTotal chances of every total that is neither hopeless nor certain
 * @param onTee hole by hole, strokes in hand rising
 */
public record StateOfPlay(double meanPlay, double targetPlay, List<Total> byTotal, List<OnTee> onTee) {
    /** Chances closer than this to 0 or 1 are left out. */
    private static final double DECIDED = 0.001;

    public StateOfPlay {
        byTotal = List.copyOf(byTotal);
        onTee = List.copyOf(onTee);
    }

    /** The chance of a total or better under the two ways to play, each at its best for that total. */
    public record Total(int total, double meanPlay, double targetPlay) {}

    /** The chance on a tee with strokes in hand, and the tee shot if it is another than the plan's. */
    public record OnTee(int hole, int inHand, double meanPlay, double targetPlay, Optional<TeeShot> other) {}

    /** A tee shot for the target: what, and by how much it raises the chance. */
    public record TeeShot(String club, Place aim, double offsetMetres, String landmark, double gain) {}

    /** Words a tee shot of a hole. */
    interface Wording {
        TeeShot word(HoleTarget.TeeShot shot);
    }

    static StateOfPlay of(
            TargetSolution solution, Counting counting, int target, List<Integer> numbers, List<Wording> words) {
        int limit = counting.limit(target);
        List<Total> totals = new ArrayList<>();
        for (int total = solution.meanPlay().lowest();
                total <= solution.meanPlay().highest();
                total++) {
            double chance = solution.targetPlay(total);
            if (undecided(chance)) {
                totals.add(new Total(total, solution.meanPlay(total), chance));
            }
        }
        List<OnTee> tees = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            addTee(tees, solution, i, numbers.get(i), words.get(i));
        }
        return new StateOfPlay(solution.meanPlay(limit), solution.targetPlay(limit), totals, tees);
    }

    private static void addTee(List<OnTee> out, TargetSolution solution, int hole, int number, Wording words) {
        HoleTarget solved = solution.holes().get(hole);
        for (int inHand = solved.lowestInHand(); inHand <= solved.highestInHand(); inHand++) {
            double chance = solution.targetPlayFrom(hole, inHand);
            if (undecided(chance)) {
                out.add(new OnTee(
                        number,
                        inHand,
                        solution.meanPlayFrom(hole, inHand),
                        chance,
                        solved.findOtherTeeShot(inHand).map(words::word)));
            }
        }
    }

    private static boolean undecided(double chance) {
        return chance > DECIDED && chance < 1 - DECIDED;
    }

    /** The entries of one tee. */
    public List<OnTee> onTee(int hole) {
        return onTee.stream().filter(t -> t.hole() == hole).toList();
    }
}
