package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import loopwright.player.PlayingLength;
import loopwright.units.Distance;

/** What a shot plays, with its parts: "plays 163 yd (+8 wind, -2 air, +5 height)". */
final class PlayingWords {
    /** Less than this is not worth a word, yards. */
    private static final double LEAST_YARDS = 0.5;

    private PlayingWords() {}

    /** Empty where the day changes the length and the direction by less than half a yard. */
    static String of(PlayingLength p) {
        StringJoiner parts = new StringJoiner(", ");
        add(parts, p.windMetres(), "wind");
        add(parts, p.airMetres(), "air");
        add(parts, p.heightMetres(), "height");
        add(parts, p.groundMetres(), "ground");
        StringJoiner out = new StringJoiner("; ");
        if (parts.length() > 0) {
            out.add(String.format(Locale.ROOT, "plays %.0f yd (%s)", yards(p.playsMetres()), parts));
        }
        double drift = drift(p);
        if (Math.abs(drift) >= LEAST_YARDS) {
            String side = drift < 0 ? "left" : "right";
            out.add(String.format(Locale.ROOT, "the wind takes it %.0f yd %s", Math.abs(drift), side));
        }
        return out.toString();
    }

    private static void add(StringJoiner parts, double metres, String name) {
        double yards = yards(metres);
        if (Math.abs(yards) >= LEAST_YARDS) {
            parts.add(String.format(Locale.ROOT, "%+.0f %s", yards, name));
        }
    }

    static Map<String, Object> json(PlayingLength p) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("yards", yards(p.playsMetres()));
        out.put("windYards", yards(p.windMetres()));
        out.put("airYards", yards(p.airMetres()));
        out.put("heightYards", yards(p.heightMetres()));
        out.put("groundYards", yards(p.groundMetres()));
        out.put("driftYards", drift(p));
        return out;
    }

    private static double drift(PlayingLength p) {
        return yards(p.finishMetres() * Math.sin(p.driftRadians()));
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }
}
