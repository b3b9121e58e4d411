package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loopwright.course.Course;
import loopwright.course.Hole;

/** Reads which holes are played: "1-18", "10-18,1-9", "3,5,7". */
final class HoleNumberList {
    private HoleNumberList() {}

    static List<Hole> read(String text, Course course) {
        if (text.isBlank()) {
            return course.holes();
        }
        List<Hole> out = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            String[] ends = part.strip().split("-", -1);
            int first = number(ends[0], text);
            int last = ends.length == 1 ? first : number(ends[1], text);
            if (ends.length > 2 || first > last) {
                throw misread(text);
            }
            for (int n = first; n <= last; n++) {
                out.add(hole(n, course));
            }
        }
        if (out.stream().distinct().count() != out.size()) {
            throw new UserFault("--holes " + text + " names a hole twice; each hole can be played once.");
        }
        return out;
    }

    /** The same holes begun with another one, and round to the one before it. */
    static List<Hole> startingAt(int number, List<Hole> holes) {
        if (number == 0) {
            return holes;
        }
        for (int i = 0; i < holes.size(); i++) {
            if (holes.get(i).number() == number) {
                List<Hole> out = new ArrayList<>(holes.subList(i, holes.size()));
                out.addAll(holes.subList(0, i));
                return out;
            }
        }
        throw new UserFault("--start-hole " + number + " is not among the holes played, " + words(holes) + ".");
    }

    /** "1 to 18", or every number where one is left out. */
    private static String words(List<Hole> holes) {
        List<Integer> numbers = holes.stream().map(Hole::number).toList();
        int first = numbers.get(0);
        int last = first + numbers.size() - 1;
        return numbers.equals(IntStream.rangeClosed(first, last).boxed().toList())
                ? first + " to " + last
                : numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    static Hole hole(int number, Course course) {
        return course.holes().stream()
                .filter(h -> h.number() == number)
                .findFirst()
                .orElseThrow(() -> new UserFault("There is no hole " + number + " on " + course.name()
                        + "; its holes are " + course.holes().get(0).number() + " to "
                        + course.holes().get(course.holes().size() - 1).number() + "."));
    }

    private static int number(String text, String whole) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            throw misread(whole);
        }
    }

    private static UserFault misread(String text) {
        return new UserFault("--holes " + text + " is not a list of holes; write for example 1-18, 10-18 or 3,5,7.");
    }
}
