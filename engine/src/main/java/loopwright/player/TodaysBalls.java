package loopwright.player;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a few balls struck on the day say of the day, on top of the player's own patterns.
 *
 * <p>Direction: ball i of a swing with mean direction m_i and direction variance s_i^2 (mishits included) finishes at
 * d_i = m_i + b + f e_i, with b the day's bias, f its factor on spreads and e_i normal of variance s_i^2. With weights
 * w_i = 1 / s_i^2 and the day effect as prior, b ~ N(0, f^2 t^2) and f^2 ~ scaled inverse chi-squared of mean 1 and n0
 * degrees of freedom, the update is conjugate: L = 1/t^2 + sum w_i, mean b = sum w_i (d_i - m_i) / L,
 * S = sum w_i (d_i - m_i)^2 - L b^2, mean f^2 = (n0 - 2 + S) / (n0 - 2 + n). n0 = 1 / (2 v^2) for a standard deviation v of
 * log f (delta method). Length the same way, its spread known: relative length ~ N(0, 0.02^2), as between sessions
 * (assumed).
 *
 * <p>Gelman, Carlin, Stern and Rubin, Bayesian Data Analysis, sections 3.2 and 3.3, from memory.
 */
public final class TodaysBalls {
    /** Day effects known to be nothing still leave a prior. */
    private static final double LEAST_SD = 1e-6;

    private TodaysBalls() {}

    /**
     * One ball.
     *
     * @param sideMetres at the finish, + right of where it was aimed
     * @param longMetres beyond (short of: negative) the swing's usual total, if anybody looked
     */
    public record Ball(Swing swing, double sideMetres, OptionalDouble longMetres) {
        double directionRadians() {
            return Math.atan2(sideMetres, swing.pattern().totalMetres());
        }

        /** What the ball's direction has beyond the player's own. */
        double biasRadians() {
            return directionRadians() - meanDirection(swing.pattern());
        }
    }

    /**
     * The day as the balls leave it.
     *
     * @param balls how many there were
     * @param seenRadians their mean bias as they lie, each ball weighed by how far such a club scatters
     * @param day what is now expected: bias and factor on spreads
     * @param biasSdRadians how sure the bias is
     * @param lengthFactor on all lengths, 1 where no length was told
     * @param left what of the day is still unknown
     */
    public record Reading(
            int balls, double seenRadians, RoundDay day, double biasSdRadians, double lengthFactor, DayEffect left) {
        /** Share of what was seen that is taken for the day; 0 where nothing was seen. */
        public double taken() {
            return seenRadians == 0 ? 0 : day.biasRadians() / seenRadians;
        }

        /** The player as he is today. */
        public Player of(Player player) {
            Player today = player.on(day);
            return new Player(
                    today.name(),
                    today.hand(),
                    today.level(),
                    today.swings().stream()
                            .map(s ->
                                    new Swing(s.club(), s.effort(), s.pattern().longer(lengthFactor), s.evidence()))
                            .toList(),
                    today.touchShots(),
                    today.putting(),
                    today.lostBallsPerRound());
        }
    }

    /** Reads the balls; {@code usual} is how this player's days differ. At least one ball. */
    public static Reading read(List<Ball> balls, DayEffect usual) {
        if (balls.isEmpty()) {
            throw new IllegalArgumentException("a day is read from at least one ball");
        }
        double prior = Math.max(LEAST_SD, usual.directionSdRadians());
        double known = 1 / (prior * prior);
        double sum = 0;
        double squares = 0;
        double weights = 0;
        for (Ball ball : balls) {
            double bias = ball.biasRadians();
            double w = 1 / directionVariance(ball.swing.pattern());
            weights += w;
            sum += w * bias;
            squares += w * bias * bias;
        }
        double precision = known + weights;
        double bias = sum / precision;
        double logSd = Math.max(LEAST_SD, usual.logSpreadSd());
        double freedom = 1 / (2 * logSd * logSd);
        double spread2 = (freedom - 2 + squares - precision * bias * bias) / (freedom - 2 + balls.size());
        double spread = Math.sqrt(Math.max(0.25, spread2));
        double biasSd = spread / Math.sqrt(precision);
        return new Reading(
                balls.size(),
                sum / weights,
                new RoundDay(bias, spread, 1),
                biasSd,
                lengthFactor(balls),
                new DayEffect(
                        usual.directionSdRadians() == 0 ? 0 : biasSd,
                        usual.logSpreadSd() == 0 ? 0 : 1 / Math.sqrt(2 * (freedom + balls.size()))));
    }

    private static double lengthFactor(List<Ball> balls) {
        double precision = 1 / (PriorTable.SESSION_CARRY_SD * PriorTable.SESSION_CARRY_SD);
        double sum = 0;
        for (Ball ball : balls) {
            if (ball.longMetres.isPresent()) {
                ShotPattern p = ball.swing.pattern();
                double relative = ball.longMetres.getAsDouble() / p.totalMetres() - meanShortfall(p);
                double w = 1 / lengthVariance(p);
                precision += w;
                sum += w * relative;
            }
        }
        return 1 + sum / precision;
    }

    /** Mean direction of all balls, mishits included. */
    private static double meanDirection(ShotPattern p) {
        double turn = p.mishits().stream()
                .mapToDouble(m -> m.rate() * m.directionRadians())
                .sum();
        return p.directionRadians() + turn;
    }

    private static double directionVariance(ShotPattern p) {
        double second = (1 - p.mishitRate()) * p.directionSdRadians() * p.directionSdRadians();
        double mean = 0;
        for (Mishit m : p.mishits()) {
            second += m.rate()
                    * (m.directionRadians() * m.directionRadians() + m.directionSdRadians() * m.directionSdRadians());
            mean += m.rate() * m.directionRadians();
        }
        return second - mean * mean;
    }

    /** What mishits take of the length on average, as a (negative) share. */
    private static double meanShortfall(ShotPattern p) {
        return p.mishits().stream()
                .mapToDouble(m -> m.rate() * (m.carryFactor() - 1))
                .sum();
    }

    private static double lengthVariance(ShotPattern p) {
        double solid = p.carrySdMetres() / p.carryMetres();
        double second = (1 - p.mishitRate()) * solid * solid;
        for (Mishit m : p.mishits()) {
            double loss = m.carryFactor() - 1;
            second += m.rate() * (loss * loss + m.carryFactorSd() * m.carryFactorSd());
        }
        double mean = meanShortfall(p);
        return second - mean * mean;
    }
}
