package loopwright.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntPredicate;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.StrikeModel;
import loopwright.putting.GreenSpeed;
import loopwright.putting.LevelGreenOdds;
import loopwright.putting.PuttingOdds;
import loopwright.putting.PuttingSkill;
import loopwright.strategy.Ability;
import loopwright.strategy.ScoreDistribution;

/**
 * A round with fixed plans and habits, ready to be valued for a player whose skills have changed. Strikes are played afresh
 * with the same draws; plan, habit and reliefs stay what they are, so that what is gained is never more than what a new plan
 * would gain. Where a skill that is weak beside the player's level gets better, the plan for the player without his weaknesses
 * is tried as well: a plan that does without a wild driver would otherwise say that mending it is worth nothing.
 *
 * <p>All is valued on the ordinary day, on level greens; a shift brings expected score and log odds to what they are over good
 * and bad days, as {@link #over} was told.
 */
public final class PracticeRound {
    private final List<PracticeHole> holes;
    private final Player today;
    private final Ability ability;
    private final GreenSpeed greens;
    private final long seed;
    private final int limit;
    /** Share of the holes that the player plays by habit today. */
    private final double habitToday;

    private final double expectedShift;
    private final double oddsShift;
    /** Odds of every putter met so far: players who differ in other shots share them. */
    private final Map<PuttingSkill, PuttingOdds> putters;

    /** Of the player whose round this is, also where another is looked at in his stead. */
    private final Set<Skill> weak;

    private PracticeRound(
            List<PracticeHole> holes,
            Player today,
            Ability ability,
            GreenSpeed greens,
            long seed,
            int limit,
            double habitToday,
            double expectedShift,
            double oddsShift,
            Map<PuttingSkill, PuttingOdds> putters,
            Set<Skill> weak) {
        this.holes = List.copyOf(holes);
        this.today = today;
        this.ability = ability;
        this.greens = greens;
        this.seed = seed;
        this.limit = limit;
        this.habitToday = habitToday;
        this.expectedShift = expectedShift;
        this.oddsShift = oddsShift;
        this.putters = putters;
        this.weak = weak;
    }

    /**
     * A round.
     *
     * @param today the player, with whose ability the holes were made
     * @param seed the ability's
     * @param limit what the round may count at most
     */
    public PracticeRound(
            List<PracticeHole> holes, Player today, Ability ability, GreenSpeed greens, long seed, int limit) {
        this(
                holes,
                today,
                ability,
                greens,
                seed,
                limit,
                1,
                0,
                0,
                new ConcurrentHashMap<>(),
                LearningTable.weaknesses(today));
        putters.put(today.putting(), ability.putting());
    }

    /** The same, knowing what the plan comes to over good and bad days. */
    public PracticeRound over(RoundOdds planOverDays) {
        RoundOdds ordinary = at(SkillLevels.PLAN, Watch.NONE);
        return new PracticeRound(
                holes,
                today,
                ability,
                greens,
                seed,
                limit,
                habitToday,
                expectedShift + planOverDays.expected() - ordinary.expected(),
                oddsShift + RoundOdds.logOdds(planOverDays.chance()) - RoundOdds.logOdds(ordinary.chance()),
                putters,
                weak);
    }

    /** The same for a player who plays only this share of the holes by habit today, 0 to 1, as he has learned the plan. */
    public PracticeRound withHabitShare(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("the share of holes played by habit is 0 to 1, not " + share);
        }
        return new PracticeRound(
                holes, today, ability, greens, seed, limit, share, expectedShift, oddsShift, putters, weak);
    }

    /** The same round for another player with the same swings: plans and habits stay. */
    public PracticeRound of(Player other, Watch watch) {
        Ability his = ability(other);
        List<PracticeHole> out = new ArrayList<>();
        for (PracticeHole hole : holes) {
            watch.check();
            out.add(hole.of(his, watch));
        }
        return new PracticeRound(
                out, other, his, greens, seed, limit, habitToday, expectedShift, oddsShift, putters, weak);
    }

    public Player today() {
        return today;
    }

    public int limit() {
        return limit;
    }

    /** What the round comes to with these skills. */
    public RoundOdds at(SkillLevels levels, Watch watch) {
        ScoreDistribution total = distribution(levels, watch);
        return new RoundOdds(
                total.mean() + expectedShift,
                RoundOdds.chance(RoundOdds.logOdds(total.probabilityAtMost(limit)) + oddsShift));
    }

    private ScoreDistribution distribution(SkillLevels levels, Watch watch) {
        Player then = levels.player(today);
        double habit = habitToday * levels.habitShare();
        boolean same = then.equals(today);
        Ability his = same ? ability : ability(then);
        IntPredicate changed = changed(levels);
        boolean mending = levels.left().keySet().stream().anyMatch(weak::contains);
        List<ScoreDistribution> out = new ArrayList<>();
        for (PracticeHole hole : holes) {
            watch.check();
            out.add(same ? hole.usual(habit) : hole.with(his, changed, habit, mending, watch));
        }
        return ScoreDistribution.sumOf(out);
    }

    private IntPredicate changed(SkillLevels levels) {
        StrikeModel strikes = ability.strikes();
        boolean[] out = new boolean[strikes.shots()];
        for (Skill skill : levels.left().keySet()) {
            for (int shot = 0; shot < out.length; shot++) {
                out[shot] |= skill.changes(today, strikes, shot);
            }
        }
        return shot -> out[shot];
    }

    private Ability ability(Player other) {
        return new Ability(
                ability.strikes().of(other),
                putters.computeIfAbsent(other.putting(), skill -> new LevelGreenOdds(skill, greens)),
                seed);
    }
}
