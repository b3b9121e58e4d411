package loopwright.action;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.player.BallCount;
import loopwright.player.Club;
import loopwright.player.ClubTable;
import loopwright.player.Mishit;
import loopwright.player.Setting;
import loopwright.player.Swing;
import loopwright.player.Zone;
import loopwright.units.Distance;

/**
 * Reads counted balls as a coach says them: "10 drives: 6 inside 30 yd, 3 right, 1 topped" or
 * "8 half 56-wedges: 3 short, 4 level, 1 long of a flag at 50 yd". Inside, left and right speak of a strip of that width about
 * the line; short, level and long of a flag at that distance, level being within 5 yd of it. A width or distance may stand in
 * any part or once behind the club. Yards unless m or ft is said.
 */
public final class CountText {
    private static final Pattern WHOLE = Pattern.compile("([^:]+):(.+)");
    private static final Pattern BALLS = Pattern.compile("(\\d{1,3}) *(?:x |balls? (?:with |of )?)?(.+)");
    private static final Pattern LENGTH =
            Pattern.compile("\\b(\\d+(?:\\.\\d+)?)[ -]*(yards?|yds?|y|m|metres?|meters?|ft|feet|paces)?\\b");
    private static final Pattern SIGNED = Pattern.compile("(?:^|\\s)[-+]\\s*\\d");
    private static final Pattern TARGET = Pattern.compile(" (?:to|at|on|into|over) .*");
    private static final Pattern PART = Pattern.compile("(\\d{1,3}) +(.+)");
    private static final int MOST_BALLS = 500;

    /** Words that may stand about the one that counts. */
    private static final Set<String> FILLERS = Set.of(
            "a", "an", "the", "of", "at", "to", "on", "it", "flag", "pin", "hole", "target", "strip", "wide", "was",
            "were", "ball", "balls", "line");

    private static final Map<String, String> SAME = Map.ofEntries(
            Map.entry("in", "inside"),
            Map.entry("within", "inside"),
            Map.entry("past", "long"),
            Map.entry("beyond", "long"),
            Map.entry("high", "level"),
            Map.entry("top", "topped"),
            Map.entry("tops", "topped"),
            Map.entry("thinned", "thin"),
            Map.entry("bladed", "thin"),
            Map.entry("heavy", "fat"),
            Map.entry("chunked", "fat"),
            Map.entry("heeled", "heel"),
            Map.entry("toed", "toe"));
    private static final Map<String, Mishit.Kind> KINDS = Map.of(
            "topped", Mishit.Kind.TOPPED,
            "thin", Mishit.Kind.THIN,
            "fat", Mishit.Kind.FAT,
            "heel", Mishit.Kind.HEEL,
            "toe", Mishit.Kind.TOE);
    private static final List<String> ACROSS = List.of("inside", "left", "right");
    private static final List<String> ALONG = List.of("short", "level", "long");
    private static final String WORDS = "inside, left, right, short, level, long, topped, thin, fat, heel or toe";

    private static final Map<String, String> EFFORTS = Map.of(
            "half ",
            "half",
            "1/2 ",
            "half",
            "three-quarter ",
            "three-quarter",
            "three quarter ",
            "three-quarter",
            "3/4 ",
            "three-quarter",
            "full ",
            Swing.FULL);
    private static final Map<String, String> UNCLEAR = Map.of(
            "wedge", "pitching wedge, sand wedge or 56-wedge",
            "iron", "7-iron",
            "wood", "3-wood",
            "hybrid", "4-hybrid");

    /** What stands before the colon. */
    private record Head(Club club, String effort, Optional<Integer> balls, OptionalDouble metres) {}

    /** One part, its length not yet known where only another part says it. */
    private record Part(int balls, String word, OptionalDouble metres) {}

    private final String text;

    private CountText(String text) {
        this.text = text.strip();
    }

    /** The counts of one sentence; all of one session on this ground. */
    public static List<BallCount> parse(String text, Setting setting, int session) {
        return new CountText(text).counts(setting, session);
    }

