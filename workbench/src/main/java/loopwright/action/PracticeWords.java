package loopwright.action;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import loopwright.practice.CommonSplit;
import loopwright.practice.Facility;
import loopwright.practice.Skill;

/** Skills, places and splits in words, and words as what they mean. */
public final class PracticeWords {
    private PracticeWords() {}

    public static String of(Skill skill) {
        return switch (skill) {
            case START_LINE -> "start line of putts";
            case PACE -> "pace of putts";
            case READING -> "reading greens";
            case DECISIONS -> "playing the plan";
            case LONG_APPROACH -> "long approaches";
            case MIDDLE_APPROACH -> "middle approaches";
            case SHORT_APPROACH -> "short approaches";
            case CHIP -> "chips";
            case PITCH -> "pitches";
            case BUNKER_SHOT -> "bunker shots";
            case MISHITS -> "strike (fewer mishits)";
            default -> plain(skill);
        };
    }

    /** "driver-direction", as it is typed. */
    public static String typed(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static String of(Facility facility) {
        return facility == Facility.HOME ? "at home" : plain(facility);
    }

    public static String of(CommonSplit split) {
        return switch (split) {
            case EQUAL -> "every skill alike";
            case RULE_OF_ALL -> "rule of thumb, wedges 35 % of all";
            case RULE_OF_HALF -> "rule of thumb, wedges 35 % of the half";
        };
    }

    public static Optional<Skill> findSkill(String typed) {
        return find(Skill.values(), typed);
    }

    public static Optional<Facility> findFacility(String typed) {
        return find(Facility.values(), typed);
    }

    private static <T extends Enum<T>> Optional<T> find(T[] values, String typed) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
        return Arrays.stream(values).filter(v -> typed(v).equals(wanted)).findFirst();
    }

    private static String plain(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
