package loopwright.action;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import loopwright.action.BenchStore.Selection;

/** Carries what is kept out of the store and into it: backup and restore, export and import, erasing. */
public final class CarryStore {
    private final Workroom room;
    private final CourseFiles courses;
    private final PlayerFiles players;

    public CarryStore(Workroom room, CourseFiles courses, PlayerFiles players) {
        this.room = room;
        this.courses = courses;
        this.players = players;
    }

    /** Writes a zip; the file appears whole or not at all. */
    public void export(Selection what, Path target) {
        Path absolute = target.toAbsolutePath();
        Path folder = absolute.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new UserFault("The folder of " + target + " does not exist; make it first or name another place.");
        }
        try {
            Path part = Files.createTempFile(folder, ".store", ".part");
            try {
                try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part))) {
                    room.store().export(what, out);
                }
                Files.move(part, absolute, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw new UserFault(target + " cannot be written (" + e.getMessage() + "); choose another place.", e);
        }
    }

    /**
     * Takes in a zip of this program, a course in any map format, or a player file, told by the content.
     *
     * @param choice of a course where a map holds several
     * @return what was taken in, a sentence
     */
    public String importFile(Path file, String label, CourseChoice choice, boolean replace) {
        byte[] head = head(file, label);
        if (head.length >= 2 && head[0] == 'P' && head[1] == 'K') {
            try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
                room.store().importZip(in, label, replace);
            } catch (IOException e) {
                throw unreadable(label, e);
            }
            return "Everything in " + label + " was taken in.";
        }
        if (looksLikePlayer(file)) {
            Shelf.Document player = room.addPlayer(players.read(file), "read from " + label);
            return "The player " + player.name() + " was taken in as " + player.id() + ".";
        }
        CourseImport found = courses.read(file, choice);
        Shelf.Document course = room.addCourse(found.course(), "read from " + label);
        room.store().setAnswers(course.id(), CourseProblems.written(found.records()));
        return "The course " + course.name() + " was taken in as " + course.id() + "; "
                + found.warnings().size() + " things should be looked at.";
    }

    public void restore(Path file) {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            room.store().restore(in, file.toString());
        } catch (IOException e) {
            throw unreadable(file.toString(), e);
        }
    }

    /** Id of the only entry with this id or name (case does not matter). */
    public static String idOf(Shelf shelf, String wanted, String what) {
        List<Shelf.Entry> fits = shelf.list().stream()
                .filter(e -> e.id().equals(wanted) || e.name().equalsIgnoreCase(wanted))
                .toList();
        if (fits.size() != 1) {
            throw new UserFault((fits.isEmpty() ? "There is no " : "There is more than one ") + what + " \"" + wanted
                    + "\" in this store; \"loopwright store list\" shows names and ids.");
        }
        return fits.get(0).id();
    }

    /** The newest version of the only course with this id or name. */
    public static Shelf.Entry course(BenchStore store, String wanted) {
        return store.courses().get(idOf(store.courses(), wanted, "course")).entry();
    }

    /** A player file is small and says "swings"; no map does. */
    private static boolean looksLikePlayer(Path file) {
        try {
            return Files.size(file) < 1 << 22
                    && Files.readString(file, java.nio.charset.StandardCharsets.ISO_8859_1)
                            .contains("\"swings\"");
        } catch (IOException e) {
            throw unreadable(file.toString(), e);
        }
    }

    private static byte[] head(Path file, String label) {
        if (!Files.isRegularFile(file)) {
            throw new UserFault(label + " does not exist or is not a file; name a zip, a map or a player file.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(2);
        } catch (IOException e) {
            throw unreadable(label, e);
        }
    }

    private static UserFault unreadable(String label, IOException e) {
        return new UserFault(label + " cannot be read (" + e.getMessage() + ").", e);
    }
}
