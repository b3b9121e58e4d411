package loopwright.cli;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import loopwright.action.SurveyCourse;
import loopwright.action.UserFault;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.HoleNotes;
import loopwright.course.LocalRule;
import loopwright.course.SkylineTarget;
import loopwright.course.TeePlan;
import loopwright.geo.LatLon;
import loopwright.geo.Place;
import loopwright.units.Distance;

/** One line of a survey: what it says and what it does to a course. Lengths in it are feet and yards. */
final class SurveyLine {
    static final List<String> HELP = List.of(
            "7 trees yes             every tree in play on hole 7 is on the map (also: out-of-bounds, penalty-areas,"
                    + " bunkers, all; yes or no)",
            "7 rules drop, zone      local rules of hole 7: drop (E-5), zone (E-1), preferred (E-3), temporary, none",
            "7 skyline LAT LON NAME  something to aim at from hole 7",
            "7 drop LAT LON          a dropping zone of hole 7",
            "7 temporary LAT LON     the temporary green of hole 7 is here and in use",
            "bunker ID 4 1           a bunker 4 ft deep whose lip is 1 ft high",
            "woods ID 40 6 1.5       a wood 40 ft high, branches from 6 ft, 1.5 times as dense as an ordinary one",
            "lost ID 20              a ball in this area is not found 20 times in 100; for ID also woods, deep-rough,"
                    + " rough: all of them",
            "tees today = back; 7: tee 2; 3: +10; all: +5    a mixed set, markers in yards nearer the hole",
            "border                  the border on the map is out of bounds, as staked");

    private static final Map<String, LocalRule> RULES = Map.of(
            "drop", LocalRule.DROP_INSTEAD_OF_STROKE_AND_DISTANCE,
            "zone", LocalRule.DROP_ZONE,
            "preferred", LocalRule.PREFERRED_LIES,
            "temporary", LocalRule.TEMPORARY_GREEN);

    private static final Map<String, AreaKind> LOST_IN =
            Map.of("woods", AreaKind.WOODS, "deep-rough", AreaKind.DEEP_ROUGH, "rough", AreaKind.ROUGH);

    private SurveyLine() {}

    /** The course after the line. */
    static Course apply(Course course, String line) {
        String[] words = line.strip().split("\\s+", 4);
        try {
            if (words[0].matches("\\d{1,2}") && words.length >= 3) {
                return ofHole(course, Integer.parseInt(words[0]), words[1], rest(line, 2));
            }
            return switch (words[0].toLowerCase(Locale.ROOT)) {
                case "bunker" -> bunker(course, line.strip().split("\\s+", -1));
                case "woods" -> woods(course, line.strip().split("\\s+", -1));
                case "lost" -> lost(course, line.strip().split("\\s+", -1));
                case "tees" -> SurveyCourse.withTees(course, tees(course, rest(line, 1)));
                case "border" -> course.withBoundaryConfirmed();
                default -> throw unclear(line);
            };
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            throw unclear(line);
        }
    }

    private static String rest(String line, int skipped) {
        String[] parts = line.strip().split("\\s+", skipped + 1);
        return parts.length > skipped ? parts[skipped] : "";
    }

    private static UserFault unclear(String line) {
        return new UserFault("\"" + line.strip() + "\" is not a line of a survey; write for example \"7 trees yes\" or"
                + " \"bunker way/12 4 1\" (\"help\" lists all).");
    }

    private static Course ofHole(Course course, int hole, String what, String value) {
        return switch (what.toLowerCase(Locale.ROOT)) {
            case "trees", "out-of-bounds", "penalty-areas", "bunkers", "all" -> tick(course, hole, what, yes(value));
            case "rules" -> SurveyCourse.withNotes(course, hole, n -> n.withLocalRules(rules(value)));
            case "skyline" -> SurveyCourse.withNotes(course, hole, n -> skyline(course, n, value));
            case "drop" -> SurveyCourse.withNotes(course, hole, n -> n.withDropZone(place(course, value)));
            case "temporary" -> SurveyCourse.withNotes(course, hole, n -> n.withTemporaryGreen(place(course, value)));
            case "spot", "arrow", "nine", "slopes" ->
                GreenLine.apply(course, hole, what.toLowerCase(Locale.ROOT), value);
            default -> throw unclear(hole + " " + what + " " + value);
        };
    }

