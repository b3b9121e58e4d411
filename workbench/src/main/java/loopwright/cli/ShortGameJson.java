package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import loopwright.action.ShortGameTable;
import loopwright.units.Distance;

/** A short-game table as the JSON of {@code docs/schema/shortgame.schema.json}. */
final class ShortGameJson {
    private ShortGameJson() {}

    static Map<String, Object> of(ShortGameTable table) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("player", table.player());
        out.put("spots", table.spots().stream().map(ShortGameJson::spot).toList());
        out.put("assumed", table.assumed());
        return out;
    }

    private static Map<String, Object> spot(ShortGameTable.Spot s) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("lie", s.lie().name().toLowerCase(Locale.ROOT));
        out.put("situation", s.situation().name().toLowerCase(Locale.ROOT));
        out.put("yards", Distance.ofMetres(s.metres()).yards());
        out.put("roomYards", Distance.ofMetres(s.roomMetres()).yards());
        out.put("ways", s.ways().stream().map(w -> way(w, s.best())).toList());
        return out;
    }

    private static Map<String, Object> way(ShortGameTable.Way w, ShortGameTable.Way best) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("shot", w.shot());
        out.put("beyondYards", Distance.ofMetres(w.beyondMetres()).yards());
        out.put("expected", w.expected());
        out.put("standardError", w.standardError());
        out.put("insideThreeFeet", w.insideThreeFeet());
        out.put("insideSixFeet", w.insideSixFeet());
        out.put("upAndDown", w.upAndDown());
        out.put("secondChip", w.secondChip());
        out.put("same", w.isSameAs(best));
        return out;
    }
}
