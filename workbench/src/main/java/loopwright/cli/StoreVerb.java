package loopwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.function.Function;
import loopwright.action.BenchStore;
import loopwright.action.BenchStore.Selection;
import loopwright.action.CarryStore;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** {@code loopwright store ...}: what the bench keeps, carried out and in. Works while the bench is running. */
@Command(
        name = "store",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        description = "Lists, backs up, restores, exports, imports and erases what the bench keeps.")
public final class StoreVerb implements Runnable {
    private final Function<StoreOptions.Where, BenchStore> open;
    private final Function<BenchStore, CarryStore> carrying;

    @Spec
    private @Nullable CommandSpec spec;

    /** {@code open} opens a store, {@code carrying} makes the action on it. */
    public StoreVerb(Function<StoreOptions.Where, BenchStore> open, Function<BenchStore, CarryStore> carrying) {
        this.open = open;
        this.carrying = carrying;
    }

    @Override
    public void run() {
        throw new UserFault("Say what to do with the store: list, backup, restore, export, import or erase"
                + " (loopwright store --help).");
    }

    private PrintWriter out() {
        return Objects.requireNonNull(spec).commandLine().getOut();
    }

    private void with(StoreOptions where, BiConsumer<BenchStore, CarryStore> work) {
        try (BenchStore store = open.apply(where.where())) {
            work.accept(store, carrying.apply(store));
        }
        out().flush();
    }

    @Command(name = "list", description = "Shows what is kept.")
    void list(@Mixin StoreOptions where) {
        with(where, (store, carry) -> {
            out().println("Kept in " + store.where() + ":");
            print("player", store.players());
            print("course", store.courses());
            out().println("  " + store.listPlans().size() + " plans");
        });
    }

    private void print(String what, Shelf shelf) {
        DateTimeFormatter time = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(ZoneId.systemDefault());
        for (Shelf.Entry e : shelf.list()) {
            out().println("  " + what + "  " + e.id() + "  " + e.name() + "  (version " + e.version() + ", "
                    + time.format(e.at()) + ")");
        }
    }

    @Command(name = "backup", description = "Writes everything to one zip, also while the bench is running.")
    void backup(
            @Mixin StoreOptions where,
            @Option(names = "--to", required = true, paramLabel = "FILE", description = "The zip.") Path to) {
        with(where, (store, carry) -> {
            carry.export(Selection.ALL, to);
            out().println("Everything is in " + to + ".");
        });
    }

    @Command(name = "restore", description = "Makes the store exactly what a backup holds.")
    void restore(
            @Mixin StoreOptions where,
            @Parameters(paramLabel = "FILE", description = "A zip written by backup.") Path file) {
        with(where, (store, carry) -> {
            carry.restore(file);
            out().println("The store holds what " + file + " held.");
        });
    }

    @Command(
            name = "export",
            description = "Writes a player, a course or everything as a zip of CSV, GeoJSON and JSON.")
    void export(
            @Mixin StoreOptions where,
            @Option(names = "--player", paramLabel = "NAME", description = "Name or id of a player.") @Nullable
                    String player,
            @Option(names = "--course", paramLabel = "NAME", description = "Name or id of a course.") @Nullable
                    String course,
            @Option(names = "--to", required = true, paramLabel = "FILE", description = "The zip.") Path to) {
        with(where, (store, carry) -> {
            carry.export(selection(store, player, course), to);
            out().println("Written to " + to + ".");
        });
    }

    @Command(name = "import", description = "Takes in a zip of export or backup, a course map, or a player file.")
    void importFile(
            @Mixin StoreOptions where,
            @Parameters(paramLabel = "FILE", description = "The file; its kind is told by its content.") Path file,
            @Mixin CourseChoiceOptions choice,
            @Option(names = "--replace", description = "What the zip holds takes the place of what is kept.")
                    boolean replace) {
        with(
                where,
                (store, carry) -> out().println(carry.importFile(file, file.toString(), choice.toChoice(), replace)));
    }

    @Command(name = "erase", description = "Erases a player or a course with everything that hangs on it.")
    void erase(
            @Mixin StoreOptions where,
            @Option(names = "--player", paramLabel = "NAME", description = "Name or id of a player.") @Nullable
                    String player,
            @Option(names = "--course", paramLabel = "NAME", description = "Name or id of a course.") @Nullable
                    String course,
            @Option(names = "--everything", description = "Everything that is kept.") boolean everything,
            @Option(names = "--yes", description = "Really: erasing cannot be undone.") boolean yes) {
        if (!yes) {
            throw new UserFault("Erasing cannot be undone; back up first, then say the same with --yes.");
        }
        with(where, (store, carry) -> {
            if (everything) {
                store.eraseEverything();
            } else {
                Selection what = selection(store, player, course);
                if (what.everything()) {
                    throw new UserFault("Say what to erase: --player, --course or --everything.");
                }
                what.players().forEach(id -> store.players().erase(id));
                what.courses().forEach(id -> store.courses().erase(id));
            }
            out().println("Erased.");
        });
    }

    private static Selection selection(BenchStore store, @Nullable String player, @Nullable String course) {
        if (player != null) {
            return Selection.player(CarryStore.idOf(store.players(), player, "player"));
        }
        return course == null ? Selection.ALL : Selection.course(CarryStore.idOf(store.courses(), course, "course"));
    }
}
