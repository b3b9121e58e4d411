package loopwright.action;

import java.time.Instant;
import java.util.List;

/** Port: named documents, every version of which is kept. */
public interface Shelf {
    /** The newest version of each, without its text, by name. */
    List<Entry> list();

    /** All versions of one, newest first. */
    List<Entry> listVersions(String id);

    /** The newest version; a {@link UserFault} if there is none of this id. */
    Document get(String id);

    Document get(String id, int version);

    /** Puts a new document on the shelf as its version 1. */
    Document add(String name, String text, String note);

    /**
     * Adds a version.
     *
     * @param seen the version that was changed
     * @throws Outdated if somebody else has added a version since; nothing is lost and nothing is kept
     */
    Document change(String id, int seen, String name, String text, String note);

    /** Erases a document with all its versions and everything that hangs on it. */
    void erase(String id);

    /** A version without its text; {@code note} says what changed. */
    record Entry(String id, int version, String name, String note, Instant at) {}

    /** A version. */
    record Document(Entry entry, String text) {
        public String id() {
            return entry.id();
        }

        public int version() {
            return entry.version();
        }

        public String name() {
            return entry.name();
        }
    }

    /** Somebody else was faster. */
    final class Outdated extends RuntimeException {
        private static final long serialVersionUID = 1L;

        public Outdated(String sentence) {
            super(sentence);
        }
    }
}
