package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * "7-iron: 3 short, 5 level, 2 long of 140 yd". Inside, left and right speak of a strip of that width about the line; short,
 * level and long of a flag at that distance, level being within 5 yd of it. Yards unless m is said.
 */
public final class CountText {
    private static final Pattern WHOLE = Pattern.compile("(?:(\\d+) +)?([^:]+):(.+)");
    private static final Pattern PART =
            Pattern.compile("(\\d{1,3}) +([a-z]+)(?: +(?:of +)?(\\d+(?:\\.\\d+)?) *(yd|yards|m|metres)?)?(?: +wide)?");
    private static final Map<String, Mishit.Kind> KINDS = Map.of(
            "topped", Mishit.Kind.TOPPED,
            "thin", Mishit.Kind.THIN,
            "fat", Mishit.Kind.FAT,
            "heel", Mishit.Kind.HEEL,
            "toe", Mishit.Kind.TOE);
    private static final String WORDS = "inside, left, right, short, level, long, topped, thin, fat, heel or toe";

    /** One part, its length not yet known where only another part says it. */
    private record Part(int balls, String word, OptionalDouble metres) {}

    private CountText() {}

    /** The counts of one sentence; all of one session on this ground. */
    public static List<BallCount> parse(String text, Setting setting, int session) {
        Matcher whole = WHOLE.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!whole.matches()) {
            throw fault(text, "a club, a colon and counts are expected");
        }
        Club club = club(text, whole.group(2).strip());
        List<Part> parts = parts(text, whole.group(3));
        int sum = parts.stream().mapToInt(Part::balls).sum();
        if (whole.group(1) != null && Integer.parseInt(whole.group(1)) != sum) {
            throw fault(text, "the counts add up to " + sum + ", not to " + whole.group(1));
        }
        List<BallCount> out = new ArrayList<>();
        for (Part part : parts) {
            if (part.balls() > 0) {
                Zone zone = zone(text, part, parts);
                out.add(new BallCount(club, Swing.FULL, part.balls(), zone, setting, session, 0));
            }
        }
        return out;
    }

    private static Club club(String text, String word) {
        String singular = word.equals("drives") || word.equals("drive") ? "driver" : word.replaceAll("s$", "");
        Optional<Club> club = ClubTable.find(word).or(() -> ClubTable.find(singular));
        return club.filter(c -> c.family() != Club.Family.PUTTER)
                .orElseThrow(() -> fault(text, "\"" + word + "\" is no club to count; driver or 7-iron are"));
    }

    private static List<Part> parts(String text, String list) {
        List<Part> out = new ArrayList<>();
        for (String piece : list.split(",", -1)) {
            Matcher m = PART.matcher(piece.strip());
            if (!m.matches()) {
                throw fault(text, "\"" + piece.strip() + "\" is not a number of balls and one of " + WORDS);
            }
            OptionalDouble metres = OptionalDouble.empty();
            if (m.group(3) != null) {
                boolean isMetres = m.group(4) != null && m.group(4).startsWith("m");
                double value = Double.parseDouble(m.group(3));
                metres = OptionalDouble.of(
                        isMetres ? value : Distance.ofYards(value).metres());
            }
            out.add(new Part(Integer.parseInt(m.group(1)), m.group(2), metres));
        }
        return out;
    }

    private static Zone zone(String text, Part part, List<Part> all) {
        Mishit.Kind kind = KINDS.get(part.word());
        if (kind != null) {
            return Zone.mishit(kind);
        }
        List<String> across = List.of("inside", "left", "right");
        List<String> along = List.of("short", "level", "long");
        return switch (part.word()) {
            case "inside" -> Zone.inside(length(text, part, all, across));
            case "left" -> Zone.leftOf(length(text, part, all, across));
            case "right" -> Zone.rightOf(length(text, part, all, across));
            case "short" -> Zone.shortOf(length(text, part, all, along));
            case "level" -> Zone.level(length(text, part, all, along));
            case "long" -> Zone.longOf(length(text, part, all, along));
            default -> throw fault(text, "\"" + part.word() + "\" is unknown; " + WORDS + " are");
        };
    }

    /** The part's own length, else the only one said for its kind. */
    private static double length(String text, Part part, List<Part> all, List<String> kin) {
        if (part.metres().isPresent()) {
            return limited(text, part.metres().getAsDouble());
        }
        return all.stream()
                .filter(p -> kin.contains(p.word()) && p.metres().isPresent())
                .mapToDouble(p -> limited(text, p.metres().getAsDouble()))
                .findFirst()
                .orElseThrow(() -> fault(
                        text,
                        "\"" + part.word() + "\" needs a length, as in \"6 inside 30 yd\" or"
                                + " \"3 short of 140 yd\""));
    }

    private static double limited(String text, double metres) {
        if (!(metres >= 1 && metres <= 400)) {
            throw fault(text, "a width or distance is 1 to 430 yd");
        }
        return metres;
    }

    private static UserFault fault(String text, String why) {
        return new UserFault("The count \"" + text + "\" cannot be read: " + why
                + "; an example is \"10 drives: 6 inside 30 yd, 3 right, 1 topped\".");
    }
}