    static Course tick(Course course, int hole, String what, boolean value) {
        return SurveyCourse.withSurvey(
                course,
                hole,
                s -> s.withTicks(
                        is(what, "trees") ? value : s.trees(),
                        is(what, "out-of-bounds") ? value : s.outOfBounds(),
                        is(what, "penalty-areas") ? value : s.penaltyAreas(),
                        is(what, "bunkers") ? value : s.bunkers()));
    }

    private static boolean is(String what, String tick) {
        return what.equalsIgnoreCase(tick) || what.equalsIgnoreCase("all");
    }

    static boolean yes(String answer) {
        return switch (answer.strip().toLowerCase(Locale.ROOT)) {
            case "y", "yes" -> true;
            case "n", "no" -> false;
            default -> throw new UserFault("\"" + answer.strip() + "\" is neither yes nor no.");
        };
    }

    private static Set<LocalRule> rules(String value) {
        Set<LocalRule> out = new TreeSet<>();
        for (String word : value.split("[,;]", -1)) {
            String name = word.strip().toLowerCase(Locale.ROOT);
            LocalRule rule = RULES.get(name);
            if (rule == null && !name.equals("none")) {
                throw new UserFault("\"" + name
                        + "\" is no local rule here; choose from drop, zone, preferred, temporary," + " none.");
            }
            if (rule != null) {
                out.add(rule);
            }
        }
        return out;
    }

    private static HoleNotes skyline(Course course, HoleNotes notes, String value) {
        String[] parts = value.split("\\s+", 3);
        if (parts.length < 3) {
            throw new UserFault("A skyline target needs latitude, longitude and a name.");
        }
        return notes.withSkylineTarget(new SkylineTarget(parts[2], place(course, value)));
    }

    static Place place(Course course, String value) {
        String[] parts = value.split("[\\s,]+", -1);
        LatLon at;
        try {
            at = new LatLon(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]));
        } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
            throw new UserFault("\"" + value + "\" does not start with a latitude and a longitude in degrees.", e);
        }
        Place place = SurveyCourse.frameOf(course).toPlace(at);
        if (!(Math.hypot(place.x(), place.y()) < 20_000)) {
            throw new UserFault("That place lies more than 20 km from the course; latitude comes first.");
        }
        return place;
    }

    private static Course bunker(Course course, String[] words) {
        return SurveyCourse.withBunker(course, words[1], feet(words[2]), feet(words[3]));
    }

    private static Course woods(Course course, String[] words) {
        double density = words.length > 4 ? Double.parseDouble(words[4]) : 1;
        return SurveyCourse.withWoods(course, words[1], feet(words[2]), feet(words[3]), density);
    }

    private static Course lost(Course course, String[] words) {
        double chance = Double.parseDouble(words[2].replace("%", "")) / 100;
        AreaKind kind = LOST_IN.get(words[1].toLowerCase(Locale.ROOT));
        return kind == null
                ? SurveyCourse.withNotFoundChance(course, words[1], chance)
                : SurveyCourse.withNotFoundChance(course, kind, chance);
    }

    private static double feet(String word) {
        return Distance.ofFeet(Double.parseDouble(word)).metres();
    }

    /** {@code today = back; 7: tee 2; 3: +10; all: +5}. */
    private static TeePlan tees(Course course, String text) {
        String[] sides = text.split("=", 2);
        if (sides.length < 2 || sides[0].isBlank()) {
            throw new UserFault("A set of tees is written NAME = SET; HOLE: SET or +yards; ...");
        }
        String[] parts = sides[1].split(";", -1);
        Map<Integer, String> sets = new HashMap<>();
        Map<Integer, Double> forward = new HashMap<>();
        Arrays.stream(parts).skip(1).filter(p -> !p.isBlank()).forEach(part -> {
            String[] pair = part.split(":", 2);
            if (pair.length < 2) {
                throw new UserFault("\"" + part.strip() + "\" should read HOLE: SET or HOLE: +yards.");
            }
            List<Integer> holes = pair[0].strip().equalsIgnoreCase("all")
                    ? course.holes().stream().map(h -> h.number()).toList()
                    : List.of(SurveyCourse.getHole(course, Integer.parseInt(pair[0].strip()))
                            .number());
            String value = pair[1].strip();
            if (value.matches("[+-]\\d{1,3}(\\.\\d+)?")) {
                double metres = Distance.ofYards(Double.parseDouble(value)).metres();
                holes.forEach(h -> forward.put(h, metres));
            } else {
                holes.forEach(h -> sets.put(h, value));
            }
        });
        return new TeePlan(sides[0].strip(), parts[0].strip(), sets, forward);
    }
}
