package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import loopwright.action.Expectation;
import loopwright.units.Distance;

/** An expectation as the JSON of {@code docs/schema/expect.schema.json}. */
final class ExpectJson {
    private ExpectJson() {}

    static Map<String, Object> of(Expectation e) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("course", e.course());
        out.put("tees", e.tees());
        out.put("holes", e.holes());
        out.put("par", e.par());
        out.put("target", e.target());
        out.put("rounds", e.rounds());
        out.put("beaten", e.beaten());
        out.put("usual", counts(e.usual()));
        e.atTarget().ifPresent(c -> out.put("whenBeaten", counts(c)));
        e.typical().ifPresent(m -> out.put("typicalRound", makeUp(m)));
        out.put("putts", e.putts().stream().map(ExpectJson::putt).toList());
        out.put("today", TodayJson.of(e.today()));
        return out;
    }

    private static Map<String, Object> counts(Expectation.Counts c) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("strokes", c.strokes());
        out.put("birdiesOrBetter", c.birdiesOrBetter());
        out.put("pars", c.pars());
        out.put("bogeys", c.bogeys());
        out.put("doubles", c.doubles());
        out.put("triplesOrWorse", c.triplesOrWorse());
        out.put("fairways", c.fairways());
        out.put("greens", c.greens());
        out.put("upAndDownTries", c.upAndDownTries());
        out.put("upAndDownShare", c.upAndDownShare());
        out.put("putts", c.putts());
        out.put("threePutts", c.threePutts());
        out.put("penaltyStrokes", c.penalties());
        return out;
    }

    private static Map<String, Object> makeUp(Expectation.MakeUp m) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("birdiesOrBetter", m.birdiesOrBetter());
        out.put("pars", m.pars());
        out.put("bogeys", m.bogeys());
        out.put("doubles", m.doubles());
        out.put("triplesOrWorse", m.triplesOrWorse());
        out.put("rounds", m.rounds());
        return out;
    }

    private static Map<String, Object> putt(Expectation.Putt p) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("feet", Math.rint(Distance.ofMetres(p.metres()).feet()));
        out.put("holed", p.one());
        out.put("threeOrMore", p.threeOrMore());
        return out;
    }
}
