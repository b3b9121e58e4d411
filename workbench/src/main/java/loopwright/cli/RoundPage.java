package loopwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import loopwright.action.ReadLengths;
import loopwright.action.ReportWords;
import loopwright.scoring.Gain;
import loopwright.scoring.RoundRecord;
import loopwright.scoring.RoundReview;
import loopwright.scoring.Share;
import loopwright.scoring.Tally;

/** A round's review as a page of plain text: strokes as rows of a ledger. */
final class RoundPage {
    private final PrintWriter out;
    private final ReadLengths lengths;

    RoundPage(PrintWriter out, ReadLengths lengths) {
        this.out = out;
        this.lengths = lengths;
    }

    void print(RoundReview review) {
        RoundRecord round = review.round();
        say("");
        say(title(round));
        if (round.team()) {
            say("A team format: other players' strokes are in the score, so take it lightly.");
        }
        if (round.lesson()) {
            say("Played as a lesson: these holes are no score.");
        }
        say(tierSentence(round));
        say("");
        gains(review);
        counts(review.tally());
        questions(review);
    }

    private static String title(RoundRecord round) {
        List<String> parts = new ArrayList<>();
        parts.add("Round " + round.name());
        round.date().filter(d -> !d.equals(round.name())).ifPresent(parts::add);
        round.course().ifPresent(parts::add);
        round.tees().ifPresent(t -> parts.add("tees " + t));
        round.format().ifPresent(parts::add);
        parts.add(round.holes().size() + " holes" + (round.startHole() == 1 ? "" : " from hole " + round.startHole()));
        return String.join(", ", parts) + ": " + score(round) + ".";
    }

    private static String score(RoundRecord round) {
        OptionalInt score = round.score();
        if (score.isEmpty()) {
            return "no total, since not every hole has a score";
        }
        if (round.par().isEmpty()) {
            return String.valueOf(score.getAsInt());
        }
        int over = score.getAsInt() - round.par().getAsInt();
        return score.getAsInt() + " (" + (over == 0 ? "par" : String.format(Locale.ROOT, "%+d", over)) + ")";
    }

    private static String tierSentence(RoundRecord round) {
        return switch (round.tier()) {
            case SCORE ->
                "Written down: the score of each hole. It tells totals, and strokes gained of whole holes"
                        + " where lengths are given; not where the strokes went.";
            case COUNTS ->
                "Written down: counts of each hole. They tell putting, penalties and the way to the green"
                        + " as a whole; not tee shots, approaches and chips apart.";
            case SHOTS ->
                "Written down: lie and distance of each stroke. They tell every part of the game; not"
                        + " direction, and not whether a stroke was badly chosen, badly struck or unlucky.";
            case PLACES ->
                "Written down: the place of each stroke. It tells every part of the game and direction;"
                        + " not the aim.";
        };
    }

    private void gains(RoundReview review) {
        if (review.holes().isEmpty()) {
            say("Strokes gained: nothing to measure, since neither lengths, first putts nor strokes are written down.");
        } else {
            say("Strokes gained against " + review.baseline() + ":");
            say(String.format(Locale.ROOT, "  %-34s %7s %9s", "", "strokes", "gained"));
            review.rows().forEach(this::gain);
            say(String.format(Locale.ROOT, "  %-34s %7d %+9.2f", "sum", review.strokes(), review.total()));
            say(String.format(
                    Locale.ROOT,
                    "  The sum is %.2f (what they need from there)%s less %d strokes on %d holes.",
                    review.start(),
                    review.end() > 0 ? String.format(Locale.ROOT, " less %.2f not played out", review.end()) : "",
                    review.strokes(),
                    review.holes().size()));
            unpublished(review);
        }
        if (!review.leftOut().isEmpty()) {
            say("  Left out, since too little is written down: hole " + numbers(review.leftOut()) + ".");
        }
        say("");
    }

    private void gain(Gain gain) {
        say(String.format(
                Locale.ROOT,
                "  %-34s %7d %+9.2f",
                ReportWords.band(gain.band(), lengths),
                gain.strokes(),
                gain.gained()));
    }

    private void unpublished(RoundReview review) {
        int count = review.rows().stream().mapToInt(Gain::unpublished).sum();
        if (count > 0) {
            say("  " + count + (count == 1 ? " stroke was" : " strokes were")
                    + " nearer or farther than the published tables go; there our extension is used.");
        }
    }

    private void counts(Tally tally) {
        if (tally.birdiesOrBetter() + tally.pars() + tally.bogeys() + tally.doublesOrWorse() > 0) {
            say(String.format(
                    Locale.ROOT,
                    "Holes: %d birdie or better, %d par, %d bogey, %d double bogey or worse%s.",
                    tally.birdiesOrBetter(),
                    tally.pars(),
                    tally.bogeys(),
                    tally.doublesOrWorse(),
                    tally.pickedUp() > 0 ? ", " + tally.pickedUp() + " picked up" : ""));
        }
        List<String> counts = new ArrayList<>();
        share("tee balls in play", tally.teeBallsInPlay()).ifPresent(counts::add);
        share("fairways", tally.fairways()).ifPresent(counts::add);
        share("greens in regulation", tally.greens()).ifPresent(counts::add);
        share("up and down", tally.upAndDowns()).ifPresent(counts::add);
        tally.putts().ifPresent(putts -> counts.add("putts " + putts));
        share("three putts or more", tally.threePutts()).ifPresent(counts::add);
        tally.penaltyStrokes().ifPresent(p -> counts.add("penalty strokes " + p));
        if (!counts.isEmpty()) {
            say("Counts: " + String.join("; ", counts) + ".");
        }
    }

    private static Optional<String> share(String what, Share share) {
        return share.of() == 0 ? Optional.empty() : Optional.of(what + " " + share.made() + " of " + share.of());
    }

    private void questions(RoundReview review) {
        if (review.oddities().isEmpty()) {
            return;
        }
        say("Please look at these once; any of them can be right (then write yes in a column \"checked\"):");
        review.oddities().forEach(oddity -> say("  " + OdditySentence.of(oddity, lengths)));
    }

    private static String numbers(List<Integer> holes) {
        return holes.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private void say(String line) {
        out.println(line);
    }
}
