package loopwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.UserFault;
import loopwright.scoring.ApproachResult;
import loopwright.scoring.CourseCard.HoleCard;
import loopwright.scoring.HoleCounts;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.Lie;
import loopwright.scoring.ShotRecord;
import loopwright.scoring.Stroke;
import loopwright.scoring.TeeBall;
import loopwright.units.Distance;
import org.jspecify.annotations.Nullable;

/**
 * One hole typed as one short line.
 *
 * <p>Counts: {@code 5 l s 0 1 4 2} is score, tee ball (i in play, l left, r right, x lost; left out on a par 3),
 * approach (g green, l, r, s short, o over), penalties, chips, paces of the first putt, putts. A dash leaves one out,
 * the end of the line leaves out the rest. Strokes: {@code t371/d r152/7 s21 g11 g2} is lie (t tee, f fairway, r rough,
 * s sand, x recovery, g green), distance to the hole (feet on the green, else yards) and club of each stroke;
 * {@code !} after one is a penalty stroke, {@code c} after the last a conceded putt, {@code p} picked up.
 */
record HoleShorthand(int number, Optional<HoleCard> card) {
    private static final Map<String, TeeBall> TEE_BALLS =
            Map.of("i", TeeBall.IN_PLAY, "l", TeeBall.LEFT, "r", TeeBall.RIGHT, "x", TeeBall.LOST);
    private static final Map<String, ApproachResult> APPROACHES = Map.of(
            "g", ApproachResult.ON_GREEN,
            "l", ApproachResult.LEFT,
            "r", ApproachResult.RIGHT,
            "s", ApproachResult.SHORT,
            "o", ApproachResult.LONG);
    private static final Map<String, Lie> LIES =
            Map.of("t", Lie.TEE, "f", Lie.FAIRWAY, "r", Lie.ROUGH, "s", Lie.SAND, "x", Lie.RECOVERY, "g", Lie.GREEN);
    private static final Pattern STROKE =
            Pattern.compile("([tfrsxg])(\\d{1,3}(?:\\.\\d)?)?(?:/([^\\s!]{1,20}?))?(!{0,3})([cp]?)");

    /** The fields of a line of counts, for the prompt. */
    String fields() {
        return isParThree()
                ? "score approach penalties chips paces putts"
                : "score tee approach penalties chips paces putts";
    }

    private boolean isParThree() {
        return card.isPresent() && card.get().par() == 3;
    }

    HoleRecord counts(String line) {
        List<String> words =
                new ArrayList<>(List.of(line.strip().toLowerCase(Locale.ROOT).split("\\s+", -1)));
        if (isParThree()) {
            words.add(1, "-");
        }
        if (words.size() > 7) {
            throw new UserFault("That is more than " + fields() + "; leave out the last ones or put a dash.");
        }
        while (words.size() < 7) {
            words.add("-");
        }
        boolean pickedUp = words.get(0).equals("x");
        OptionalInt score = pickedUp ? OptionalInt.empty() : whole("score", words.get(0), 1, 25);
        if (!pickedUp && score.isEmpty()) {
            throw new UserFault("A hole needs its score, or x for picked up.");
        }
        String putts = words.get(6);
        boolean conceded = putts.endsWith("c");
        HoleCounts counts = new HoleCounts(
                word("tee ball", words.get(1), TEE_BALLS, "i, l, r or x"),
                Optional.empty(),
                word("approach", words.get(2), APPROACHES, "g, l, r, s or o"),
                whole("penalties", words.get(3), 0, 9),
                whole("chips", words.get(4), 0, 9),
                paces(words.get(5)),
                whole("putts", conceded ? putts.substring(0, putts.length() - 1) : putts, 0, 9));
        HoleEnd end = pickedUp ? HoleEnd.PICKED_UP : conceded ? HoleEnd.CONCEDED : HoleEnd.HOLED;
        return hole(score, end, counts, List.of(), Optional.empty());
    }

