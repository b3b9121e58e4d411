package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import loopwright.player.Club;
import loopwright.player.ClubTable;
import loopwright.player.Player;
import loopwright.player.Swing;
import loopwright.player.TodaysBalls;
import loopwright.units.Distance;

/**
 * Reads today's balls: "driver: R8 R12 L3; 7-iron: L2/-5". Yards right or left of the aim at the finish; after a slash yards
 * long (+) or short (-) of what was expected. 0 is a ball on the line.
 */
final class TodayText {
    private static final Pattern BALL = Pattern.compile(
            "(?:([RL])\\s?(\\d{1,3}(?:\\.\\d)?)|0)(?:/([+-]?\\d{1,3}(?:\\.\\d)?))?", Pattern.CASE_INSENSITIVE);
    private static final double MOST_SIDE_YARDS = 120;

    private TodayText() {}

    static List<TodaysBalls.Ball> read(String text, Player player) {
        List<TodaysBalls.Ball> out = new ArrayList<>();
        for (String part : text.split("[;\\r\\n]", -1)) {
            if (!part.isBlank() && !part.strip().startsWith("#")) {
                addBalls(out, part.strip(), player);
            }
        }
        if (out.isEmpty()) {
            throw new UserFault("--today holds no ball; write club and balls, for example \"driver: R8 R12 L3\".");
        }
        return out;
    }

    private static void addBalls(List<TodaysBalls.Ball> out, String part, Player player) {
        int colon = part.indexOf(':');
        if (colon < 1) {
            throw new UserFault("In --today, \"" + part + "\" names no club; write club, colon, balls, for example"
                    + " \"driver: R8 R12 L3\".");
        }
        Swing swing = swing(part.substring(0, colon).strip(), player);
        String balls = part.substring(colon + 1).strip();
        if (balls.isEmpty()) {
            throw new UserFault("In --today no ball follows \"" + part + "\"; write for example R8 for 8 yd right.");
        }
        for (String word : balls.split("[\\s,]+", -1)) {
            out.add(ball(swing, word));
        }
    }

    private static TodaysBalls.Ball ball(Swing swing, String word) {
        Matcher m = BALL.matcher(word);
        if (!m.matches()) {
            throw new UserFault(
                    "In --today, \"" + word + "\" is no ball; write R8 (8 yd right), L3 (3 yd left), 0 (on the"
                            + " line), or R8/-10 for one that was 10 yd short as well.");
        }
        double yards = m.group(2) == null ? 0 : Double.parseDouble(m.group(2));
        double most = Math.min(
                MOST_SIDE_YARDS,
                Distance.ofMetres(swing.pattern().totalMetres()).yards());
        if (yards > most) {
            throw new UserFault(String.format(
                    Locale.ROOT,
                    "In --today, \"%s\" is %.0f yd beside the aim with a %s; give yards at the finish, up to %.0f.",
                    word,
                    yards,
                    swing.label(),
                    most));
        }
        double side = "L".equalsIgnoreCase(m.group(1)) ? -yards : yards;
        OptionalDouble beyond = m.group(3) == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Distance.ofYards(Double.parseDouble(m.group(3))).metres());
        return new TodaysBalls.Ball(swing, Distance.ofYards(side).metres(), beyond);
    }

    /** The swing by its label ("56-wedge half"), or the full swing of a club however it is written ("7i"). */
    private static Swing swing(String name, Player player) {
        for (Swing s : player.swings()) {
            if (s.label().equalsIgnoreCase(name)) {
                return s;
            }
        }
        String club = ClubTable.find(name).map(Club::name).orElse(name);
        for (Swing s : player.swings()) {
            if (s.isFull() && s.club().name().equalsIgnoreCase(club)) {
                return s;
            }
        }
        List<String> labels = player.swings().stream().map(Swing::label).toList();
        throw new UserFault("In --today, \"" + name + "\" is not in this bag; the nearest is "
                + Nearest.to(club, labels) + " (it holds "
                + player.clubs().stream().map(Club::name).collect(Collectors.joining(", ")) + ").");
    }
}
