package loopwright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.scoring.StrokesGained.Gained;
import loopwright.units.Distance;

/**
 * The gains of one hole, as finely as its record allows; they add up to {@code start - end - strokes}.
 *
 * @param start strokes to hole out from where the record begins (the tee, or the first putt if nothing else is known)
 * @param end strokes to hole out from where it ends: 0 in the hole, more if the ball was picked up
 * @param strokes counted between the two, penalties and a conceded putt included
 */
public record HoleGains(int hole, double start, double end, int strokes, List<Gain> gains) {
    public HoleGains {
        gains = List.copyOf(gains);
    }

    public double total() {
        return gains.stream().mapToDouble(Gain::gained).sum();
    }

    /** The gains of a hole, or nothing if the record is too thin (no length, no distances). */
    public static Optional<HoleGains> of(StrokesBaseline baseline, HoleRecord hole) {
        if (!hole.shots().isEmpty()) {
            return ofShots(baseline, hole);
        }
        if (hole.end() != HoleEnd.HOLED || hole.score().isEmpty()) {
            return Optional.empty();
        }
        Optional<HoleGains> counts = ofCounts(baseline, hole);
        return counts.isPresent() ? counts : ofScore(baseline, hole);
    }

    private static Optional<HoleGains> ofShots(StrokesBaseline baseline, HoleRecord hole) {
        List<Stroke> strokes = hole.shots().stream().map(ShotRecord::stroke).toList();
        return switch (hole.end()) {
            case HOLED -> Optional.of(played(baseline, hole, strokes, 0, Optional.empty()));
            case CONCEDED -> hole.conceded().map(putt -> conceded(baseline, hole, strokes, putt));
            case PICKED_UP -> pickedUp(baseline, hole, strokes);
        };
    }

    private static HoleGains conceded(StrokesBaseline baseline, HoleRecord hole, List<Stroke> strokes, Stroke putt) {
        double left = at(baseline, putt.lie(), putt.toHole());
        Gain given = new Gain(Band.whole(PartOfGame.CONCEDED), 1, left - 1, 0);
        return played(baseline, hole, strokes, left, Optional.of(given));
    }

    /** The result of the last stroke is unknown, so the record ends before it. */
    private static Optional<HoleGains> pickedUp(StrokesBaseline baseline, HoleRecord hole, List<Stroke> strokes) {
        int known = strokes.size() - 1;
        if (known == 0) {
            return Optional.empty();
        }
        Stroke last = strokes.get(known);
        double left = at(baseline, last.lie(), last.toHole());
        return Optional.of(played(baseline, hole, strokes.subList(0, known), left, Optional.empty()));
    }

    private static HoleGains played(
            StrokesBaseline baseline, HoleRecord hole, List<Stroke> strokes, double left, Optional<Gain> given) {
        List<Gain> gains = new ArrayList<>();
        int penalties = 0;
        List<Gained> each = StrokesGained.ending(baseline, strokes, left);
        for (int i = 0; i < each.size(); i++) {
            Stroke stroke = strokes.get(i);
            int unpublished = baseline.isPublished(stroke.lie(), stroke.toHole()) ? 0 : 1;
            gains.add(new Gain(Band.of(stroke, hole.par()), 1, each.get(i).play(), unpublished));
            penalties += stroke.penaltyStrokes();
        }
        addPenalties(gains, penalties);
        given.ifPresent(gains::add);
        Stroke first = strokes.get(0);
        int counted = strokes.size() + penalties + (given.isPresent() ? 1 : 0);
        double end = given.isPresent() ? 0 : left;
        return new HoleGains(hole.number(), at(baseline, first.lie(), first.toHole()), end, counted, gains);
    }

    private static Optional<HoleGains> ofCounts(StrokesBaseline baseline, HoleRecord hole) {
        HoleCounts counts = hole.counts();
        if (counts.putts().isEmpty()) {
            return Optional.empty();
        }
        int putts = counts.putts().getAsInt();
        if (putts > 0 && counts.firstPutt().isEmpty()) {
            return Optional.empty();
        }
        int score = hole.score().getAsInt();
        double onGreen =
                putts == 0 ? 0 : at(baseline, Lie.GREEN, counts.firstPutt().orElseThrow());
        List<Gain> gains = new ArrayList<>();
        if (putts > 0) {
            Stroke first = new Stroke(Lie.GREEN, counts.firstPutt().orElseThrow(), 0);
            gains.add(new Gain(
                    Band.of(first, hole.par()),
                    putts,
                    onGreen - putts,
                    unpublished(baseline, Lie.GREEN, first.toHole())));
        }
        int penalties = counts.penaltyStrokes().orElse(0);
        if (hole.length().isEmpty() || score <= putts + penalties) {
            return putts == 0 ? Optional.empty() : Optional.of(new HoleGains(hole.number(), onGreen, 0, putts, gains));
        }
        Distance length = hole.length().get();
        double start = at(baseline, Lie.TEE, length);
        int before = score - putts - penalties;
        gains.add(new Gain(
                Band.whole(PartOfGame.TO_THE_GREEN),
                before,
                start - onGreen - before,
                unpublished(baseline, Lie.TEE, length)));
        addPenalties(gains, penalties);
        return Optional.of(new HoleGains(hole.number(), start, 0, score, gains));
    }

    private static Optional<HoleGains> ofScore(StrokesBaseline baseline, HoleRecord hole) {
        OptionalInt score = hole.score();
        return hole.length().map(length -> {
            double start = at(baseline, Lie.TEE, length);
            Gain gain = new Gain(
                    Band.whole(PartOfGame.WHOLE_HOLE),
                    score.getAsInt(),
                    start - score.getAsInt(),
                    unpublished(baseline, Lie.TEE, length));
            return new HoleGains(hole.number(), start, 0, score.getAsInt(), List.of(gain));
        });
    }

    private static void addPenalties(List<Gain> gains, int penalties) {
        if (penalties > 0) {
            gains.add(new Gain(Band.whole(PartOfGame.PENALTIES), penalties, -penalties, 0));
        }
    }

    private static int unpublished(StrokesBaseline baseline, Lie lie, Distance toHole) {
        return baseline.isPublished(lie, toHole) ? 0 : 1;
    }

    private static double at(StrokesBaseline baseline, Lie lie, Distance toHole) {
        return baseline.strokesToHoleOut(lie, toHole);
    }
}
