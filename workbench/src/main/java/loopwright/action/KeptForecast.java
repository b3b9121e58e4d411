package loopwright.action;

import java.time.Instant;
import java.time.LocalDate;

/**
 * A round foretold: what the model expects of the player as he plays now.
 *
 * @param id empty until it is kept
 * @param target the score to beat or equal
 * @param mean expected score of those holes
 * @param sd standard deviation of the score
 * @param chance of the target or better, 0 to 1
 * @param engine version of the program
 */
public record KeptForecast(
        String id,
        LocalDate day,
        String course,
        String tees,
        int holes,
        int target,
        double mean,
        double sd,
        double chance,
        String engine,
        Instant at) {}
