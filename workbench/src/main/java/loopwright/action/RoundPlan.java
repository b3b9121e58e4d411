package loopwright.action;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.course.Course;
import loopwright.course.TeeSet;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.player.PlayingLength;
import loopwright.strategy.ScoreDistribution;

/**
 * A game plan: what to do on every hole, what to expect, and how it was checked.
 *
 * @param day what it was planned for
 * @param target the total to stay at or below
 * @param holes in playing order
 * @param decisions where leaving the player's habit pays most, dearest habit first, at most five
 * @param habitExpected expected total of the player's habit on the same holes
 * @param simulated the total as the referee played it out
 * @param otherDays the same round on other days, to be set beside it
 */
public record RoundPlan(
        Course course,
        TeeSet tees,
        PlanDay day,
        int target,
        List<HolePlan> holes,
        List<Decision> decisions,
        ScoreDistribution total,
        double habitExpected,
        Simulated simulated,
        List<RoundPlan> otherDays) {
    public RoundPlan {
        holes = List.copyOf(holes);
        decisions = List.copyOf(decisions);
        otherDays = List.copyOf(otherDays);
    }

    RoundPlan withOtherDays(List<RoundPlan> others) {
        return new RoundPlan(course, tees, day, target, holes, decisions, total, habitExpected, simulated, others);
    }

    /** Probability of the target under play for the mean. */
    public double targetProbability() {
        return total.probabilityAtMost(target);
    }

    public double lengthMetres() {
        return holes.stream().mapToDouble(HolePlan::lengthMetres).sum();
    }

    /** Par of the holes played. */
    public int par() {
        return holes.stream().mapToInt(HolePlan::par).sum();
    }

    /** How much too good the choices looked on their own clouds, over the round. */
    public double bias() {
        return holes.stream().mapToDouble(HolePlan::bias).sum();
    }

    /** Estimated loss of the search, over the round. */
    public double searchLoss() {
        return holes.stream().mapToDouble(HolePlan::searchLoss).sum();
    }

    public List<Integer> unsurveyed() {
        return holes.stream().filter(h -> !h.surveyed()).map(HolePlan::number).toList();
    }

    /** Rounds played out by the referee with fresh draws. */
    public record Simulated(double mean, double standardError, int rounds) {}

    /**
     * One hole.
     *
     * @param standIn the set whose tee stands in on this hole, or empty
     * @param greenMeasured putts are played on its measured slope; else no break is claimed
     * @param scores probability of each score, index = strokes
     * @param penalty probability of at least one penalty stroke
     * @param shots the plan from the tee, then the same again from each typical finish
     * @param lockCost what the coach's locks cost on this hole, if there are any
     * @param habitExpected expected score by habit
     */
    public record HolePlan(
            int number,
            int par,
            double lengthMetres,
            Place tee,
            String standIn,
            boolean surveyed,
            boolean greenAssumed,
            boolean greenMeasured,
            double expected,
            List<Double> scores,
            double penalty,
            List<ShotPlan> shots,
            OptionalDouble lockCost,
            double habitExpected,
            double bias,
            double searchLoss) {
        public HolePlan {
            scores = List.copyOf(scores);
            shots = List.copyOf(shots);
        }

        /** Probability of a score from {@code low} to {@code high} strokes. */
        public double probability(int low, int high) {
            double sum = 0;
            for (int k = Math.max(0, low); k <= Math.min(high, scores.size() - 1); k++) {
                sum += scores.get(k);
            }
            return sum;
        }
    }

    /**
     * One planned stroke.
     *
     * @param aim where it is aimed, at the length of the shot
     * @param offsetMetres of the aim from the line of play, + right
     * @param landmark what to aim at, in words
     * @param blind the aim cannot be seen from here: the landmark names a line over something that can
     * @param playing what the day makes of its length; empty where the day changes nothing or the shot is judged by eye
     * @param expected strokes to hole out from here, this one included
     * @param finish probability by surface
     * @param sample equally likely finishes
     * @param hazards what has to be carried on the line
     * @param room at the landing distance
     * @param alternatives the two best other clubs
     * @param habit what the player would do by habit
     */
    public record ShotPlan(
            Place from,
            Surface lie,
            double toHoleMetres,
            String club,
            Place aim,
            double aimMetres,
            double offsetMetres,
            String landmark,
            boolean blind,
            Optional<PlayingLength> playing,
            double expected,
            Map<Surface, Double> finish,
            List<Place> sample,
            List<Carry> hazards,
            Optional<HolePicture.Room> room,
            List<Alternative> alternatives,
            Alternative habit) {
        public ShotPlan {
            finish = Map.copyOf(finish);
            sample = List.copyOf(sample);
            hazards = List.copyOf(hazards);
            alternatives = List.copyOf(alternatives);
        }

        /** "the red chimney", or "blind: line is the red chimney". */
        public String line() {
            return (blind ? "blind: line is " : "") + landmark;
        }
    }

    /** A hazard on the line: what it is and the carry that clears it. */
    public record Carry(String hazard, double metres) {}

    /** Another choice; below two standard errors its cost is "the same for you". */
    public record Alternative(String club, Place aim, double offsetMetres, double cost, double standardError) {
        public boolean same() {
            return cost < 2 * standardError;
        }

        /** "+0.12", or that it makes no difference. */
        public String costInWords() {
            return same() ? "the same for you" : String.format(Locale.ROOT, "%+.2f", cost);
        }
    }

    /** A place in the round where the habit costs. */
    public record Decision(int hole, int shot, ShotPlan plan, double cost) {}
}
