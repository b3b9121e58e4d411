package loopwright.adapter.osm;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.TreeSet;
import loopwright.action.ImportRecord;
import loopwright.geo.Line;
import loopwright.geo.Place;

/**
 * Lengths that a hole line states: dist, which is compared with the line, and dist:COLOUR, from which the tees of a
 * colour are known even where they are not drawn.
 */
final class StatedLengths {
    /** Scorecards measure from fixed markers to the middle of the green; lines are drawn by eye. */
    private static final double AGREEMENT = 0.1;
    /** An unnamed tee whose hole is this much longer or shorter than stated is still meant. */
    private static final double SAME_TEE_METRES = 12;

    private static final String BY_COLOUR = "dist:";

    private StatedLengths() {}

    /** Names or adds the tees that dist:COLOUR tells of; {@code spots} are those already found. */
    static List<TeeSpot> withStated(HoleDraft hole, List<TeeSpot> spots, List<ImportRecord> records) {
        compare(hole, records);
        List<TeeSpot> out = new ArrayList<>(spots);
        hole.element().tags().forEach((key, value) -> {
            OptionalDouble metres = OsmNumbers.metres(value);
            if (!key.startsWith(BY_COLOUR)) {
                return;
            }
            if (metres.isEmpty() || metres.getAsDouble() < 30 || metres.getAsDouble() > 900) {
                records.add(
                        HoleOddities.badNumber(hole, key, value, "a length in metres, or with its unit (\"320 yd\")"));
                return;
            }
            String colour = key.substring(BY_COLOUR.length()).toLowerCase(Locale.ROOT);
            if (out.stream().noneMatch(s -> s.colours().contains(colour))) {
                add(hole, colour, metres.getAsDouble(), out, records);
            }
        });
        return out;
    }

    private static void compare(HoleDraft hole, List<ImportRecord> records) {
        String value = hole.element().get("dist");
        OptionalDouble metres = OsmNumbers.metres(value);
        if (value.isEmpty()) {
            return;
        }
        double line = hole.line().lengthMetres();
        if (metres.isEmpty()) {
            records.add(
                    HoleOddities.badNumber(hole, "dist", value, "a length in metres, or with its unit (\"320 yd\")"));
        } else if (Math.abs(metres.getAsDouble() - line) > AGREEMENT * line) {
            records.add(TeeOddities.lengthDiffers(hole, value, line));
        }
    }

    private static void add(
            HoleDraft hole, String colour, double metres, List<TeeSpot> spots, List<ImportRecord> records) {
        for (int i = 0; i < spots.size(); i++) {
            TeeSpot spot = spots.get(i);
            if (Math.abs(spot.lengthMetres() - metres) <= SAME_TEE_METRES) {
                TreeSet<String> colours = new TreeSet<>(spot.colours());
                colours.add(colour);
                spots.set(i, new TeeSpot(spot.id(), spot.place(), List.copyOf(colours), spot.lengthMetres()));
                return;
            }
        }
        records.add(TeeOddities.placedByLength(hole, colour, metres));
        spots.add(new TeeSpot(hole.id() + "#" + colour, placeFrom(hole.line(), metres), List.of(colour), metres));
    }

    /** The place on the line, or behind its start, from which the rest of it has this length. */
    private static Place placeFrom(Line line, double metres) {
        double behind = metres - line.lengthMetres();
        if (behind <= 0) {
            return line.placeAt(-behind);
        }
        double bearing = line.places().get(1).bearingTo(line.start());
        return line.start().along(bearing, behind);
    }
}
