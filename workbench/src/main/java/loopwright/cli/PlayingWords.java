package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import loopwright.action.ReadLengths;
import loopwright.player.PlayingLength;
import loopwright.units.Distance;

/** What a shot plays, with its parts: "plays 163 yd (+8 wind, -2 air, +5 height)". */
final class PlayingWords {
    private PlayingWords() {}

    /** Empty where the day changes the length and the direction by less than half a yard or metre. */
    static String of(PlayingLength p, ReadLengths lengths) {
        StringJoiner parts = new StringJoiner(", ");
        add(parts, p.windMetres(), "wind", lengths);
        add(parts, p.airMetres(), "air", lengths);
        add(parts, p.heightMetres(), "height", lengths);
        add(parts, p.groundMetres(), "ground", lengths);
        StringJoiner out = new StringJoiner("; ");
        if (parts.length() > 0) {
            out.add("plays " + lengths.far(p.playsMetres()) + " (" + parts + ")");
        }
        String drift = lengths.side(drift(p));
        if (!drift.isEmpty()) {
            out.add("the wind takes it " + drift);
        }
        return out.toString();
    }

    private static void add(StringJoiner parts, double metres, String name, ReadLengths lengths) {
        long whole = lengths.course().whole(metres);
        if (whole != 0) {
            parts.add(String.format(Locale.ROOT, "%+d %s", whole, name));
        }
    }

    static Map<String, Object> json(PlayingLength p) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("yards", yards(p.playsMetres()));
        out.put("windYards", yards(p.windMetres()));
        out.put("airYards", yards(p.airMetres()));
        out.put("heightYards", yards(p.heightMetres()));
        out.put("groundYards", yards(p.groundMetres()));
        out.put("driftYards", yards(drift(p)));
        return out;
    }

    private static double drift(PlayingLength p) {
        return p.finishMetres() * Math.sin(p.driftRadians());
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }
}