    /** True if it is meant as such a sentence rather than as the name of a file or a row of a table. */
    public static boolean isMeant(String text) {
        return text.strip().matches("[^,;:\\t]+: .+");
    }

    private List<BallCount> counts(Setting setting, int session) {
        Matcher whole = WHOLE.matcher(text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
        if (!whole.matches()) {
            throw fault("a club, a colon and counts are expected");
        }
        Head head = head(whole.group(1).strip());
        List<Part> parts = parts(whole.group(2));
        check(head, parts);
        List<BallCount> out = new ArrayList<>();
        for (Part part : parts) {
            if (part.balls() > 0) {
                out.add(new BallCount(
                        head.club(), head.effort(), part.balls(), zone(part, parts, head), setting, session, 0));
            }
        }
        return out;
    }

    private void check(Head head, List<Part> parts) {
        int sum = parts.stream().mapToInt(Part::balls).sum();
        if (head.balls().isPresent() && head.balls().get() != sum) {
            throw fault(
                    "the counts add up to " + sum + ", not to " + head.balls().get());
        }
        if (sum < 1 || sum > MOST_BALLS) {
            throw fault("1 to " + MOST_BALLS + " balls are counted, not " + sum);
        }
        boolean across = parts.stream().anyMatch(p -> ACROSS.contains(p.word()));
        boolean along = parts.stream().anyMatch(p -> ALONG.contains(p.word()));
        if (across && along) {
            throw fault("a sentence counts across the line (inside, left, right) or along it (short, level, long),"
                    + " not both; count the same balls one way");
        }
    }

    private Head head(String words) {
        Matcher target = TARGET.matcher(words);
        OptionalDouble metres = OptionalDouble.empty();
        String swing = words;
        if (target.find()) {
            metres = length(target.group());
            swing = words.substring(0, target.start());
        }
        // "7 iron" is a club, "7 drives" are seven balls
        Matcher balls = BALLS.matcher(swing);
        boolean counted = find(swing).isEmpty() && balls.matches();
        String rest = counted ? balls.group(2) : swing;
        Optional<Integer> number = counted ? Optional.of(Integer.valueOf(balls.group(1))) : Optional.empty();
        for (Map.Entry<String, String> effort : EFFORTS.entrySet()) {
            if (rest.startsWith(effort.getKey())) {
                Club club = club(rest.substring(effort.getKey().length()));
                return new Head(club, effort(club, effort.getValue()), number, metres);
            }
        }
        return new Head(club(rest), Swing.FULL, number, metres);
    }

    private String effort(Club club, String effort) {
        if (!effort.equals(Swing.FULL) && club.family() != Club.Family.WEDGE) {
            throw fault("part swings are kept for wedges only, not for the " + club.name());
        }
        return effort;
    }

    private static Optional<Club> find(String word) {
        return word.matches("drives?|drivers")
                ? Optional.of(ClubTable.DRIVER)
                : ClubTable.find(word).or(() -> ClubTable.find(word.replaceAll("s$", "")));
    }

    private Club club(String words) {
        String word = words.strip().replaceFirst("^(?:the|a) ", "");
        String singular = word.replaceAll("s$", "");
        if (UNCLEAR.containsKey(singular)) {
            throw fault("\"" + word + "\" does not say which " + singular + "; say " + UNCLEAR.get(singular));
        }
        return find(word)
                .filter(c -> c.family() != Club.Family.PUTTER)
                .orElseThrow(() -> fault("\"" + word + "\" is no club to count; driver or 7-iron are"));
    }

    private List<Part> parts(String list) {
        return Arrays.stream(list.split("[,;]| and ", -1))
                .map(String::strip)
                .map(piece -> piece.replaceFirst("^and |[.]$", ""))
                .filter(piece -> !piece.isEmpty())
                .map(this::part)
                .toList();
    }

    private Part part(String piece) {
        Matcher m = PART.matcher(piece);
        if (!m.matches()) {
            throw fault("\"" + piece + "\" is not a number of balls and one of " + WORDS);
        }
        if (m.group(2).contains(" by ")) {
            throw fault("\"" + piece + "\" says by how much; only how many balls missed on a side is counted");
        }
        if (SIGNED.matcher(m.group(2)).find()) {
            throw fault("\"" + piece + "\" has a sign; a width or distance is written without one");
        }
        OptionalDouble metres = length(m.group(2));
        String words = LENGTH.matcher(m.group(2)).replaceFirst(" ");
        List<String> said = Arrays.stream(words.split("[ -]+", -1))
                .filter(w -> !w.isEmpty() && !FILLERS.contains(w))
                .map(w -> SAME.getOrDefault(w, w))
                .toList();
        Optional<String> unknown = said.stream().filter(w -> !isKnown(w)).findFirst();
        if (unknown.isPresent()) {
            throw fault("\"" + unknown.get() + "\" is unknown; " + WORDS + " are");
        }
        if (said.size() != 1) {
            throw fault("\"" + piece + "\" must name one of " + WORDS);
        }
        return new Part(Integer.parseInt(m.group(1)), said.get(0), metres);
    }

    private static boolean isKnown(String word) {
        return ACROSS.contains(word) || ALONG.contains(word) || KINDS.containsKey(word);
    }

    private Zone zone(Part part, List<Part> all, Head head) {
        Mishit.Kind kind = KINDS.get(part.word());
        if (kind != null) {
            return Zone.mishit(kind);
        }
        double metres = length(part, all, head);
        return switch (part.word()) {
            case "inside" -> Zone.inside(metres);
            case "left" -> Zone.leftOf(metres);
            case "right" -> Zone.rightOf(metres);
            case "short" -> Zone.shortOf(metres);
            case "level" -> Zone.level(metres);
            default -> Zone.longOf(metres);
        };
    }

    /** The part's own length, else the only one said for its kind, else the one behind the club. */
    private double length(Part part, List<Part> all, Head head) {
        List<String> kin = ACROSS.contains(part.word()) ? ACROSS : ALONG;
        List<Double> said = all.stream()
                .filter(p -> kin.contains(p.word()))
                .flatMap(p -> p.metres().stream().boxed())
                .distinct()
                .toList();
        if (part.metres().isPresent()) {
            return part.metres().getAsDouble();
        }
        if (said.size() > 1) {
            throw fault("\"" + part.word() + "\" needs a length of its own where the others name several");
        }
        return said.stream()
                .findFirst()
                .or(() -> head.metres().stream().boxed().findFirst())
                .orElseThrow(() -> fault(
                        kin == ACROSS
                                ? "\"" + part.word() + "\" needs the width of a strip, as in \"6 inside 30 yd\""
                                : "\"" + part.word() + "\" needs the distance of a flag, as in \"3 short of 140 yd\""));
    }

    private OptionalDouble length(String words) {
        List<Double> found = LENGTH.matcher(words).results().map(this::metres).toList();
        if (found.size() > 1) {
            throw fault("\"" + words.strip() + "\" names two lengths");
        }
        return found.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(found.get(0));
    }

    private double metres(MatchResult m) {
        double value = Double.parseDouble(m.group(1));
        String unit = m.group(2) == null ? "yd" : m.group(2);
        double metres = unit.startsWith("m")
                ? value
                : unit.startsWith("f")
                        ? Distance.ofFeet(value).metres()
                        : Distance.ofYards(value).metres();
        if (!(metres >= 1 && metres <= 400)) {
            throw fault("a width or distance is 1 to 430 yd");
        }
        return metres;
    }

    private UserFault fault(String why) {
        return new UserFault("The count \"" + text + "\" cannot be read: " + why
                + "; an example is \"10 drives: 6 inside 30 yd, 3 right, 1 topped\".");
    }
}
