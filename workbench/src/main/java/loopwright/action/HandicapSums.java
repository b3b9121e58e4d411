package loopwright.action;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import loopwright.handicap.Averaging;
import loopwright.handicap.Caps;
import loopwright.handicap.CourseHandicap;
import loopwright.handicap.ExceptionalScore;
import loopwright.handicap.ScoreDifferential;
import loopwright.handicap.StrokesReceived;
import loopwright.handicap.TeeRating;
import org.jspecify.annotations.Nullable;

/** The sums of the Rules of Handicapping, with every value a person types checked before it is used. */
public final class HandicapSums {
    private static final int EIGHTEEN = 18;
    private static final int NINE = 9;

    /** A rating and what else the course card says. */
    public record Card(double rating, int slope, int par, int holes) {}

    /** The holes of a round cut short: how many, and their par. */
    public record Played(int holes, int par) {}

    /** An index from differentials, the most recent last; caps and exceptional scores where low and current are given. */
    public HandicapResults.Index index(List<Double> differentials, OptionalDouble low, OptionalDouble current) {
        int n = differentials.size();
        require(
                n >= Averaging.FEWEST,
                "%d differentials give no index yet; the Rules of Handicapping ask for at least 3",
                n);
        differentials.forEach(d -> requireWithin("differential", d, -20, 130));
        low.ifPresent(l -> requireIndex("low index", l));
        current.ifPresent(c -> requireIndex("current index", c));
        require(
                low.isEmpty() || n >= Averaging.MOST,
                "a low index exists only once there are 20 scores, and %d differentials were given; leave it out",
                n);
        double reduction =
                current.isPresent() ? ExceptionalScore.adjustment(differentials.get(n - 1), current.getAsDouble()) : 0;
        List<Double> recent = differentials.stream()
                .skip(Math.max(0, n - Averaging.MOST))
                .map(d -> tenths(d + reduction))
                .toList();
        return capped(recent, low, reduction);
    }

    private static HandicapResults.Index capped(List<Double> recent, OptionalDouble low, double reduction) {
        Averaging averaging = Averaging.of(recent);
        double calculated = averaging.index();
        Caps caps = Caps.of(calculated, low.orElse(calculated));
        return new HandicapResults.Index(
                "index",
                caps.index(),
                recent,
                averaging.counted().stream().map(recent::get).toList(),
                averaging.mean(),
                averaging.adjustment(),
                calculated,
                low.isPresent() ? low.getAsDouble() : null,
                caps.soft(),
                caps.hard(),
                reduction,
                HandicapResults.NOTE);
    }

    /** Of a whole round of the card's holes (18, or 9 with the player's index). */
    public HandicapResults.Differential differential(int gross, Card card, double conditions, OptionalDouble index) {
        TeeRating rating = rating(card);
        requireConditions(conditions);
        requireGross(gross, card.holes());
        if (card.holes() == EIGHTEEN) {
            double exact = ScoreDifferential.eighteenExact(gross, rating, conditions);
            double rounded = ScoreDifferential.eighteen(gross, rating, conditions);
            return differential(rounded, exact, EIGHTEEN, 0);
        }
        double forNine = needed(index, "a 9-hole differential");
        double expected = ScoreDifferential.expectedNine(forNine);
        double exact = ScoreDifferential.ninePart(gross, rating, conditions) + expected;
        return differential(ScoreDifferential.nine(gross, rating, conditions, forNine), exact, NINE, expected);
    }

    /** Of 10 to 17 holes of an 18-hole card. */
    public HandicapResults.Differential differential(
            int gross, Card card, Played played, double conditions, OptionalDouble index) {
        require(
                card.holes() == EIGHTEEN && played.holes() > NINE && played.holes() < EIGHTEEN,
                "%d holes of a card of %d cannot be counted; give 9, 10 to 17 or 18 holes",
                played.holes(),
                card.holes());
        TeeRating rating = rating(card);
        require(played.par() != 0, "a round of %d holes needs their par too; add --par-played", played.holes());
        requirePar(played.par(), played.holes());
        requireConditions(conditions);
        requireGross(gross, played.holes());
        double known = needed(index, "a differential of " + played.holes() + " holes");
        double exact =
                ScoreDifferential.partExact(gross, played.holes(), played.par(), rating, card.par(), conditions, known);
        double rounded =
                ScoreDifferential.part(gross, played.holes(), played.par(), rating, card.par(), conditions, known);
        double expected = ScoreDifferential.expectedNine(known) * (EIGHTEEN - played.holes()) / NINE;
        return differential(rounded, exact, played.holes(), expected);
    }

    private static HandicapResults.Differential differential(double rounded, double exact, int holes, double expected) {
        return new HandicapResults.Differential(
                "differential", rounded, exact, holes, expected, holes != EIGHTEEN, HandicapResults.NOTE);
    }

    public HandicapResults.Course course(double index, Card card) {
        CourseHandicap handicap = courseHandicap(index, card);
        return new HandicapResults.Course(
                "course", index, card.holes(), handicap.exact(), handicap.rounded(), HandicapResults.NOTE);
    }

