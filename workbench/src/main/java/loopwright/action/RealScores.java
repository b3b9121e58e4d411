package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.handicap.TeeRating;

/**
 * Real scores as they count on the tees that are modelled. A score from other rated tees is brought here by its
 * differential: the score here that has the same one (Rules of Handicapping, Rule 5.1).
 *
 * @param setAside what could not be used, one sentence each, beginning with the line
 */
record RealScores(List<Double> scores, int converted, List<String> setAside) {
    /** Fewest and most strokes a hole that a whole round can mean, as of a player's last scores. */
    private static final int LEAST_A_HOLE = 3;

    private static final int MOST_A_HOLE = 10;
    private static final int WHOLE_ROUND = 9;

    RealScores {
        scores = List.copyOf(scores);
        setAside = List.copyOf(setAside);
    }

    /** The tees that are modelled. */
    record Here(String course, String tees, int holes, Optional<TeeRating> rating) {
        /** True if a row does not say that it was played anywhere else, or says that it was played from tees rated the same. */
        boolean isOf(ScoreFile.Total round) {
            if (round.rating().isPresent() && round.rating().equals(rating)) {
                return true;
            }
            boolean sameCourse = round.course()
                    .map(c -> plain(c).equals(plain(course)))
                    .orElse(round.rating().isEmpty());
            boolean sameTees =
                    round.tees().map(t -> plain(t).equals(plain(tees))).orElse(true);
            return sameCourse && sameTees;
        }

        /** False for what nobody scores over a round; of a few holes anything is believed. */
        boolean canBe(int score) {
            return holes < WHOLE_ROUND || (score >= LEAST_A_HOLE * holes && score <= MOST_A_HOLE * holes);
        }

        private static String plain(String name) {
            return name.strip().toLowerCase(Locale.ROOT);
        }
    }

    static RealScores of(ScoreFile.Totals totals, Here here) {
        List<Double> scores = new ArrayList<>();
        List<String> setAside = new ArrayList<>();
        int converted = 0;
        for (ScoreFile.Total round : totals.rounds()) {
            String line = "line " + round.line() + ": ";
            if (round.holes().isPresent() && round.holes().getAsInt() != here.holes) {
                setAside.add(line + round.holes().getAsInt() + " holes were played, " + here.holes
                        + " are modelled; name them with --holes.");
            } else if (!here.canBe(round.score())) {
                setAside.add(line + round.score() + " is no score of " + here.holes + " holes; "
                        + LEAST_A_HOLE * here.holes + " to " + MOST_A_HOLE * here.holes
                        + " is, and a round of other holes says so in a column holes.");
            } else if (here.isOf(round)) {
                scores.add((double) round.score());
            } else if (round.rating().isPresent() && here.rating.isPresent()) {
                scores.add(
                        here.rating.get().asGoodAs(round.score(), round.rating().get()));
                converted++;
            } else {
                setAside.add(line + "played from other tees than are modelled (" + here.course + ", " + here.tees
                        + "); to convert it, give rating and slope in the row and --rating and --slope here.");
            }
        }
        return new RealScores(scores, converted, setAside);
    }
}
