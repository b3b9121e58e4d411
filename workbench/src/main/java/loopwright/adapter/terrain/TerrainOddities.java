package loopwright.adapter.terrain;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.action.ImportRecord;

/** Records of what is odd about an elevation raster; one method a kind. */
final class TerrainOddities {
    /** A bend of less than this moves a height by a centimetre on a slope of 10 %. */
    private static final double HARMLESS_BEND_METRES = 0.1;

    private final String file;
    private final List<ImportRecord> records;

    TerrainOddities(String file, List<ImportRecord> records) {
        this.file = file;
        this.records = records;
    }

    private void add(String kind, boolean warning, String found, String assumed, String mend) {
        records.add(new ImportRecord(kind, warning, file, Optional.empty(), found, assumed, mend));
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    void tooCoarseForGreens(double metres) {
        add(
                "heights too coarse for greens",
                true,
                text("The heights lie %.0f m apart.", metres),
                "They tell how the holes rise and fall; the slope of a green they cannot show, and none is assumed.",
                "Use a grid of 1 m cells where one exists, or measure the greens.");
    }

    void partlyCovered() {
        add(
                "heights cover part of the course",
                true,
                "The raster ends inside the course.",
                "Beyond its edge the height of the edge holds.",
                "Use a raster that covers the whole course and 300 m round it.");
    }

    void missing(int cells, int all) {
        if (cells > 0) {
            add(
                    "heights missing",
                    true,
                    text("%d of %d heights under the course are missing.", cells, all),
                    "Each takes the height of the nearest cell that has one.",
                    "Use a raster without gaps under the course.");
        }
    }

    void zeros(int cells, int all) {
        add(
                "heights of exactly zero",
                true,
                text(
                        "%d of %d heights under the course are exactly 0 m: water, or a gap not marked as one.",
                        cells, all),
                "They stand as they are.",
                "Use a raster that marks its gaps.");
    }

    void zoneAssumed(int zone) {
        add(
                "projection not named",
                true,
                "The grid is in metres and nothing says of which projection.",
                text("UTM zone %d, where the course lies.", zone),
                "Put the grid's .prj file beside it.");
    }

    void bend(double metres) {
        if (metres > HARMLESS_BEND_METRES) {
            add(
                    "grid bent against the course",
                    false,
                    text("At its corners the raster lies up to %.1f m beside its straight map.", metres),
                    "Heights there are read that far beside their place.",
                    "Nothing need be done.");
        }
    }
}
