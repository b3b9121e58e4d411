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
import loopwright.player.DayEffect;
import loopwright.player.PlayingLength;
import loopwright.strategy.ScoreDistribution;
import loopwright.strategy.SearchLoss;

/**
 * A game plan: what to do on every hole, what to expect, and how it was checked.
 *
 * @param day what it was planned for
 * @param target the total to stay at or below, or the points to reach
 * @param counting how the round is counted
 * @param holes in playing order
 * @param decisions where leaving the player's habit pays most, dearest habit first, at most five
 * @param total what the round counts when every hole is played for the average
 * @param habitExpected expected strokes of the player's habit on the same holes
 * @param simulated the strokes as the referee played them out, each round on a day of its own
 * @param dayEffect how rounds differ; every distribution and chance is averaged over it
 * @param stateOfPlay what playing for the target is worth, if that was asked for
 * @param today what the warm-up and the coach's dial change of the player
 * @param otherDays the same round in other weather, to be set beside it
 * @param howSure how far the numbers can be trusted, if that was asked for
 */
public record RoundPlan(
        Course course,
        TeeSet tees,
        PlanDay day,
        int target,
        Counting counting,
        List<HolePlan> holes,
        List<Decision> decisions,
        ScoreDistribution total,
        double habitExpected,
        Simulated simulated,
        DayEffect dayEffect,
        Today today,
        List<RoundPlan> otherDays,
        Optional<StateOfPlay> stateOfPlay,
        Optional<HowSure> howSure) {
    public RoundPlan {
        holes = List.copyOf(holes);
        decisions = List.copyOf(decisions);
        otherDays = List.copyOf(otherDays);
    }

    RoundPlan withOtherDays(List<RoundPlan> others) {
        return with(others, howSure);
    }

    RoundPlan with(HowSure sure) {
        return with(otherDays, Optional.of(sure));
    }

    private RoundPlan with(List<RoundPlan> others, Optional<HowSure> sure) {
        return new RoundPlan(
                course,
                tees,
                day,
                target,
                counting,
                holes,
                decisions,
                total,
                habitExpected,
                simulated,
                dayEffect,
                today,
                others,
                stateOfPlay,
                sure);
    }

    /** Probability of the target under play for the mean. */
    public double targetProbability() {
        return total.probabilityAtMost(counting.limit(target));
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
    public SearchLoss searchLoss() {
        return SearchLoss.sumOf(holes.stream().map(HolePlan::searchLoss).toList());
    }

    /** The loss as a clause; what the check finds may lie below zero by chance. */
    public String searchLossInWords() {
        SearchLoss loss = searchLoss();
        return loss.strokes() < 0.005
                ? "a check with every choice found none better"
                : String.format(Locale.ROOT, "the search lost %.2f +- %.2f", loss.strokes(), loss.standardError());
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
     * @param expected strokes, averaged over good and bad days like the scores
     * @param scores probability of each score, index = strokes
     * @param penalty probability of at least one penalty stroke
     * @param shots the plan from the tee, then the same again from each typical finish
     * @param startLines of the tee shot: the plan's, then those for a day on which all balls go left, and right
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
            List<StartLine> startLines,
            OptionalDouble lockCost,
            double habitExpected,
            double bias,
            SearchLoss searchLoss) {
        public HolePlan {
            scores = List.copyOf(scores);
            shots = List.copyOf(shots);
            startLines = List.copyOf(startLines);
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
     * @param start how the ball is started
     * @param assumedSkill true if the pattern of this shot is mostly assumed
     * @param playing what the day makes of its length; empty where the day changes nothing or the shot is judged by eye
     * @param expected strokes to hole out from here, this one included
     * @param finish probability by surface
     * @param sample equally likely finishes
     * @param hazards what has to be carried on the line
     * @param room at the landing distance
     * @param alternatives the two best other clubs
     * @param habit what the player would do by habit
     * @param risks finishes where people may be, by what the map shows
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
            Start start,
            boolean assumedSkill,
            Optional<PlayingLength> playing,
            double expected,
            Map<Surface, Double> finish,
            List<Place> sample,
            List<Carry> hazards,
            Optional<HolePicture.Room> room,
            List<Alternative> alternatives,
            Alternative habit,
            List<Risk> risks) {
        public ShotPlan {
            finish = Map.copyOf(finish);
            sample = List.copyOf(sample);
            hazards = List.copyOf(hazards);
            alternatives = List.copyOf(alternatives);
            risks = List.copyOf(risks);
        }

        /** "the red chimney", or "blind: line is the red chimney". */
        public String line() {
            return (blind ? "blind: line is " : "") + landmark;
        }
    }

    /**
     * How the ball is started: along the line of the aim, over a spot two club-lengths ahead.
     *
     * @param finish where solid balls finish on average, the player's own shape and the wind included
     * @param spot on the start line
     * @param spotOffsetMetres of the spot from the straight line to the finish, + right
     * @param moreClubs how many more than in still air the wind asks for, in halves; 0: none
     */
    public record Start(Place finish, Place spot, double spotOffsetMetres, double moreClubs) {}

    /** When a start line is right. */
    public enum BallsGo {
        AS_USUAL,
        LEFT,
        RIGHT
    }

    /**
     * A start line of the tee shot, the planned club.
     *
     * @param balls what the player sees of his balls today
     * @param beyondMetres how far beside the usual they finish on that day, + right
     * @param offsetMetres of the aim from the line of play, + right
     * @param gain strokes it saves on that day beside the usual line
     */
    public record StartLine(
            BallsGo balls,
            double beyondMetres,
            Place aim,
            double offsetMetres,
            String landmark,
            double gain,
            double standardError) {}

    /** A hazard on the line: what it is and the carry that clears it. */
    public record Carry(String hazard, double metres) {}

    /**
     * A finish where people may be, and how often this shot has it.
     *
     * @param worthAWarning the chance from which on it is warned of
     */
    public record Risk(String where, double chance, double worthAWarning) {
        public boolean isFlagged() {
            return chance >= worthAWarning;
        }
    }

    /**
     * Another choice. Its cost is "the same for you" below two standard errors, and where the map decides.
     *
     * @param turnsOnTheMap true if it is the better one with everything on the map 4 yd to one side
     */
    public record Alternative(
            String club, Place aim, double offsetMetres, double cost, double standardError, boolean turnsOnTheMap) {
        public boolean same() {
            return turnsOnTheMap || cost < 2 * standardError;
        }

        /** "+0.12", or that it makes no difference. */
        public String costInWords() {
            return same() ? "the same for you" : String.format(Locale.ROOT, "%+.2f", cost);
        }
    }

    /** A place in the round where the habit costs. */
    public record Decision(int hole, int shot, ShotPlan plan, double cost) {}

    /** A landmark as the end of a sentence: "at the hole", "along the line of play", "9 paces left of the hole". */
    public static String toward(String landmark) {
        return isBeside(landmark) ? landmark : (landmark.equals("the line of play") ? "along " : "at ") + landmark;
    }

    /** True for a landmark that is not aimed at but beside: "9 paces left of the hole". */
    public static boolean isBeside(String landmark) {
        return landmark.matches("\\d.*");
    }
}
