package loopwright.action;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import loopwright.course.Course;
import loopwright.player.PlayerProfile;

/**
 * The store's courses and players as files and as objects, so that the bench plans with exactly what the command line
 * plans with. The files are copies that may be deleted at any time.
 */
public final class Workroom {
    private static final int KEPT_OBJECTS = 24;

    private final BenchStore store;
    private final CourseFiles courses;
    private final PlayerFiles players;
    private final Map<String, Object> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Object> eldest) {
            return size() > KEPT_OBJECTS;
        }
    };

    public Workroom(BenchStore store, CourseFiles courses, PlayerFiles players) {
        this.store = store;
        this.courses = courses;
        this.players = players;
    }

    public BenchStore store() {
        return store;
    }

    /** A version of a course as a file. */
    public Path courseFile(String id, int version) {
        store.requireReadable(id);
        return file(
                "course-" + id + "-v" + version + ".geojson",
                () -> store.courses().get(id, version).text());
    }

    /** A version of a player as a file. */
    public Path playerFile(String id, int version) {
        store.requireReadable(id);
        return file(
                "player-" + id + "-v" + version + ".json",
                () -> store.players().get(id, version).text());
    }

    public Course course(String id, int version) {
        store.requireReadable(id);
        return (Course) object(
                "course " + id + " " + version,
                () -> courses.read(courseFile(id, version)).course());
    }

    public PlayerProfile player(String id, int version) {
        store.requireReadable(id);
        return (PlayerProfile) object("player " + id + " " + version, () -> players.read(playerFile(id, version)));
    }

    public Shelf.Document addCourse(Course course, String note) {
        return store.courses().add(course.name(), text(course), note);
    }

    /** Keeps a changed course; see {@link Shelf#change}. */
    public Shelf.Document changeCourse(String id, int seen, Course course, String note) {
        return store.courses().change(id, seen, course.name(), text(course), note);
    }

    public Shelf.Document addPlayer(PlayerProfile player, String note) {
        return store.players().add(player.player().name(), text(player), note);
    }

    /** Keeps a changed player; see {@link Shelf#change}. */
    public Shelf.Document changePlayer(String id, int seen, PlayerProfile player, String note) {
        return store.players().change(id, seen, player.player().name(), text(player), note);
    }

    private String text(Course course) {
        return written(".geojson", f -> courses.write(course, f));
    }

    private String text(PlayerProfile player) {
        return written(".json", f -> players.write(player, f));
    }

    /** Calls {@code use} with a file that holds these bytes and is gone afterwards. */
    public <T> T withFile(byte[] bytes, String ending, java.util.function.Function<Path, T> use) {
        try {
            Path file = Files.createTempFile(folder(), "in", ending);
            try {
                Files.write(file, bytes);
                return use.apply(file);
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String written(String ending, Consumer<Path> write) {
        return withFile(new byte[0], ending, file -> {
            write.accept(file);
            try {
                return Files.readString(file, StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private synchronized Object object(String key, Supplier<Object> read) {
        return kept.computeIfAbsent(key, k -> read.get());
    }

    /** A file of the work folder, made if it is not there; it appears whole or not at all. */
    private Path file(String name, Supplier<String> text) {
        try {
            Path file = folder().resolve(name);
            if (!Files.exists(file)) {
                Path part = Files.createTempFile(folder(), name, ".part");
                Files.writeString(part, text.get(), StandardCharsets.UTF_8);
                Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            }
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A place in the work folder, for what may be gone another day. */
    Path workFile(String name) {
        try {
            return folder().resolve(name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path folder() throws IOException {
        return Files.createDirectories(store.folder().resolve("work"));
    }
}
