package loopwright.action;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loopwright.course.Course;
import loopwright.player.StrikeModel;
import loopwright.strategy.ShotRules;

/** What the coach forbids or requires: "hole 1: 3-wood". */
final class ShotLocks {
    private static final Pattern FORM = Pattern.compile("\\s*(?:hole\\s+)?(\\d+)\\s*:\\s*(\\S.*?)\\s*");

    private ShotLocks() {}

    /** Rules by hole number; holes without locks are absent. */
    static Map<Integer, ShotRules> read(List<String> forbid, List<String> require, Course course, StrikeModel strikes) {
        Map<Integer, Set<Integer>> forbidden = parse("--forbid", forbid, course, strikes);
        Map<Integer, Set<Integer>> required = parse("--require", require, course, strikes);
        Set<Integer> holes = new HashSet<>(forbidden.keySet());
        holes.addAll(required.keySet());
        return holes.stream()
                .collect(Collectors.toMap(
                        h -> h,
                        h -> new ShotRules(forbidden.getOrDefault(h, Set.of()), required.getOrDefault(h, Set.of()))));
    }

    private static Map<Integer, Set<Integer>> parse(
            String option, List<String> texts, Course course, StrikeModel strikes) {
        Map<Integer, Set<Integer>> out = new HashMap<>();
        for (String text : texts) {
            Matcher m = FORM.matcher(text);
            if (!m.matches()) {
                throw new UserFault(option + " \"" + text
                        + "\" is not of the form \"hole 1: 3-wood\": a hole, a colon and a club.");
            }
            int hole = HoleNumberList.hole(Integer.parseInt(m.group(1)), course).number();
            out.computeIfAbsent(hole, h -> new HashSet<>()).addAll(shots(option, m.group(2), strikes));
        }
        return out;
    }

    private static Set<Integer> shots(String option, String club, StrikeModel strikes) {
        Set<Integer> found = IntStream.range(0, strikes.shots())
                .filter(s -> !strikes.isTouch(s))
                .filter(s -> strikes.swing(s).club().name().equalsIgnoreCase(club)
                        || strikes.label(s).equalsIgnoreCase(club))
                .boxed()
                .collect(Collectors.toSet());
        if (found.isEmpty()) {
            String bag = IntStream.range(0, strikes.shots())
                    .filter(s -> !strikes.isTouch(s))
                    .mapToObj(s -> strikes.swing(s).club().name())
                    .distinct()
                    .collect(Collectors.joining(", "));
            throw new UserFault(option + ": \"" + club + "\" is not in the bag, which holds " + bag + ".");
        }
        return found;
    }
}
