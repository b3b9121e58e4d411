package loopwright.action;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.player.Evidence;
import loopwright.player.FittedPlayer;
import loopwright.player.Interval;
import loopwright.player.Player;
import loopwright.player.SwingReport;
import loopwright.player.TouchReport;
import loopwright.putting.PuttingFit;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;

/** The numbers of a fit in the trade's units; component names are the keys of {@code docs/schema/fit.schema.json}. */
public record FitResult(
        String name,
        String hand,
        double level,
        List<ClubResult> clubs,
        List<ShortResult> shortGame,
        @Nullable PuttingResult putting,
        List<String> notes) {

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

    /**
     * One short shot.
     *
     * @param spread times the spread of the level
     * @param mishitRate from a good lie of its own
     * @param fromYards the distance that the next two speak of
     * @param halfWithinFeet every second ball stops so near
     * @param holed chance of holing it
     */
    public record ShortResult(
            String shot,
            int balls,
            double assumedShare,
            Range spread,
            Range mishitRate,
            double fromYards,
            Range halfWithinFeet,
            Range holed) {
        static ShortResult of(TouchReport r) {
            Evidence e = r.shot().evidence();
            return new ShortResult(
                    r.shot().kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    e.balls(),
                    Math.rint(e.assumedShare() * 1000) / 1000,
                    Range.of(r.spread(), 1),
                    Range.of(r.mishitRate(), 1),
                    Math.rint(Distance.ofMetres(r.atMetres()).yards()),
                    Range.of(r.halfWithinMetres(), 1 / Distance.METRES_PER_FOOT),
                    Range.of(r.holed(), 1));
        }
    }

    /**
     * Logged putts.
     *
     * @param directionDegrees spread of direction, start line and reading as one
     * @param startLineDegrees the start line alone; none without putts on a line known to be straight
     */
    public record PuttingResult(
            int putts,
            Range directionDegrees,
            Range pacePercent,
            @Nullable Range startLineDegrees) {
        static PuttingResult of(PuttingFit fit) {
            return new PuttingResult(
                    fit.putts(),
                    range(fit.direction(), Math.toDegrees(1)),
                    range(fit.pace(), 100),
                    fit.findStartLine().map(e -> range(e, Math.toDegrees(1))).orElse(null));
        }

        private static Range range(PuttingFit.Estimate e, double factor) {
            return Range.of(new Interval(e.value(), e.low(), e.high()), factor);
        }
    }

    static FitResult of(
            FittedPlayer fitted, List<TouchReport> touch, Optional<PuttingFit> putting, List<String> notes) {
        Player player = fitted.profile().player();
        return new FitResult(
                player.name(),
                player.hand().name().toLowerCase(Locale.ROOT),
                player.level(),
                fitted.reports().stream().map(FitResult::club).toList(),
                touch.stream().map(ShortResult::of).toList(),
                putting.map(PuttingResult::of).orElse(null),
                List.copyOf(notes));
    }

    FitResult withNotes(List<String> newNotes) {
        return new FitResult(name, hand, level, clubs, shortGame, putting, newNotes);
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
