package loopwright.action;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loopwright.practice.Drill;
import loopwright.practice.Facility;
import loopwright.practice.LearningCurve;
import loopwright.practice.PracticeHours;
import loopwright.practice.Skill;

/**
 * What a practice plan of the bench is made from, and what the command line would be told.
 *
 * @param round that is practised for
 * @param musts hours a week that the coach wants for a skill
 * @param rates learning curves that the coach has set
 * @param follows true to go on from what the player has practised since his file was made
 */
public record PracticeChoice(
        PlanChoice round, Time time, Map<Skill, Double> musts, Map<Skill, LearningCurve> rates, boolean follows) {
    private static final double BLOCKS_AN_HOUR = 60.0 / PracticeHours.MINUTES;
    private static final double MOST_HOURS = 40;
    private static final int MOST_WEEKS = 104;

    /**
     * The time there is.
     *
     * @param hours a week, in quarters
     * @param fullSwings most hours a week of full swings
     * @param places most hours a week at each place that can be used
     */
    public record Time(double hours, int weeks, int sessions, double fullSwings, Map<Facility, Double> places) {
        Time withWeeks(int fewer) {
            return new Time(hours, fewer, sessions, fullSwings, places);
        }

        public Time {
            places = sorted(places, Facility.class);
            if (!(hours >= 0.25 && hours <= MOST_HOURS)) {
                throw new UserFault(hours + " is no time to practise; give 0.25 to 40 hours a week.");
            }
            if (weeks < 1 || weeks > MOST_WEEKS) {
                throw new UserFault(weeks + " weeks leave no time to practise or too much; give 1 to 104.");
            }
            if (sessions < 1 || sessions > 7) {
                throw new UserFault(sessions + " sessions a week cannot be planned; give 1 to 7.");
            }
            held(fullSwings);
            places.values().forEach(PracticeChoice::held);
            if (places.values().stream().allMatch(h -> h == 0)) {
                throw new UserFault("There is no place to practise; give at least one some hours.");
            }
        }
    }

    public PracticeChoice {
        musts = sorted(musts, Skill.class);
        rates = sorted(rates, Skill.class);
        musts.values().forEach(PracticeChoice::held);
        if (musts.values().stream().mapToInt(PracticeChoice::blocks).sum() > blocks(time.hours())) {
            throw new UserFault("What the coach wants is more than the " + time.hours()
                    + " hours of the week; want less or give more.");
        }
    }

    private static <K extends Enum<K>, V> Map<K, V> sorted(Map<K, V> map, Class<K> keys) {
        EnumMap<K, V> out = new EnumMap<>(keys);
        out.putAll(map);
        return Collections.unmodifiableMap(out);
    }

    private static void held(double hours) {
        if (!(hours >= 0 && hours <= MOST_HOURS)) {
            throw new UserFault(hours + " is no number of hours a week; give 0 to 40.");
        }
    }

    private static int blocks(double hours) {
        return (int) Math.round(hours * BLOCKS_AN_HOUR);
    }

    /** The week after: what was practised counts, and a week less is left; empty if this is the last. */
    public Optional<PracticeChoice> next() {
        return time.weeks() == 1
                ? Optional.empty()
                : Optional.of(new PracticeChoice(round, time.withWeeks(time.weeks() - 1), musts, rates, true));
    }

    PracticeRequest request(Path courseFile, Path playerFile, List<Drill> drills, Optional<PracticeProgress> progress) {
        Map<Facility, Integer> most = new EnumMap<>(Facility.class);
        time.places().forEach((place, hours) -> {
            if (hours > 0) {
                most.put(place, blocks(hours));
            }
        });
        Map<Skill, Integer> least = new EnumMap<>(Skill.class);
        musts.forEach((skill, hours) -> least.put(skill, blocks(hours)));
        return new PracticeRequest(
                round.request(courseFile, playerFile),
                new PracticeHours(time.weeks(), blocks(time.hours()), most, least, blocks(time.fullSwings())),
                time.sessions(),
                drills,
                rates,
                progress);
    }

    /** The whole choice as an address that can be shared. */
    public String query() {
        return round.query() + "&" + inputs();
    }

    /** Tells every input apart, versions too. */
    public String key() {
        return round.key() + " " + inputs();
    }

    private String inputs() {
        List<String> out = new ArrayList<>();
        add(out, "hours", number(time.hours()));
        add(out, "weeks", Integer.toString(time.weeks()));
        add(out, "sessions", Integer.toString(time.sessions()));
        add(out, "swings", number(time.fullSwings()));
        time.places().forEach((place, hours) -> add(out, "at-" + PracticeWords.typed(place), number(hours)));
        musts.forEach((skill, hours) -> add(out, "must-" + PracticeWords.typed(skill), number(hours)));
        rates.forEach((skill, curve) -> {
            add(out, "tau-" + PracticeWords.typed(skill), number(curve.hours()));
            add(out, "floor-" + PracticeWords.typed(skill), number(curve.floor()));
        });
        if (follows) {
            add(out, "follows", "yes");
        }
        return String.join("&", out);
    }

    /** Without a point where none is needed: "4", "0.5". */
    public static String number(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.4f", value).replaceAll("0+$", "");
    }

    private static void add(List<String> out, String name, String value) {
        out.add(name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
    }
}
