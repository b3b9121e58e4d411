package loopwright.action;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether the model knows a player: forecasts beside the scores of the rounds they were made for, before or after. Until there are
 * enough of them, and while they disagree, every chance of his is marked "not yet calibrated".
 *
 * @param outcomes forecasts whose round was played, in the order of their days
 * @param gap mean of real less foretold score, strokes over 18 holes; 0 without outcomes
 * @param error standard error of the gap, from the forecast's own standard deviations
 */
public record Standing(List<Outcome> outcomes, double gap, double error) {
    /** With fewer rounds than this nothing is called calibrated (assumed). */
    public static final int FEWEST = 5;

    /** 90 % of a normal law. */
    private static final double REACH = 1.645;

    private static final int ROUND_HOLES = 18;
    private static final int FIFTHS = 5;

    public Standing {
        outcomes = List.copyOf(outcomes);
    }

    /** A forecast and what happened. */
    public record Outcome(KeptForecast forecast, int score) {
        public boolean beaten() {
            return score <= forecast.target();
        }

        /** False if it was made after the day of the round, to see whether the model knows the player. */
        public boolean foretold() {
            return !forecast.at()
                    .isAfter(forecast.day().plusDays(1).atStartOfDay().toInstant(ZoneOffset.UTC));
        }
    }

    public static Standing of(PlayerRecords records, String player) {
        List<KeptRound> rounds = records.listRounds(player);
        List<Outcome> outcomes = new ArrayList<>();
        for (KeptForecast forecast : records.listForecasts(player)) {
            score(forecast, rounds).ifPresent(score -> outcomes.add(new Outcome(forecast, score)));
        }
        return of(outcomes);
    }

    static Standing of(List<Outcome> outcomes) {
        double sum = 0;
        double variance = 0;
        for (Outcome o : outcomes) {
            double per18 = (double) ROUND_HOLES / o.forecast().holes();
            sum += (o.score() - o.forecast().mean()) * per18;
            variance += o.forecast().sd() * o.forecast().sd() * per18 * per18;
        }
        int n = Math.max(1, outcomes.size());
        return new Standing(outcomes, sum / n, Math.sqrt(variance) / n);
    }

    /** The score of the round a forecast was made for: of its day, of as many holes, on its course where one is named. */
    private static Optional<Integer> score(KeptForecast forecast, List<KeptRound> rounds) {
        return rounds.stream()
                .filter(r -> !r.lesson()
                        && r.day().equals(forecast.day())
                        && r.holes() == forecast.holes()
                        && r.score().isPresent()
                        && (r.course().isEmpty() || r.course().equalsIgnoreCase(forecast.course())))
                .map(r -> r.score().getAsInt())
                .findFirst();
    }

    /** True if enough rounds were foretold and their mean lies within the interval. */
    public boolean calibrated() {
        return outcomes.size() >= FEWEST && !disagrees();
    }

    /** True if the gap is larger than chance explains, 9 in 10. */
    public boolean disagrees() {
        return !outcomes.isEmpty() && Math.abs(gap) > REACH * error;
    }

    /** The outcomes whose forecast was made before; only these are scored. */
    public List<Outcome> foretold() {
        return outcomes.stream().filter(Outcome::foretold).toList();
    }

    /** Mean squared difference of chance and outcome; 0 is perfect, 0.25 is what a coin earns; NaN without any. */
    public double brier() {
        return foretold().stream()
                .mapToDouble(o -> Math.pow(o.forecast().chance() - (o.beaten() ? 1 : 0), 2))
                .average()
                .orElse(Double.NaN);
    }

    /**
     * Forecasts whose chance lies between two values.
     *
     * @param meant their mean chance
     * @param beaten share of them that beat the target
     */
    public record Chances(double low, double high, int forecasts, double meant, double beaten) {}

    /** Whether chances came true, by fifths; fifths without a forecast are left out. */
    public List<Chances> chances() {
        List<Chances> out = new ArrayList<>();
        for (int fifth = 0; fifth < FIFTHS; fifth++) {
            int f = fifth;
            List<Outcome> of = foretold().stream()
                    .filter(o -> Math.min(FIFTHS - 1, (int) (o.forecast().chance() * FIFTHS)) == f)
                    .toList();
            if (!of.isEmpty()) {
                out.add(new Chances(
                        (double) f / FIFTHS,
                        (double) (f + 1) / FIFTHS,
                        of.size(),
                        of.stream()
                                .mapToDouble(o -> o.forecast().chance())
                                .average()
                                .orElseThrow(),
                        of.stream()
                                .mapToDouble(o -> o.beaten() ? 1 : 0)
                                .average()
                                .orElseThrow()));
            }
        }
        return out;
    }

    /** What is to be said beside a chance of this player. */
    public String sentence() {
        if (outcomes.isEmpty()) {
            return "not yet calibrated: no kept round stands beside a forecast (\"forecast check\" models the last rounds)";
        }
        String gapWords = String.format(
                Locale.ROOT,
                "%s modelled, real scores %.1f strokes %s than the model's (90 %% interval %+.1f to %+.1f)",
                outcomes.size() == 1 ? "1 round" : outcomes.size() + " rounds",
                Math.abs(gap),
                gap > 0 ? "higher" : "lower",
                gap - REACH * error,
                gap + REACH * error);
        return (calibrated() ? "calibrated: " : "not yet calibrated: ") + gapWords;
    }
}
