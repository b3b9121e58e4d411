package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import loopwright.player.RoundDay;

/**
 * What several holes come to over good and bad days: independent within a day, and alike in that they share it.
 *
 * <p>A few days stand for all: the ordinary one, days that differ from it in bias alone, and days that differ in spread
 * alone. On one hole bias and spread add up: a day with both makes of a score's chance what each makes of it alone. Over a
 * whole round they do not, so for each pair the round is summed up once more with both. The distribution then is that of
 * the rule of products: nine days for five that were worked out.
 */
public final class RoundScores {
    private final List<RoundDay> days;
    private final List<ScoreDistribution> byDay;
    private final List<Meeting> meetings;

    /** A day with the bias of one day and the spread of another; its masses, from the lowest score on, may be below zero. */
    private static final class Meeting {
        final int bias;
        final int spread;
        private final int lowest;
        private final double[] mass;

        Meeting(int bias, int spread, int lowest, double[] mass) {
            this.bias = bias;
            this.spread = spread;
            this.lowest = lowest;
            this.mass = mass;
        }

        Meeting plus(List<ScoreDistribution> hole) {
            ScoreDistribution usual = hole.get(0);
            ScoreDistribution biased = hole.get(bias);
            ScoreDistribution scattered = hole.get(spread);
            int low = lowestOf(List.of(usual, biased, scattered));
            int high = highestOf(List.of(usual, biased, scattered));
            double[] sum = new double[mass.length + high - low];
            for (int score = low; score <= high; score++) {
                double p = biased.probability(score) + scattered.probability(score) - usual.probability(score);
                for (int i = 0; i < mass.length; i++) {
                    sum[i + score - low] += p * mass[i];
                }
            }
            return new Meeting(bias, spread, lowest + low, sum);
        }

        double probability(int score) {
            return score < lowest || score >= lowest + mass.length ? 0 : mass[score - lowest];
        }
    }

    private RoundScores(List<RoundDay> days, List<ScoreDistribution> byDay, List<Meeting> meetings) {
        this.days = days;
        this.byDay = List.copyOf(byDay);
        this.meetings = List.copyOf(meetings);
    }

    /** No hole yet. {@code days} begins with the ordinary one, each other differs from it in bias or in spread, not in both. */
    public static RoundScores none(List<RoundDay> days) {
        List<Meeting> meetings = new ArrayList<>();
        for (int b = 1; b < days.size(); b++) {
            for (int s = 1; s < days.size(); s++) {
                if (days.get(b).spread() == 1 && days.get(s).spread() != 1) {
                    meetings.add(new Meeting(b, s, 0, new double[] {1}));
                }
            }
        }
        return new RoundScores(
                List.copyOf(days),
                days.stream().map(d -> ScoreDistribution.certain(0)).toList(),
                meetings);
    }

    /** With one more hole, its score given by day. */
    public RoundScores plus(List<ScoreDistribution> hole) {
        return new RoundScores(
                days,
                IntStream.range(0, days.size())
                        .mapToObj(d -> byDay.get(d).plus(hole.get(d)))
                        .toList(),
                meetings.stream().map(m -> m.plus(hole)).toList());
    }

    /** The distribution over all days of holes whose scores are given by day. */
    public static ScoreDistribution over(List<RoundDay> days, List<List<ScoreDistribution>> holes) {
        RoundScores sum = none(days);
        for (List<ScoreDistribution> hole : holes) {
            sum = sum.plus(hole);
        }
        return sum.overDays();
    }

    /** The distribution on one of the days. */
    ScoreDistribution onDay(int day) {
        return byDay.get(day);
    }

    /** The distribution over all days. */
    public ScoreDistribution overDays() {
        int low = lowestOf(byDay);
        double[] out = new double[highestOf(byDay) - low + 1];
        double all = 0;
        for (int i = 0; i < out.length; i++) {
            double p = meeting(low + i);
            for (int d = 0; d < days.size(); d++) {
                p += days.get(d).weight() * byDay.get(d).probability(low + i);
            }
            out[i] = Math.max(0, p);
            all += out[i];
        }
        for (int i = 0; i < out.length; i++) {
            out[i] /= all;
        }
        return ScoreDistribution.of(low, out);
    }

    /** What the days on which bias and spread meet add to the mixture of the others in the chance of a total up to this. */
    double meetingUpTo(int total) {
        return IntStream.rangeClosed(lowestOf(byDay), Math.min(total, highestOf(byDay)))
                .mapToDouble(this::meeting)
                .sum();
    }

    private double meeting(int score) {
        double sum = 0;
        for (Meeting m : meetings) {
            double alone = byDay.get(m.bias).probability(score)
                    + byDay.get(m.spread).probability(score)
                    - byDay.get(0).probability(score);
            sum += days.get(m.bias).weight() * days.get(m.spread).weight() * (m.probability(score) - alone);
        }
        return sum;
    }

    private static int lowestOf(List<ScoreDistribution> some) {
        return some.stream().mapToInt(ScoreDistribution::lowest).min().orElseThrow();
    }

    private static int highestOf(List<ScoreDistribution> some) {
        return some.stream().mapToInt(ScoreDistribution::highest).max().orElseThrow();
    }
}
