package loopwright.action;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loopwright.player.Club;
import loopwright.player.ClubTable;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.units.Distance;

/**
 * What a player says of himself. Length comes from him alone; everything else is read off his level.
 *
 * @param scores last 18-hole scores, the level if that is not stated
 * @param driver carry of the driver
 * @param sevenIron carry of the 7-iron
 * @param missesRight side of the usual miss
 * @param lostBalls a round
 * @param bag empty: the bag usual for his length
 */
public record Interview(
        String name,
        Player.Hand hand,
        OptionalDouble level,
        List<Integer> scores,
        Optional<Distance> driver,
        Optional<Distance> sevenIron,
        Optional<Boolean> missesRight,
        OptionalDouble lostBalls,
        List<Club> bag) {
    /** Where nobody says how well the player scores. */
    public static final double ASSUMED_LEVEL = 95;

    public static final double LOWEST_LEVEL = 60;
    public static final double HIGHEST_LEVEL = 130;
    public static final int LOWEST_SCORE = 54;
    public static final int HIGHEST_SCORE = 180;

    public Interview {
        scores = List.copyOf(scores);
        bag = List.copyOf(bag);
        checkBag(bag);
        if (level.isPresent() && !(level.getAsDouble() >= LOWEST_LEVEL && level.getAsDouble() <= HIGHEST_LEVEL)) {
            throw new UserFault("A level of " + UserFault.typed(level.getAsDouble())
                    + " is no average score; 60 to 130 is accepted (70 to 120 is usual).");
        }
        for (int score : scores) {
            if (score < LOWEST_SCORE || score > HIGHEST_SCORE) {
                throw new UserFault("A score of " + score + " is no 18-hole score; 54 to 180 is accepted.");
            }
        }
        if (driver.isPresent()
                && sevenIron.isPresent()
                && driver.get().metres() <= sevenIron.get().metres()) {
            throw new UserFault(String.format(
                    java.util.Locale.ROOT,
                    "A driver that carries %.0f yd beside a 7-iron that carries %.0f yd cannot be planned with;"
                            + " check which is which.",
                    driver.get().yards(),
                    sevenIron.get().yards()));
        }
    }

    /** Refuses a bag that cannot be planned with; an empty one stands for the usual bag. */
    public static void checkBag(List<Club> bag) {
        BagSwap.checkCount(bag);
        Set<Club> seen = new HashSet<>();
        for (Club club : bag) {
            if (!seen.add(club)) {
                throw new UserFault("The " + club.name() + " is named twice in the bag; name each club once.");
            }
        }
        if (!bag.isEmpty() && seen.equals(Set.of(ClubTable.PUTTER))) {
            throw new UserFault("A bag of a putter alone cannot be planned with; name the other clubs as well.");
        }
    }

    /** The stated level, else the mean of the scores, else an assumed one. */
    public double levelOrAssumed() {
        double mean = scores.stream().mapToInt(Integer::intValue).average().orElse(ASSUMED_LEVEL);
        return level.orElse(Math.max(LOWEST_LEVEL, Math.min(HIGHEST_LEVEL, mean)));
    }

    PlayerPrior prior() {
        PlayerPrior prior = PlayerPrior.of(levelOrAssumed(), hand);
        if (driver.isPresent()) {
            prior = prior.withDriverCarry(driver.get());
        }
        if (sevenIron.isPresent()) {
            prior = prior.withSevenIronCarry(sevenIron.get());
        }
        if (missesRight.isPresent()) {
            prior = prior.withUsualMiss(missesRight.get());
        }
        if (lostBalls.isPresent()) {
            prior = prior.withLostBalls(lostBalls.getAsDouble());
        }
        return bag.isEmpty() ? prior : prior.withBag(bag);
    }

    /** What is missing and therefore assumed, a sentence each. */
    List<String> notes() {
        List<String> out = new ArrayList<>();
        if (level.isEmpty() && scores.isEmpty()) {
            out.add("No level and no scores were given: spread, mishits, short game and putting start from those of a "
                    + (int) ASSUMED_LEVEL + "-golfer; say --level or --scores.");
        }
        if (level.isEmpty() && !scores.isEmpty()) {
            out.add(String.format(
                    java.util.Locale.ROOT,
                    "The level is the mean of %d scores: %.1f.",
                    scores.size(),
                    levelOrAssumed()));
        }
        return out;
    }
}
