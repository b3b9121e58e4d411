package loopwright.cli;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import loopwright.action.PracticeWords;
import loopwright.action.UserFault;
import loopwright.practice.Facility;
import loopwright.practice.PracticeHours;
import loopwright.practice.Skill;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How much time there is to practise, where, and what has to be kept. */
final class HoursOptions {
    private static final double BLOCKS_AN_HOUR = 60.0 / PracticeHours.MINUTES;
    private static final double MOST_HOURS = 40;
    private static final int MOST_WEEKS = 104;

    @Option(
            names = "--hours",
            defaultValue = "4",
            paramLabel = "H",
            description = "Hours of practice a week, in quarters. Default: ${DEFAULT-VALUE}.")
    private double hours = 4;

    @Option(
            names = "--weeks",
            defaultValue = "8",
            paramLabel = "N",
            description = "Weeks of practice. Default: ${DEFAULT-VALUE}.")
    private int weeks = 8;

    @Option(names = "--by", paramLabel = "DATE", description = "Instead of --weeks: the day of the round, 2027-05-31.")
    private @Nullable LocalDate by;

    @Option(
            names = "--facilities",
            split = ",",
            defaultValue = "range,short-game-area,green,course=1",
            paramLabel = "PLACE[=H]",
            description = "Where he can practise: range, short-game-area, green, course, home, each with the most hours"
                    + " a week if there is a limit. Default: ${DEFAULT-VALUE}.")
    private List<String> facilities = new ArrayList<>();

    @Option(
            names = "--must",
            split = ",",
            paramLabel = "SKILL=H",
            description = "Hours a week the coach wants for a skill, e.g. bunker-shot=0.5.")
    private List<String> musts = new ArrayList<>();

    @Option(
            names = "--full-swings",
            defaultValue = "3",
            paramLabel = "H",
            description = "Most hours a week of full swings the body is to bear. Default: ${DEFAULT-VALUE} (assumed).")
    private double fullSwings = 3;

    PracticeHours hours(LocalDate today) {
        if (!(hours >= 0.25 && hours <= MOST_HOURS)) {
            throw new UserFault("--hours " + hours + " is no time to practise; give 0.25 to 40 hours a week.");
        }
        Map<Skill, Integer> least = least();
        if (least.values().stream().mapToInt(b -> b).sum() > blocks(hours)) {
            throw new UserFault(
                    "--must asks for more than the " + hours + " hours of --hours; ask for less or give more.");
        }
        return new PracticeHours(weeks(today), blocks(hours), most(), least, blocks(held("--full-swings", fullSwings)));
    }

    private int weeks(LocalDate today) {
        long wanted = by == null ? weeks : ChronoUnit.WEEKS.between(today, by);
        if (wanted < 1 || wanted > MOST_WEEKS) {
            throw new UserFault((by == null ? "--weeks " + weeks : "--by " + by)
                    + " leaves no time to practise or too much; 1 to 104 weeks are planned.");
        }
        return (int) wanted;
    }

    private Map<Facility, Integer> most() {
        Map<Facility, Integer> out = new EnumMap<>(Facility.class);
        for (String text : facilities) {
            String[] part = text.split("=", 2);
            Facility facility = PracticeWords.findFacility(part[0])
                    .orElseThrow(() -> new UserFault("--facilities: \"" + part[0].strip()
                            + "\" is no place to practise; " + listed(Facility.values()) + " are known."));
            out.put(facility, part.length == 1 ? blocks(hours) : blocks(held("--facilities", number(text, part[1]))));
        }
        return out;
    }

    private Map<Skill, Integer> least() {
        Map<Skill, Integer> out = new EnumMap<>(Skill.class);
        for (String text : musts) {
            String[] part = text.split("=", 2);
            Skill skill = PracticeWords.findSkill(part[0])
                    .orElseThrow(() -> new UserFault("--must: \"" + part[0].strip() + "\" is no skill; "
                            + listed(Skill.values()) + " are known."));
            if (part.length == 1) {
                throw new UserFault("--must " + text + " says no hours; write " + text + "=0.5.");
            }
            out.put(skill, blocks(held("--must", number(text, part[1]))));
        }
        return out;
    }

    private static double held(String option, double hours) {
        if (!(hours >= 0 && hours <= MOST_HOURS)) {
            throw new UserFault(option + ": " + hours + " is no number of hours a week; give 0 to 40.");
        }
        return hours;
    }

    private static double number(String whole, String text) {
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            throw new UserFault(
                    "\"" + whole + "\": " + text + " is no number of hours; write 0.5 for half an hour.", e);
        }
    }

    private static int blocks(double hours) {
        return (int) Math.round(hours * BLOCKS_AN_HOUR);
    }

    private static String listed(Enum<?>[] values) {
        return Arrays.stream(values).map(PracticeWords::typed).collect(Collectors.joining(", "));
    }
}
