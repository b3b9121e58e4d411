package loopwright.boot;

import loopwright.action.BenchStore;
import loopwright.action.CarryStore;
import loopwright.action.Workroom;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.store.Database;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.cli.StoreOptions;
import loopwright.cli.StoreVerb;
import picocli.CommandLine;

/** Wires the verbs that work on the store. */
final class StoreVerbs {
    private StoreVerbs() {}

    static void addTo(CommandLine line) {
        line.addSubcommand(new StoreVerb(StoreVerbs::open, store -> carrying(room(store))));
    }

    static BenchStore open(StoreOptions.Where where) {
        return Database.open(where.folder(), where.server());
    }

    static Workroom room(BenchStore store) {
        return new Workroom(store, new OsmCourseFiles(), new JsonPlayerFiles());
    }

    static CarryStore carrying(Workroom room) {
        return new CarryStore(room, new OsmCourseFiles(), new JsonPlayerFiles());
    }
}
