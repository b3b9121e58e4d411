package loopwright.action;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.player.Player;
import loopwright.player.Swing;

/**
 * The coach's dial for what no formula here covers: how many percent longer the day plays, with a name. All are zero until
 * the coach says otherwise. What has a source (air, wind, altitude, firmness, height, lies) is computed and never part of it.
 */
public final class DayDial {
    private static final double MOST_PERCENT = 25;

    private DayDial() {}

    /** What a coach may name; common practice, no source. */
    public enum Cause {
        SLOPE_OF_LIE("ball above, below, uphill, downhill"),
        FLIER("grass between club and ball: goes farther (negative)"),
        MUD("mud on the ball"),
        WET("wet grass and ball"),
        COLD("cold hands and clothes; cold air is computed"),
        HEAVY_SAND("heavy sand"),
        PRESSURE("nerves"),
        DAY("the day as a whole");

        private final String words;

        Cause(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        public String label() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** One setting of the dial; percent by which shots play longer, negative: shorter. */
    public record Setting(Cause cause, double percent) {}

    /** Reads "wet=2": the day plays 2 % longer for it. */
    static List<Setting> read(List<String> texts) {
        List<Setting> out = new ArrayList<>();
        for (String text : texts) {
            out.add(read(text));
        }
        double sum = percent(out);
        if (Math.abs(sum) > MOST_PERCENT) {
            throw new UserFault(String.format(
                    Locale.ROOT,
                    "--plays-longer adds up to %.0f %%; no day plays more than 25 %% longer or shorter.",
                    sum));
        }
        return out;
    }

    private static Setting read(String text) {
        String[] parts = text.split("=", -1);
        String name = parts.length == 2 ? parts[0].strip() : "day";
        String value = parts[parts.length - 1].strip();
        List<String> names = Arrays.stream(Cause.values()).map(Cause::label).toList();
        int index =
                names.indexOf(name.toLowerCase(Locale.ROOT).replace('_', ' ').replace('-', ' '));
        if (index < 0) {
            throw new UserFault("--plays-longer " + text + ": \"" + name + "\" is not on the dial; the nearest is "
                    + Nearest.to(name, names) + " (it has " + String.join(", ", names) + ").");
        }
        if (parts.length > 2 || !value.matches("[+-]?\\d{1,2}(\\.\\d+)?")) {
            throw new UserFault("--plays-longer " + text + " is no percentage; write for example 3, or wet=2.");
        }
        return new Setting(Cause.values()[index], Double.parseDouble(value));
    }

    static double percent(List<Setting> settings) {
        return settings.stream().mapToDouble(Setting::percent).sum();
    }

    /** The player for whom everything plays so much longer: his swings go so much shorter. */
    static Player apply(List<Setting> settings, Player player) {
        double factor = 1 / (1 + percent(settings) / 100);
        if (factor == 1) {
            return player;
        }
        List<Swing> swings = player.swings().stream()
                .map(s -> new Swing(s.club(), s.effort(), s.pattern().longer(factor), s.evidence()))
                .collect(Collectors.toList());
        return new Player(
                player.name(),
                player.hand(),
                player.level(),
                swings,
                player.touchShots(),
                player.putting(),
                player.lostBallsPerRound());
    }
}