    HoleRecord strokes(String line) {
        List<ShotRecord> shots = new ArrayList<>();
        HoleEnd end = HoleEnd.HOLED;
        for (String word : line.strip().split("\\s+", -1)) {
            if (end != HoleEnd.HOLED) {
                throw new UserFault(
                        "\"" + word + "\" comes after the end of the hole; c and p belong to the last stroke.");
            }
            Matcher stroke = STROKE.matcher(word);
            if (!stroke.matches()) {
                throw new UserFault(
                        "\"" + word + "\" is no stroke like r152/7: a lie (t f r s x g), the distance to the"
                                + " hole, if you like a slash and the club, then ! for a penalty stroke.");
            }
            shots.add(shot(word, stroke));
            end = endOf(String.valueOf(stroke.group(5)));
        }
        if (end != HoleEnd.CONCEDED) {
            return hole(OptionalInt.empty(), end, HoleCounts.NONE, shots, Optional.empty());
        }
        Stroke given = shots.remove(shots.size() - 1).stroke();
        if (shots.isEmpty()) {
            throw new UserFault("A putt cannot be conceded before the first stroke.");
        }
        return hole(OptionalInt.empty(), end, HoleCounts.NONE, shots, Optional.of(given));
    }

    private static HoleEnd endOf(String letter) {
        return switch (letter) {
            case "c" -> HoleEnd.CONCEDED;
            case "p" -> HoleEnd.PICKED_UP;
            default -> HoleEnd.HOLED;
        };
    }

    private ShotRecord shot(String word, Matcher stroke) {
        Lie lie = Objects.requireNonNull(LIES.get(String.valueOf(stroke.group(1))));
        return new ShotRecord(
                Optional.ofNullable(stroke.group(3)),
                lie,
                distance(word, lie, stroke.group(2)),
                Optional.empty(),
                String.valueOf(stroke.group(4)).length());
    }

    private Distance distance(String word, Lie lie, @Nullable String digits) {
        if (digits != null) {
            double value = Double.parseDouble(digits);
            return lie == Lie.GREEN ? Distance.ofFeet(value) : Distance.ofYards(value);
        }
        if (lie == Lie.TEE && card.isPresent()) {
            return card.get().length();
        }
        throw new UserFault("\"" + word + "\" needs the distance to the hole after its lie.");
    }

    private HoleRecord hole(
            OptionalInt score, HoleEnd end, HoleCounts counts, List<ShotRecord> shots, Optional<Stroke> conceded) {
        return new HoleRecord(
                number,
                card.map(c -> OptionalInt.of(c.par())).orElse(OptionalInt.empty()),
                card.map(HoleCard::length).filter(length -> length.metres() > 0),
                score,
                end,
                Set.of(),
                counts,
                shots,
                conceded);
    }

    private static OptionalInt whole(String what, String word, int low, int high) {
        if (word.equals("-")) {
            return OptionalInt.empty();
        }
        if (!word.matches("\\d{1,2}") || Integer.parseInt(word) < low || Integer.parseInt(word) > high) {
            throw new UserFault("\"" + word + "\" is no " + what + " from " + low + " to " + high + ".");
        }
        return OptionalInt.of(Integer.parseInt(word));
    }

    private static Optional<Distance> paces(String word) {
        if (word.equals("-")) {
            return Optional.empty();
        }
        if (!word.matches("\\d{1,2}(\\.5)?")) {
            throw new UserFault("\"" + word + "\" is no first putt in paces, like 4 or 4.5.");
        }
        return Optional.of(Distance.ofYards(Double.parseDouble(word)));
    }

    private static <T> Optional<T> word(String what, String word, Map<String, T> words, String accepted) {
        if (word.equals("-")) {
            return Optional.empty();
        }
        T meaning = words.get(word);
        if (meaning == null) {
            throw new UserFault("\"" + word + "\" is no " + what + "; type " + accepted + ", or a dash.");
        }
        return Optional.of(meaning);
    }
}
