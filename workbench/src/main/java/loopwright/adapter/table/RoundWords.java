package loopwright.adapter.table;

import static java.util.Map.entry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loopwright.ground.Situation;
import loopwright.scoring.ApproachResult;
import loopwright.scoring.HoleMark;
import loopwright.scoring.Lie;
import loopwright.scoring.TeeBall;
import loopwright.units.Distance;

/** The columns and words of round tables, as {@code docs/rounds.md} lists them. */
final class RoundWords {
    /** Units at the end of a column's name, in metres; a pace is taken as a yard (common practice, no source). */
    static final Map<String, Double> UNITS = units();

    static final Map<String, Lie> LIES = Map.ofEntries(
            entry("tee", Lie.TEE),
            entry("t", Lie.TEE),
            entry("fairway", Lie.FAIRWAY),
            entry("fw", Lie.FAIRWAY),
            entry("f", Lie.FAIRWAY),
            entry("fringe", Lie.FAIRWAY),
            entry("rough", Lie.ROUGH),
            entry("r", Lie.ROUGH),
            entry("deep rough", Lie.ROUGH),
            entry("sand", Lie.SAND),
            entry("bunker", Lie.SAND),
            entry("s", Lie.SAND),
            entry("recovery", Lie.RECOVERY),
            entry("trees", Lie.RECOVERY),
            entry("woods", Lie.RECOVERY),
            entry("green", Lie.GREEN),
            entry("g", Lie.GREEN));

    static final Map<String, TeeBall> TEE_BALLS = Map.ofEntries(
            entry("in play", TeeBall.IN_PLAY),
            entry("in", TeeBall.IN_PLAY),
            entry("left", TeeBall.LEFT),
            entry("l", TeeBall.LEFT),
            entry("right", TeeBall.RIGHT),
            entry("r", TeeBall.RIGHT),
            entry("lost", TeeBall.LOST));

    static final Map<String, ApproachResult> APPROACHES = Map.ofEntries(
            entry("green", ApproachResult.ON_GREEN),
            entry("on", ApproachResult.ON_GREEN),
            entry("left", ApproachResult.LEFT),
            entry("right", ApproachResult.RIGHT),
            entry("short", ApproachResult.SHORT),
            entry("long", ApproachResult.LONG));

    static final Map<String, Situation> SITUATIONS = Map.of(
            "ordinary", Situation.ORDINARY,
            "sitting up", Situation.SITTING_UP,
            "down", Situation.DOWN,
            "plugged", Situation.PLUGGED,
            "clear", Situation.CLEAR,
            "window", Situation.WINDOW,
            "sideways only", Situation.SIDEWAYS_ONLY);

    static final Map<String, HoleMark> MARKS = Map.of(
            "second_ball", HoleMark.SECOND_BALL,
            "preferred_lies", HoleMark.PREFERRED_LIES,
            "temporary_green", HoleMark.TEMPORARY_GREEN,
            "checked", HoleMark.CHECKED);

    /** Formats in which the score is not the player's own work alone; common practice, no source. */
    static final List<String> TEAM_FORMATS =
            List.of("scramble", "foursomes", "fourball", "four-ball", "greensomes", "best ball", "better ball", "team");

    static final Set<String> PLAIN = Set.of(
            "round",
            "date",
            "course",
            "tees",
            "format",
            "lesson",
            "hole",
            "par",
            "score",
            "conceded",
            "picked_up",
            "tee_ball",
            "approach_club",
            "approach",
            "penalties",
            "chips",
            "putts",
            "shot",
            "club",
            "lie",
            "penalty",
            "lat",
            "lon",
            "situation",
            "meant_club",
            "aim_lat",
            "aim_lon",
            "meant_lie",
            "as_meant");

    static final Set<String> STEMS = Set.of("length", "first_putt", "to_hole");

    private RoundWords() {}

    static boolean isKnown(String column) {
        return PLAIN.contains(column)
                || MARKS.containsKey(column)
                || STEMS.stream()
                        .anyMatch(stem -> UNITS.keySet().stream().anyMatch(u -> column.equals(stem + "_" + u)));
    }

    private static Map<String, Double> units() {
        Map<String, Double> units = new LinkedHashMap<>();
        units.put("yd", Distance.METRES_PER_YARD);
        units.put("m", 1.0);
        units.put("ft", Distance.METRES_PER_FOOT);
        units.put("paces", Distance.METRES_PER_YARD);
        return units;
    }
}
