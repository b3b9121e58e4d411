package loopwright.action;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import loopwright.player.BallCount;
import loopwright.player.Setting;
import loopwright.player.Swing;
import loopwright.player.Zone;
import loopwright.units.Distance;

/** Says back what was understood of counted balls, so that the one who counted sees it. Lengths in yards. */
final class CountWords {
    /** All balls of one swing on one ground, however many sessions. */
    private record Counted(String club, String effort, Setting setting) {
        String words() {
            String swing = effort.equals(Swing.FULL) ? club : club + " " + effort;
            String balls = setting.ball() == Setting.Ball.RANGE ? ", range balls" : "";
            return swing + " "
                    + switch (setting.ground()) {
                        case MAT -> "from a mat";
                        case GRASS -> "on the range";
                        case COURSE -> "on the course";
                    }
                    + balls;
        }
    }

    private CountWords() {}

    /** A sentence for each swing and ground. */
    static List<String> sentences(List<BallCount> counts) {
        Map<Counted, Map<Zone, Integer>> swings = new LinkedHashMap<>();
        for (BallCount c : counts) {
            swings.computeIfAbsent(new Counted(c.club().name(), c.effort(), c.setting()), s -> new LinkedHashMap<>())
                    .merge(c.zone(), c.balls(), Integer::sum);
        }
        return swings.entrySet().stream()
                .map(e -> "Counted: " + e.getKey().words() + ", "
                        + e.getValue().values().stream()
                                .mapToInt(Integer::intValue)
                                .sum() + " balls: "
                        + e.getValue().entrySet().stream()
                                .map(z -> z.getValue() + " " + where(z.getKey()))
                                .collect(Collectors.joining(", "))
                        + ".")
                .toList();
    }

    private static String where(Zone zone) {
        if (zone.kind().isPresent()) {
            return zone.kind().get().name().toLowerCase(Locale.ROOT);
        }
        if (Double.isFinite(zone.leftMetres()) && Double.isFinite(zone.rightMetres())) {
            return "inside a strip " + yards(zone.rightMetres() - zone.leftMetres()) + " wide";
        }
        if (Double.isFinite(zone.leftMetres())) {
            return "right of a strip " + yards(2 * zone.leftMetres()) + " wide";
        }
        if (Double.isFinite(zone.rightMetres())) {
            return "left of a strip " + yards(-2 * zone.rightMetres()) + " wide";
        }
        return along(zone.shortestMetres(), zone.longestMetres());
    }

    private static String along(double shortest, double longest) {
        if (!Double.isFinite(shortest)) {
            return "short of a flag at " + yards(longest + Zone.LEVEL_METRES);
        }
        if (!Double.isFinite(longest)) {
            return "long of a flag at " + yards(shortest - Zone.LEVEL_METRES);
        }
        return "level with a flag at " + yards((shortest + longest) / 2) + " (within " + yards((longest - shortest) / 2)
                + ")";
    }

    private static String yards(double metres) {
        return String.format(Locale.ROOT, "%.0f yd", Distance.ofMetres(metres).yards());
    }
}
