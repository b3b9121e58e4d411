package loopwright.adapter.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.BenchStore;
import loopwright.action.KeptList;
import loopwright.action.Shelf;

/** A process that writes without end and says what was acknowledged, until somebody kills it. */
final class StoreWriter {
    static final int CHARACTERS = 20_000;

    private StoreWriter() {}

    /** Folder, id of a course, and the address of a server if there is one. */
    public static void main(String[] args) {
        Optional<String> server = args.length > 2 ? Optional.of(args[2]) : Optional.empty();
        try (BenchStore store = Database.open(Path.of(args[0]), server)) {
            String player = store.players().list().get(0).id();
            for (int n = 0; ; n++) {
                int version = addVersion(store.courses(), args[1]);
                String list = store.addList(player, KeptList.Kind.SHOTS, "list", "range", text(n))
                        .id();
                store.setAnswers(player, Map.of("a", "" + n, "b", "" + n));
                System.out.println(version + " " + list + " " + n);
                System.out.flush();
            }
        }
    }

    private static int addVersion(Shelf courses, String id) {
        while (true) {
            try {
                int seen = courses.get(id).version();
                courses.change(id, seen, "Heath", text(seen + 1), "");
                return seen + 1;
            } catch (Shelf.Outdated e) {
                // the other process was faster: read again
                Thread.onSpinWait();
            }
        }
    }

    /** A text that shows when a part of it is missing. */
    static String text(int n) {
        return (n + ";").repeat(CHARACTERS).substring(0, CHARACTERS);
    }

    static List<String> command(Path folder, String course, Optional<String> server) {
        List<String> out = new java.util.ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-Xmx128m",
                "-cp",
                System.getProperty("java.class.path"),
                StoreWriter.class.getName(),
                folder.toString(),
                course));
        server.ifPresent(out::add);
        return out;
    }
}
