package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import loopwright.action.WedgeTable;
import loopwright.units.Distance;

/** A wedge table as the JSON of {@code docs/schema/wedges.schema.json}. */
final class WedgesJson {
    private WedgesJson() {}

    static Map<String, Object> of(WedgeTable table) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("player", table.player());
        out.put("lie", table.lie().name().toLowerCase(Locale.ROOT));
        out.put("swings", table.swings().stream().map(WedgesJson::reach).toList());
        out.put("rows", table.rows().stream().map(WedgesJson::row).toList());
        out.put("gaps", table.gaps().stream().map(WedgesJson::gap).toList());
        out.put("measure", table.measure());
        table.findGapToFill().ifPresent(g -> out.put("addYards", yards(g.middleMetres())));
        return out;
    }

    private static Map<String, Object> reach(WedgeTable.Reach r) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("club", r.swing().club().name());
        out.put("effort", r.swing().effort());
        out.put("carryYards", yards(r.carryMetres()));
        out.put("runYards", yards(r.runMetres()));
        out.put("depthYards", yards(r.depthMetres()));
        out.put("widthYards", yards(r.widthMetres()));
        out.put("mishitRate", r.mishitRate());
        out.put("balls", r.swing().evidence().balls());
        out.put("assumedShare", r.swing().evidence().assumedShare());
        return out;
    }

    private static Map<String, Object> row(WedgeTable.Row r) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("yards", Math.rint(yards(r.metres())));
        out.put("shot", r.shot());
        out.put("expected", r.expected());
        out.put("standardError", r.standardError());
        out.put("onGreen", r.onGreen());
        out.put("eightInTenFeet", Distance.ofMetres(r.nearMetres()).feet());
        r.next().ifPresent(a -> out.put("next", Map.of("shot", a.club(), "cost", a.cost(), "same", a.same())));
        return out;
    }

    private static Map<String, Object> gap(WedgeTable.Gap g) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("shorter", g.shorter());
        out.put("shorterYards", yards(g.shorterMetres()));
        out.put("longer", g.longer());
        out.put("longerYards", yards(g.longerMetres()));
        out.put("saving", g.saving());
        out.put("standardError", g.standardError());
        out.put("worthFilling", g.isWorthFilling());
        return out;
    }

    private static double yards(double metres) {
        return Distance.ofMetres(metres).yards();
    }
}
