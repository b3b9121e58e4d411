package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import loopwright.action.ApproachAnswer;
import loopwright.units.Distance;

/** Approaches as the JSON of {@code docs/schema/approach.schema.json}. */
final class ApproachJson {
    private ApproachJson() {}

    static Map<String, Object> of(ApproachAnswer a) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("course", a.course());
        out.put("tees", a.tees());
        out.put("player", a.player());
        out.put("holes", a.holes().stream().map(ApproachJson::hole).toList());
        return out;
    }

    private static Map<String, Object> hole(ApproachAnswer.HoleApproach h) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("number", h.number());
        out.put("par", h.par());
        out.put("lie", h.lie().name().toLowerCase(Locale.ROOT));
        out.put("yards", yards(h.metres()));
        out.put("greenMeasured", h.measured());
        out.put("locations", h.locations().stream().map(ApproachJson::location).toList());
        return out;
    }

    private static Map<String, Object> location(ApproachAnswer.Location l) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("name", l.name());
        out.put("yards", yards(l.toHoleMetres()));
        out.put("club", l.club());
        out.put("beyondYards", yards(l.beyondMetres()));
        out.put("rightYards", yards(l.rightMetres()));
        out.put("expected", l.expected());
        out.put("onGreen", l.onGreen());
        out.put("attackCost", l.attackCost());
        out.put("attackError", l.attackError());
        out.put("favouredMiss", ApproachPage.word(l.favoured()));
        out.put("shortSide", ApproachPage.word(l.shortSide()));
        Map<String, Object> sides = new TreeMap<>();
        l.strokes().forEach((side, strokes) -> sides.put(ApproachPage.word(side), strokes));
        out.put("strokesFromSide", sides);
        out.put("edgeYards", yards(l.edgeMetres()));
        l.slope().ifPresent(s -> out.put("slope", s));
        out.put("warnings", l.warnings());
        return out;
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }
}
