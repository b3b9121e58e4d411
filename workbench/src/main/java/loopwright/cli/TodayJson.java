package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import loopwright.action.Today;
import loopwright.player.TodaysBalls;
import loopwright.units.Distance;

/** What the warm-up and the coach's dial change, as the JSON that the schemas of plans and of answers share. */
final class TodayJson {
    private TodayJson() {}

    static Map<String, Object> of(Today today) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("playsLongerPercent", today.playsLongerPercent());
        today.balls().ifPresent(reading -> out.put("balls", balls(today, reading)));
        return out;
    }

    private static Map<String, Object> balls(Today today, TodaysBalls.Reading reading) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("count", reading.balls());
        out.put("seenYards", yards(today.seenMetres()));
        out.put("takenYards", yards(today.sideMetres()));
        out.put("sdYards", yards(today.sideSdMetres()));
        out.put("spread", reading.day().spread());
        out.put("lengthFactor", reading.lengthFactor());
        return out;
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }
}