    /** The allowance is a share: 0.95, or 95 as a percentage. */
    public HandicapResults.Playing playing(double index, Card card, double allowance) {
        requireWithin("allowance in per cent", allowance, 1, 150);
        CourseHandicap handicap = courseHandicap(index, card);
        double share = allowance / 100;
        return new HandicapResults.Playing(
                "playing",
                index,
                card.holes(),
                handicap.exact(),
                handicap.rounded(),
                allowance,
                handicap.exact() * share,
                handicap.playing(share),
                HandicapResults.NOTE);
    }

    public HandicapResults.Cap caps(double calculated, double low) {
        requireIndex("calculated index", calculated);
        requireIndex("low index", low);
        Caps caps = Caps.of(calculated, low);
        return new HandicapResults.Cap(
                "caps", calculated, low, caps.index(), caps.soft(), caps.hard(), HandicapResults.NOTE);
    }

    /** Pars and scores may be left out; scores need pars. */
    public HandicapResults.Strokes strokes(
            int handicap, List<Integer> strokeIndexes, List<Integer> pars, List<Integer> scores) {
        int holes = strokeIndexes.size();
        require(
                (holes == NINE || holes == EIGHTEEN)
                        && strokeIndexes.stream().distinct().count() == holes
                        && strokeIndexes.stream().allMatch(i -> i >= 1 && i <= EIGHTEEN),
                "stroke indexes are 9 or 18 different numbers from 1 to 18, in the order of the holes, not %s",
                strokeIndexes);
        requireWithin("handicap", handicap, -20, 90);
        requireSameLength("pars", pars, holes);
        requireSameLength("scores", scores, holes);
        pars.forEach(par -> requireWithin("par of a hole", par, 3, 6));
        scores.forEach(score -> requireWithin("score of a hole", score, 1, 99));
        require(scores.isEmpty() || !pars.isEmpty(), "scores can be adjusted only with the pars of their holes");
        List<Integer> received = StrokesReceived.perHole(handicap, strokeIndexes);
        return new HandicapResults.Strokes(
                "strokes",
                handicap,
                strokeIndexes,
                received,
                pars.isEmpty() ? null : most(pars, received),
                scores.isEmpty() ? null : StrokesReceived.adjustedGross(scores, pars, received),
                HandicapResults.NOTE);
    }

    private static List<Integer> most(List<Integer> pars, List<Integer> received) {
        return IntStream.range(0, pars.size())
                .mapToObj(i -> StrokesReceived.netDoubleBogey(pars.get(i), received.get(i)))
                .toList();
    }

    private static CourseHandicap courseHandicap(double index, Card card) {
        requireIndex("index", index);
        TeeRating rating = rating(card);
        requirePar(card.par(), card.holes());
        return card.holes() == NINE
                ? CourseHandicap.nine(index, rating, card.par())
                : CourseHandicap.eighteen(index, rating, card.par());
    }

    private static TeeRating rating(Card card) {
        require(card.holes() == NINE || card.holes() == EIGHTEEN, "a card has 9 or 18 holes, not %d", card.holes());
        int halves = card.holes() / NINE;
        requireWithin("course rating of " + card.holes() + " holes", card.rating(), 20 * halves, 45 * halves);
        requireWithin("slope", card.slope(), TeeRating.LOWEST_SLOPE, TeeRating.HIGHEST_SLOPE);
        return new TeeRating(card.rating(), card.slope());
    }

    private static double needed(OptionalDouble index, String what) {
        require(
                index.isPresent(),
                "%s needs the player's index, since the holes not played are expected from it",
                what);
        requireIndex("index", index.getAsDouble());
        return index.getAsDouble();
    }

    private static void requireGross(int gross, int holes) {
        requireWithin("adjusted gross score of " + holes + " holes", gross, 2 * holes, 11 * holes);
    }

    private static void requirePar(int par, int holes) {
        requireWithin("par of " + holes + " holes", par, 3 * holes, 6 * holes);
    }

    private static void requireConditions(double conditions) {
        requireWithin(
                "playing conditions calculation",
                conditions,
                ScoreDifferential.LOWEST_CONDITIONS,
                ScoreDifferential.HIGHEST_CONDITIONS);
    }

    private static void requireIndex(String what, double index) {
        requireWithin(what, index, -15, Averaging.HIGHEST_INDEX);
    }

    private static void requireSameLength(String what, List<Integer> values, int holes) {
        require(values.isEmpty() || values.size() == holes, "%d %s do not fit %d holes", values.size(), what, holes);
    }

    private static void requireWithin(String what, double value, double low, double high) {
        require(
                value >= low && value <= high,
                "the %s %s lies outside %s to %s; look at it again",
                what,
                number(value),
                number(low),
                number(high));
    }

    private static String number(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%s", value);
    }

    private static double tenths(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static void require(boolean good, String sentence, @Nullable Object... values) {
        if (!good) {
            String text = String.format(Locale.ROOT, sentence, values);
            throw new UserFault(Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".");
        }
    }
}
