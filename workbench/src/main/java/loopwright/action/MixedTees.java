package loopwright.action;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.course.Course;
import loopwright.course.TeePlan;
import loopwright.course.TeeSet;

/** Reads a set of tees made hole by hole: "blend=white, blue 1 4 7, red 12": white, but for the holes named. */
final class MixedTees {
    private MixedTees() {}

    static TeePlan read(String text, Course course) {
        int equals = text.indexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
            throw new UserFault("--mixed " + text + " is no mixed set; write name=set, other set and its holes, for"
                    + " example \"blend=" + course.teeSets().get(0).name() + ", "
                    + course.teeSets().get(course.teeSets().size() - 1).name() + " 1 4 7\".");
        }
        String[] parts = text.substring(equals + 1).split(",", -1);
        Map<Integer, String> byHole = new HashMap<>();
        for (String part : Arrays.asList(parts).subList(1, parts.length)) {
            addHoles(byHole, part.strip(), course);
        }
        return new TeePlan(
                text.substring(0, equals).strip(), set(parts[0].strip(), course).name(), byHole, Map.of());
    }

    private static void addHoles(Map<Integer, String> byHole, String part, Course course) {
        String[] words = part.split("\\s+", -1);
        for (int named = words.length - 1; named > 0; named--) {
            Optional<TeeSet> set = course.findTeeSet(String.join(" ", Arrays.copyOf(words, named)));
            String[] holes = Arrays.copyOfRange(words, named, words.length);
            if (set.isPresent() && Arrays.stream(holes).allMatch(h -> h.matches("\\d{1,2}"))) {
                for (String h : holes) {
                    int number = Integer.parseInt(h);
                    HoleNumberList.hole(number, course);
                    byHole.put(number, set.get().name());
                }
                return;
            }
        }
        throw new UserFault("In --mixed, \"" + part + "\" is not a set followed by its holes; the sets are "
                + names(course) + ", for example \"" + course.teeSets().get(0).name() + " 1 4 7\".");
    }

    private static TeeSet set(String name, Course course) {
        return course.findTeeSet(name)
                .orElseThrow(() -> new UserFault(
                        "In --mixed there are no " + name + " tees; the sets are " + names(course) + "."));
    }

    private static String names(Course course) {
        return course.teeSets().stream().map(TeeSet::name).collect(Collectors.joining(", "));
    }
}
