package loopwright.action;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.player.BallCount;
import loopwright.player.Club;
import loopwright.player.ClubTable;
import loopwright.player.Habit;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.player.Setting;
import loopwright.units.Distance;

/** What a player answered, question to answer as it was typed, and what it means. Lengths are yards. */
public record InterviewAnswers(Map<String, String> answers) {
    /** The questions, in the order in which they are asked. */
    public static final List<String> QUESTIONS = List.of(
            "name",
            "hand",
            "level",
            "scores",
            "driver",
            "seven",
            "miss",
            "lost",
            "bag",
            "on",
            "counts",
            "teeShort",
            "teeFour",
            "teeFive",
            "aim",
            "chip",
            "layUp");

    /** Answers that are lengths, yards. */
    public static final List<String> LENGTHS = List.of("driver", "seven", "layUp");

    private static final Map<String, Habit.HoleKind> TEE_CLUBS = Map.of(
            "teeShort", Habit.HoleKind.SHORT_PAR_FOUR,
            "teeFour", Habit.HoleKind.PAR_FOUR,
            "teeFive", Habit.HoleKind.PAR_FIVE);
    private static final Map<String, Habit.Aim> AIMS =
            Map.of("flag", Habit.Aim.FLAG, "middle", Habit.Aim.MIDDLE_OF_GREEN);
    private static final Map<String, Habit.ChipChoice> CHIPS = Map.of(
            "ground", Habit.ChipChoice.GROUND_WHERE_CLEAR,
            "chip", Habit.ChipChoice.ALWAYS_CHIP,
            "pitch", Habit.ChipChoice.ALWAYS_PITCH);
    private static final double LONGEST_LAY_UP_YARDS = 250;

    private static final double SHORTEST_YARDS = 20;
    private static final double LONGEST_YARDS = 380;

    public InterviewAnswers {
        answers = Map.copyOf(answers);
    }

    /** What can be answered of a player who came as a file. */
    static InterviewAnswers of(PlayerProfile profile) {
        Player player = profile.player();
        Habit habit = profile.habit();
        Map<String, String> out = new HashMap<>();
        out.put("name", player.name());
        out.put("hand", player.hand().name().toLowerCase(Locale.ROOT));
        out.put("level", String.format(Locale.ROOT, "%.0f", player.level()));
        TEE_CLUBS.forEach((question, holes) ->
                Optional.ofNullable(habit.teeClubs().get(holes)).ifPresent(club -> out.put(question, club)));
        out.put("aim", key(AIMS, habit.aim()));
        out.put("chip", key(CHIPS, habit.chip()));
        if (habit.layUpMetres() > 0) {
            out.put(
                    "layUp",
                    String.format(
                            Locale.ROOT,
                            "%.1f",
                            Distance.ofMetres(habit.layUpMetres()).yards()));
        }
        return new InterviewAnswers(out);
    }

    private static <T> String key(Map<String, T> values, T value) {
        return values.entrySet().stream()
                .filter(e -> e.getValue().equals(value))
                .findFirst()
                .orElseThrow()
                .getKey();
    }

    /** How he plays without a plan; what was not answered is usual. */
    Habit habit() {
        Map<Habit.HoleKind, String> clubs = new EnumMap<>(Habit.HoleKind.class);
        TEE_CLUBS.forEach((question, holes) -> {
            if (!get(question).isEmpty()) {
                clubs.put(holes, club(get(question)).name());
            }
        });
        double layUp = number("layUp", "distance to leave in yards", 0, LONGEST_LAY_UP_YARDS)
                .orElse(0);
        return new Habit(
                clubs,
                choice("aim", AIMS, Habit.USUAL.aim()),
                choice("chip", CHIPS, Habit.USUAL.chip()),
                Distance.ofYards(layUp).metres());
    }

    /** The answer to a question, empty if there is none. */
    public String get(String question) {
        return answers.getOrDefault(question, "").strip();
    }

    Interview interview() {
        OptionalDouble lost = number("lost", "balls lost a round", 0, 30);
        return new Interview(
                get("name").isEmpty() ? "player" : get("name"),
                choice("hand", Map.of("right", Player.Hand.RIGHT, "left", Player.Hand.LEFT), Player.Hand.RIGHT),
                number("level", "level (average score)", 60, 130),
                scores(),
                carry("driver"),
                carry("seven"),
                choice("miss", Map.of("left", Optional.of(false), "right", Optional.of(true)), Optional.empty()),
                lost,
                pieces("bag", ",").map(InterviewAnswers::club).toList());
    }

    /** Counted balls, one sentence a line. */
    List<BallCount> counts() {
        List<BallCount> out = new ArrayList<>();
        pieces("counts", "\n").forEach(line -> out.addAll(CountText.parse(line, setting(), 0)));
        return out;
    }

    /** Where balls were hit if a list does not say. */
    Setting setting() {
        return choice(
                "on",
                Map.of(
                        "range",
                        Setting.RANGE,
                        "mat",
                        new Setting(Setting.Ball.OWN, Setting.Ground.MAT),
                        "course",
                        Setting.COURSE),
                Setting.RANGE);
    }

    private List<Integer> scores() {
        return pieces("scores", ",")
                .map(s -> {
                    if (!s.matches("\\d{2,3}")) {
                        throw new UserFault(
                                "\"" + s + "\" is no score; type scores with commas, for example 92, 88, 95.");
                    }
                    return Integer.valueOf(s);
                })
                .toList();
    }

    private Optional<Distance> carry(String question) {
        String what = question.equals("driver") ? "driver carry" : "7-iron carry";
        OptionalDouble yards = number(question, what + " in yards", SHORTEST_YARDS, LONGEST_YARDS);
        return yards.isPresent() ? Optional.of(Distance.ofYards(yards.getAsDouble())) : Optional.empty();
    }

    private OptionalDouble number(String question, String what, double low, double high) {
        String text = get(question).replace(',', '.');
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value = text.matches("\\d{1,4}(\\.\\d{1,4})?") ? Double.parseDouble(text) : Double.NaN;
        if (!(value >= low && value <= high)) {
            throw new UserFault("\"" + get(question) + "\" is no " + what + "; a number from " + (int) low + " to "
                    + (int) high + " is accepted, or nothing.");
        }
        return OptionalDouble.of(value);
    }

    private <T> T choice(String question, Map<String, T> values, T otherwise) {
        return values.getOrDefault(get(question), otherwise);
    }

    private java.util.stream.Stream<String> pieces(String question, String separator) {
        return Arrays.stream(get(question).split(separator, -1))
                .map(String::strip)
                .filter(s -> !s.isEmpty());
    }

    private static Club club(String text) {
        return ClubTable.find(text)
                .orElseThrow(
                        () -> new UserFault("\"" + text + "\" is no club; driver, 3-wood, 4-hybrid, 7-iron, pitching"
                                + " wedge, 56-wedge or putter are accepted, with commas between them."));
    }
}
