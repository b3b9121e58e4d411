package loopwright.scoring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a round's record says against a baseline: gains by part of the game, the plain counts, and what looks odd.
 * The rows add up exactly to {@link #start} - {@link #end} - {@link #strokes} over the holes that could be measured.
 *
 * @param holes the measured holes
 * @param rows their gains by part and distance, in the order of the parts
 * @param leftOut numbers of the holes whose record is too thin to measure
 */
public record RoundReview(
        RoundRecord round,
        String baseline,
        List<HoleGains> holes,
        List<Gain> rows,
        List<Integer> leftOut,
        Tally tally,
        List<Oddity> oddities) {
    private static final Comparator<Band> ORDER =
            Comparator.comparing(Band::part).thenComparing(Band::from);

    public RoundReview {
        holes = List.copyOf(holes);
        rows = List.copyOf(rows);
        leftOut = List.copyOf(leftOut);
        oddities = List.copyOf(oddities);
    }

    public static RoundReview of(RoundRecord round, StrokesBaseline baseline) {
        List<HoleGains> measured = new ArrayList<>();
        List<Integer> leftOut = new ArrayList<>();
        for (HoleRecord hole : round.holes()) {
            Optional<HoleGains> gains = HoleGains.of(baseline.forHole(hole.number()), hole);
            gains.ifPresentOrElse(measured::add, () -> leftOut.add(hole.number()));
        }
        return new RoundReview(
                round, baseline.name(), measured, rowsOf(measured), leftOut, Tally.of(round), OddityCheck.of(round));
    }

    /** Strokes the baseline needs from where the measured holes begin. */
    public double start() {
        return holes.stream().mapToDouble(HoleGains::start).sum();
    }

    /** Strokes the baseline still needs where the record ends: 0 if every measured hole was finished. */
    public double end() {
        return holes.stream().mapToDouble(HoleGains::end).sum();
    }

    /** Strokes of the measured holes, penalties included. */
    public int strokes() {
        return holes.stream().mapToInt(HoleGains::strokes).sum();
    }

    /** The sum of the rows. */
    public double total() {
        return rows.stream().mapToDouble(Gain::gained).sum();
    }

    private static List<Gain> rowsOf(List<HoleGains> holes) {
        Map<Band, Gain> rows = new TreeMap<>(ORDER);
        holes.stream()
                .flatMap(hole -> hole.gains().stream())
                .forEach(gain -> rows.merge(gain.band(), gain, Gain::plus));
        return List.copyOf(rows.values());
    }
}
