package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import loopwright.action.Calibration;
import loopwright.action.PlayerCheck;

/** A player check as the JSON of {@code docs/schema/player-check.schema.json}. */
final class PlayerCheckJson {
    private PlayerCheckJson() {}

    static Map<String, Object> of(PlayerCheck check) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("player", check.player());
        out.put("course", check.course());
        out.put("tees", check.tees());
        out.put("holes", check.holes());
        out.put("par", check.par());
        out.put("scores", check.scores());
        out.put("converted", check.converted());
        out.put("setAside", check.setAside());
        out.put("modelledMean", check.calibration().modelledMean());
        out.put("modelledSpread", check.calibration().modelledSd());
        out.put("habitCost", check.habitCost());
        out.put("calibration", calibration(check.calibration()));
        return out;
    }

    private static Map<String, Object> calibration(Calibration c) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("verdict", c.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        out.put("calibrated", c.isCalibrated());
        out.put("said", c.mark());
        out.put("rounds", c.rounds());
        if (c.rounds() > 0) {
            out.put("realMean", c.realMean());
            out.put("realSpread", c.realSd());
            out.put("gap", c.gap());
            out.put("gapLow", c.gapLow());
            out.put("gapHigh", c.gapHigh());
        }
        return out;
    }
}
