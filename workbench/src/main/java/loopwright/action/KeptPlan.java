package loopwright.action;

import java.time.Instant;

/**
 * A plan as it is kept: what it was made from, by what, and the round's summary. The solved fields themselves are made
 * again when they are needed.
 *
 * @param inputs tees, target, holes, day and locks in the form of the page's address
 * @param engine version of the program that solved it
 * @param scoreSd standard deviation of the round's score
 * @param targetChance chance of the target, playing for the average
 * @param habitMean expected score by habit
 */
public record KeptPlan(
        String player,
        int playerVersion,
        String course,
        int courseVersion,
        String inputs,
        long seed,
        String engine,
        double scoreMean,
        double scoreSd,
        double targetChance,
        double habitMean,
        Instant at) {}
