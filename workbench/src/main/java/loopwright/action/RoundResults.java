package loopwright.action;

import java.util.List;
import java.util.OptionalInt;
import loopwright.scoring.Gain;
import loopwright.scoring.HoleGains;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Oddity;
import loopwright.scoring.RoundReview;
import loopwright.scoring.Share;
import loopwright.scoring.Tally;
import org.jspecify.annotations.Nullable;

/** Round reviews as plain numbers; component names are the keys of {@code docs/schema/round-review.schema.json}. */
public record RoundResults(String kind, String baseline, List<Round> rounds, List<Problem> problems) {

    /** One round. Sums: total = baselineStart - baselineEnd - strokesMeasured. */
    public record Round(
            String name,
            @Nullable String date,
            @Nullable String course,
            @Nullable String tees,
            @Nullable String format,
            boolean team,
            boolean lesson,
            String tier,
            int startHole,
            int holes,
            @Nullable Integer par,
            @Nullable Integer score,
            double baselineStart,
            double baselineEnd,
            int strokesMeasured,
            double total,
            List<Row> rows,
            List<Hole> byHole,
            List<Integer> leftOut,
            Counts counts,
            List<Question> questions) {}

    /** What strokes of a part and distance gained; a missing limit means no limit. */
    public record Row(
            String part,
            double fromMetres,
            @Nullable Double belowMetres,
            int strokes,
            double gained,
            int unpublished) {}

    public record Hole(
            int number,
            @Nullable Integer par,
            @Nullable Integer score,
            String end,
            double baselineStart,
            double baselineEnd,
            int strokes,
            double total) {}

    /** So many of so many. */
    public record Of(int made, int of) {
        static Of share(Share share) {
            return new Of(share.made(), share.of());
        }
    }

    public record Counts(
            int birdiesOrBetter,
            int pars,
            int bogeys,
            int doublesOrWorse,
            int pickedUp,
            Of teeBallsInPlay,
            Of fairways,
            Of greens,
            Of upAndDowns,
            Of threePutts,
            @Nullable Integer putts,
            @Nullable Integer penaltyStrokes) {}

    /** Something to look at once; numbers are metres or counts. */
    public record Question(String kind, int hole, int shot, double found, double beside) {}

    /** A row that could not be used. */
    public record Problem(long line, int column, String name, String value, String accepted) {}

    /** Brings reviews into plain numbers. */
    public static RoundResults of(List<RoundReview> reviews, List<RowProblem> problems) {
        return new RoundResults(
                "round review",
                reviews.get(0).baseline(),
                reviews.stream().map(RoundResults::round).toList(),
                problems.stream()
                        .map(p -> new Problem(p.line(), p.column(), p.name(), p.value(), p.accepted()))
                        .toList());
    }

    private static Round round(RoundReview review) {
        var round = review.round();
        return new Round(
                round.name(),
                round.date().orElse(null),
                round.course().orElse(null),
                round.tees().orElse(null),
                round.format().orElse(null),
                round.team(),
                round.lesson(),
                round.tier().name(),
                round.startHole(),
                round.holes().size(),
                whole(round.par()),
                whole(round.score()),
                review.start(),
                review.end(),
                review.strokes(),
                review.total(),
                review.rows().stream().map(RoundResults::row).toList(),
                review.holes().stream().map(gains -> hole(review, gains)).toList(),
                review.leftOut(),
                counts(review.tally()),
                review.oddities().stream().map(RoundResults::question).toList());
    }

    private static Row row(Gain gain) {
        return new Row(
                gain.band().part().name(),
                gain.band().from().metres(),
                gain.band().isOpen() ? null : gain.band().below().metres(),
                gain.strokes(),
                gain.gained(),
                gain.unpublished());
    }

    private static Hole hole(RoundReview review, HoleGains gains) {
        HoleRecord hole = review.round().holes().stream()
                .filter(h -> h.number() == gains.hole())
                .findFirst()
                .orElseThrow();
        return new Hole(
                hole.number(),
                whole(hole.par()),
                whole(hole.score()),
                hole.end().name(),
                gains.start(),
                gains.end(),
                gains.strokes(),
                gains.total());
    }

    private static Counts counts(Tally tally) {
        return new Counts(
                tally.birdiesOrBetter(),
                tally.pars(),
                tally.bogeys(),
                tally.doublesOrWorse(),
                tally.pickedUp(),
                Of.share(tally.teeBallsInPlay()),
                Of.share(tally.fairways()),
                Of.share(tally.greens()),
                Of.share(tally.upAndDowns()),
                Of.share(tally.threePutts()),
                whole(tally.putts()),
                whole(tally.penaltyStrokes()));
    }

    private static Question question(Oddity oddity) {
        return new Question(oddity.kind().name(), oddity.hole(), oddity.shot(), oddity.found(), oddity.beside());
    }

    private static @Nullable Integer whole(OptionalInt value) {
        return value.isPresent() ? value.getAsInt() : null;
    }
}
