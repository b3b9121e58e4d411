package loopwright.adapter.osm;

import java.util.List;
import loopwright.action.ImportRecord;

/** What a reader found: elements in the order of their ids, and what was odd about the file itself. */
record MapData(List<MapElement> elements, List<ImportRecord> records) {
    MapData {
        elements = List.copyOf(elements);
        records = List.copyOf(records);
    }
}
