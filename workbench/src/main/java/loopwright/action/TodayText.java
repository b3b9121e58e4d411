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
 * Reads today's balls: "driver: R8 R12 L3; 7-iron: L2/-5". Right or left of the aim at the finish, in the reader's unit; after a
 * slash long (+) or short (-) of what was expected. 0 is a ball on the line.
 */
final class TodayText {
    private static final Pattern BALL = Pattern.compile(
            "(?:([RL])\\s?(\\d{1,3}(?:\\.\\d)?)|0)(?:/([+-]?\\d{1,3}(?:\\.\\d)?))?", Pattern.CASE_INSENSITIVE);
    private static final double MOST_METRES = Distance.ofYards(120).metres();

    private final Player player;
    private final LengthUnit unit;

    TodayText(Player player, LengthUnit unit) {
        this.player = player;
        this.unit = unit;
    }

    List<TodaysBalls.Ball> read(String text) {
        List<TodaysBalls.Ball> out = new ArrayList<>();
        for (String part : text.split("[;\\r\\n]", -1)) {
            if (!part.isBlank() && !part.strip().startsWith("#")) {
                addBalls(out, part.strip());
            }
        }
        if (out.isEmpty()) {
            throw new UserFault("--today holds no ball; write club and balls, for example \"driver: R8 R12 L3\".");
        }
        return out;
    }

    private void addBalls(List<TodaysBalls.Ball> out, String part) {
        int colon = part.indexOf(':');
        if (colon < 1) {
            throw new UserFault("In --today, \"" + part + "\" names no club; write club, colon, balls, for example"
                    + " \"driver: R8 R12 L3\".");
        }
        Swing swing = swing(part.substring(0, colon).strip());
        String balls = part.substring(colon + 1).strip();
        if (balls.isEmpty()) {
            throw new UserFault("In --today no ball follows \"" + part + "\"; write for example R8 for 8 " + unit.sign()
                    + " right.");
        }
        for (String word : balls.split("[\\s,]+", -1)) {
            out.add(ball(swing, word));
        }
    }

    private TodaysBalls.Ball ball(Swing swing, String word) {
        Matcher m = BALL.matcher(word);
        if (!m.matches()) {
            throw new UserFault(String.format(
                    Locale.ROOT,
                    "In --today, \"%s\" is no ball; write R8 (8 %s right), L3 (3 %2$s left), 0 (on the line), or R8/-10 for"
                            + " one that was 10 %2$s short as well; the numbers are %s, without a unit.",
                    word,
                    unit.sign(),
                    unit.words()));
        }
        double side = m.group(2) == null ? 0 : Double.parseDouble(m.group(2)) * unit.inMetres();
        double most = Math.min(MOST_METRES, swing.pattern().totalMetres());
        if (side > most) {
            throw tooFar(word, unit.of(side) + " beside the aim", swing, most);
        }
        OptionalDouble beyond = m.group(3) == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(m.group(3)) * unit.inMetres());
        if (Math.abs(beyond.orElse(0)) > most) {
            throw tooFar(
                    word,
                    unit.of(Math.abs(beyond.getAsDouble()))
                            + (beyond.getAsDouble() < 0 ? " short of" : " beyond")
                            + " what is expected",
                    swing,
                    most);
        }
        return new TodaysBalls.Ball(swing, "L".equalsIgnoreCase(m.group(1)) ? -side : side, beyond);
    }

    private UserFault tooFar(String word, String where, Swing swing, double mostMetres) {
        return new UserFault("In --today, \"" + word + "\" is " + where + " with a " + swing.label() + "; give "
                + unit.words() + " at the finish, up to " + unit.whole(mostMetres) + ".");
    }

    /** The swing by its label ("56-wedge half"), or the full swing of a club however it is written ("7i"). */
    private Swing swing(String name) {
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
