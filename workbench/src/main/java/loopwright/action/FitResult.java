package loopwright.action;

import java.util.List;
import loopwright.player.FittedPlayer;
import loopwright.player.Interval;
import loopwright.player.Player;
import loopwright.player.SwingReport;
import loopwright.units.Distance;

/** The numbers of a fit in the trade's units; component names are the keys of {@code docs/schema/fit.schema.json}. */
public record FitResult(String name, String hand, double level, List<ClubResult> clubs, List<String> notes) {

    /** A value with its 90 % interval. */
    public record Range(double middle, double low, double high) {
        static Range of(Interval interval, double factor) {
            return new Range(
                    round(interval.middle() * factor), round(interval.low() * factor), round(interval.high() * factor));
        }

        private static double round(double value) {
            return Math.rint(value * 1e4) / 1e4;
        }
    }

    /**
     * One club and effort.
     *
     * @param balls measured or counted with it
     * @param assumedShare 0 (measured) to 1 (prior only)
     * @param source "measured", "measured in part" or "from the trend"
     * @param biasDegrees mean direction of solid shots, + right
     * @param eightInTenYards width that holds 8 of 10 balls where they land
     * @param eightInTenPercent the same as per cent of the carry
     */
    public record ClubResult(
            String club,
            String effort,
            int balls,
            double assumedShare,
            String source,
            Range carryYards,
            Range totalYards,
            Range biasDegrees,
            Range eightInTenYards,
            Range nineteenInTwentyYards,
            double eightInTenPercent,
            Range mishitRate) {}

    static FitResult of(FittedPlayer fitted, List<String> notes) {
        Player player = fitted.profile().player();
        return new FitResult(
                player.name(),
                player.hand().name().toLowerCase(java.util.Locale.ROOT),
                player.level(),
                fitted.reports().stream().map(FitResult::club).toList(),
                List.copyOf(notes));
    }

    private static ClubResult club(SwingReport r) {
        double yards = 1 / Distance.METRES_PER_YARD;
        double assumed = r.swing().evidence().assumedShare();
        int balls = r.swing().evidence().balls();
        return new ClubResult(
                r.swing().club().name(),
                r.swing().effort(),
                balls,
                Math.rint(assumed * 1000) / 1000,
                balls == 0 ? "from the trend" : assumed < 0.25 ? "measured" : "measured in part",
                Range.of(r.carry(), yards),
                Range.of(r.total(), yards),
                Range.of(r.bias(), Math.toDegrees(1)),
                Range.of(r.eightInTen(), yards),
                Range.of(r.nineteenInTwenty(), yards),
                Math.rint(r.eightInTenShare() * 1000) / 10,
                Range.of(r.mishitRate(), 1));
    }
}
