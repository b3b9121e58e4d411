package loopwright.adapter.osm;

import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.ImportRecord;
import loopwright.units.Distance;

/**
 * Par of a hole: its tag, else a "par" inside its name, else its length.
 *
 * <p>By length: Rules of Handicapping, Appendix F (men, below 610 m): par 3 up to 260 yd, par 4 from 240 to 490 yd,
 * par 5 from 450 to 710 yd, par 6 from 670 yd. Where two pars fit, the middle of the shared range divides: 250, 470
 * and 690 yd.
 */
record ParReading(int par, String source) {
    private static final Pattern IN_NAME = Pattern.compile("(?i).*\\bpar\\W{0,3}([3-6])\\b.*");

    static ParReading of(HoleDraft hole, List<ImportRecord> records) {
        OptionalInt tagged = tagged(hole, records);
        if (tagged.isPresent()) {
            return new ParReading(tagged.getAsInt(), "tag");
        }
        Matcher name = IN_NAME.matcher(hole.element().get("name"));
        if (name.matches()) {
            records.add(HoleOddities.parInName(hole));
            return new ParReading(Integer.parseInt(name.group(1)), "name");
        }
        int par = byLength(hole.line().lengthMetres());
        records.add(HoleOddities.parByLength(hole, par));
        return new ParReading(par, "length");
    }

    private static OptionalInt tagged(HoleDraft hole, List<ImportRecord> records) {
        for (var tag : hole.element().tags().entrySet()) {
            boolean own = tag.getKey().equals("par");
            if (!own && !tag.getKey().startsWith("par:")) {
                continue;
            }
            OptionalInt value = OsmNumbers.wholeNumber(tag.getValue());
            if (value.isPresent() && value.getAsInt() >= 3 && value.getAsInt() <= 6) {
                if (!own) {
                    records.add(HoleOddities.parByColour(hole, tag.getKey(), value.getAsInt()));
                }
                return value;
            }
            records.add(HoleOddities.badNumber(hole, tag.getKey(), tag.getValue(), "a par from 3 to 6"));
        }
        return OptionalInt.empty();
    }

    static int byLength(double metres) {
        double yards = metres / Distance.METRES_PER_YARD;
        return yards <= 250 ? 3 : yards <= 470 ? 4 : yards <= 690 ? 5 : 6;
    }

    /** Stroke index from handicap or handicap:COLOUR. */
    static OptionalInt strokeIndex(HoleDraft hole, List<ImportRecord> records) {
        for (var tag : hole.element().tags().entrySet()) {
            if (!tag.getKey().equals("handicap") && !tag.getKey().startsWith("handicap:")) {
                continue;
            }
            OptionalInt value = OsmNumbers.wholeNumber(tag.getValue());
            if (value.isPresent() && value.getAsInt() >= 1 && value.getAsInt() <= 18) {
                return value;
            }
            records.add(HoleOddities.badNumber(hole, tag.getKey(), tag.getValue(), "a stroke index from 1 to 18"));
        }
        return OptionalInt.empty();
    }
}
