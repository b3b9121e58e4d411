package loopwright.action;

import java.util.Optional;
import java.util.OptionalInt;

/** Which course of a file is meant: by part of its name, by its number in the listing, or the only one. */
public record CourseChoice(Optional<String> name, OptionalInt number) {
    public static final CourseChoice ONLY = new CourseChoice(Optional.empty(), OptionalInt.empty());

    public static CourseChoice named(String name) {
        return new CourseChoice(Optional.of(name), OptionalInt.empty());
    }

    public static CourseChoice numbered(int number) {
        return new CourseChoice(Optional.empty(), OptionalInt.of(number));
    }
}
