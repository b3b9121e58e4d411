package loopwright.boot;

import java.io.Reader;
import java.time.Clock;
import loopwright.action.AccessBook;
import loopwright.action.Accounts;
import loopwright.action.BenchStore;
import loopwright.action.CarryStore;
import loopwright.action.Workroom;
import loopwright.adapter.osm.OsmCourseFiles;
import loopwright.adapter.store.Argon2Passwords;
import loopwright.adapter.store.Database;
import loopwright.adapter.table.JsonPlayerFiles;
import loopwright.cli.CoachCommand;
import loopwright.cli.CoachVerbs;
import loopwright.cli.StoreOptions;
import loopwright.cli.StoreVerb;
import picocli.CommandLine;

/** Wires the verbs that work on the store. */
final class StoreVerbs {
    private StoreVerbs() {}

    static void addTo(CommandLine line, Reader keyboard) {
        CoachVerbs coaches = new CoachVerbs(StoreVerbs::open, StoreVerbs::accounts, keyboard);
        line.addSubcommand(new CommandLine(new CoachCommand())
                .addSubcommand(coaches.new Add())
                .addSubcommand(coaches.new ListAll())
                .addSubcommand(coaches.new Password())
                .addSubcommand(coaches.new Remove()));
        line.addSubcommand(new StoreVerb(StoreVerbs::open, store -> carrying(room(store))));
    }

    static BenchStore open(StoreOptions.Where where) {
        return Database.open(where.folder(), where.server());
    }

    static Accounts accounts(AccessBook book) {
        return new Accounts(book, new Argon2Passwords(), Clock.systemUTC());
    }

    static Workroom room(BenchStore store) {
        return new Workroom(store, new OsmCourseFiles(), new JsonPlayerFiles());
    }

    static CarryStore carrying(Workroom room) {
        return new CarryStore(room, new OsmCourseFiles(), new JsonPlayerFiles());
    }
}
