package loopwright.action;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * The player file: what a coach asks at the beginning and looks at before every lesson, item to answer as it was typed.
 * Every item may be empty; a junior's file needs the word of a parent or guardian.
 */
public record Intake(Map<String, String> answers) {
    public static final String GOAL = "goal";
    public static final String BY = "by";
    public static final String HOURS = "hours";
    public static final String LIMITS = "limits";
    public static final String EYESIGHT = "eyesight";
    public static final String MOVES = "moves";
    public static final String HAND = "hand";
    public static final String AGE = "age";
    public static final String CONSENT = "consent";
    public static final String PLAYS = "plays";
    /** The items in the order in which they are asked. */
    public static final List<String> ITEMS =
            List.of(GOAL, BY, HOURS, LIMITS, EYESIGHT, MOVES, HAND, AGE, CONSENT, PLAYS);

    private static final int LONGEST = 2000;
    private static final double WEEK_HOURS = 168;

    public Intake {
        Map<String, String> kept = new LinkedHashMap<>();
        answers.forEach((item, answer) -> {
            if (!ITEMS.contains(item)) {
                throw new UserFault(
                        "A player file has no item \"" + item + "\"; it has " + String.join(", ", ITEMS) + ".");
            }
            if (answer.length() > LONGEST) {
                throw new UserFault(
                        "The answer to \"" + item + "\" is longer than " + LONGEST + " letters; shorten it.");
            }
            if (!answer.isBlank()) {
                kept.put(item, answer.strip());
            }
        });
        answers = Map.copyOf(kept);
        goal(answers);
        hours(answers);
        day(answers, BY);
        days(answers);
        oneOf(answers, MOVES, List.of("walks", "rides"));
        oneOf(answers, HAND, List.of("right", "left"));
        oneOf(answers, AGE, List.of("junior", "adult", "senior"));
        if ("junior".equals(answers.get(AGE)) && !answers.containsKey(CONSENT)) {
            throw new UserFault(
                    "A junior's file needs the consent of a parent or guardian: who gave it and when, such as"
                            + " \"mother, 2026-05-31\".");
        }
    }

    /** The same file with some items answered anew; an empty answer takes an item out. */
    public Intake with(Map<String, String> changes) {
        Map<String, String> all = new LinkedHashMap<>(answers);
        all.putAll(changes);
        return new Intake(all);
    }

    /** An answer as it was typed. */
    public Optional<String> find(String item) {
        return Optional.ofNullable(answers.get(item));
    }

    /** The score to reach over 18 holes. */
    public OptionalInt goalScore() {
        return goal(answers);
    }

    public Optional<LocalDate> goalDate() {
        return day(answers, BY);
    }

    public OptionalDouble hoursAWeek() {
        return hours(answers);
    }

    /** Days on which rounds are to be played, in order. */
    public List<LocalDate> plays() {
        return days(answers);
    }

    private static OptionalInt goal(Map<String, String> answers) {
        String text = answers.getOrDefault(GOAL, "");
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        if (!text.matches("\\d{2,3}") || Integer.parseInt(text) < 50 || Integer.parseInt(text) > 150) {
            throw unusable(GOAL, text, "a score from 50 to 150");
        }
        return OptionalInt.of(Integer.parseInt(text));
    }

    private static OptionalDouble hours(Map<String, String> answers) {
        String text = answers.getOrDefault(HOURS, "").replace(',', '.');
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!text.matches("\\d{1,3}(\\.\\d{1,2})?") || Double.parseDouble(text) > WEEK_HOURS) {
            throw unusable(HOURS, text, "the hours of a week, such as 3.5");
        }
        return OptionalDouble.of(Double.parseDouble(text));
    }

    private static Optional<LocalDate> day(Map<String, String> answers, String item) {
        return Optional.ofNullable(answers.get(item)).map(text -> day(item, text));
    }

    private static List<LocalDate> days(Map<String, String> answers) {
        return Stream.of(answers.getOrDefault(PLAYS, "").split("[,; ]+", -1))
                .filter(text -> !text.isEmpty())
                .map(text -> day(PLAYS, text))
                .sorted()
                .distinct()
                .toList();
    }

    private static LocalDate day(String item, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw unusable(item, text, "a day such as 2026-05-31");
        }
    }

    private static void oneOf(Map<String, String> answers, String item, List<String> words) {
        String text = answers.getOrDefault(item, words.get(0));
        if (!words.contains(text)) {
            throw unusable(item, text, "one of " + String.join(", ", words));
        }
    }

    private static UserFault unusable(String item, String text, String accepted) {
        return new UserFault("\"" + text + "\" is no answer to \"" + item + "\"; it takes " + accepted + ".");
    }
}
