package loopwright.action;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Port: everything the bench keeps. What a method has returned from is on the disk, whole. */
public interface BenchStore extends AutoCloseable {
    /** Courses as GeoJSON with their survey. */
    Shelf courses();

    /** Players as player files. */
    Shelf players();

    /** What was asked about a player or a course and answered, question to answer; empty if nothing was. */
    Map<String, String> listAnswers(String document);

    /** Replaces the answers about a player or a course. */
    void setAnswers(String document, Map<String, String> answers);

    /** Shot and putt lists of a player, oldest first. */
    List<KeptList> listLists(String player);

    /** Keeps a list as it was delivered; returns it with its id. */
    KeptList addList(String player, KeptList.Kind kind, String name, String setting, String text);

    void eraseList(String player, String list);

    /** Hole locations of a course on a day ("2026-05-31"), hole to location as typed ("12,5"). */
    Map<Integer, String> listHoleLocations(String course, String day);

    /** Replaces the hole locations of a day. */
    void setHoleLocations(String course, String day, Map<Integer, String> locations);

    /** Local rules of a course on a day as the committee words them; empty if nobody entered any. */
    String localRules(String course, String day);

    /** Replaces the local rules of a day. */
    void setLocalRules(String course, String day, String rules);

    /** A few steps back; more would make backups too large to be read again. */
    int MOST_IMAGES = 5;

    /** The image that lies under a course, if there is one. */
    Optional<CourseImage> findImage(String course);

    /** Images that were laid under a course, the last one first; at most {@link #MOST_IMAGES}. */
    List<KeptImage> listImages(String course);

    /** Lays an image under a course; those before it are kept, and of more than {@link #MOST_IMAGES} the oldest goes. */
    void addImage(String course, CourseImage image);

    /**
     * Lays an image that is kept under its course again.
     *
     * @param number of the image; 0: none lies under the course from now on
     * @throws UserFault if no such image is kept
     */
    void showImage(String course, int number);

    /** Forgets an image for good. */
    void eraseImage(String course, int number);

    /** Rounds, lessons and the player files. */
    PlayerRecords records();

    /** Plans that were made, newest first. */
    List<KeptPlan> listPlans();

    /** Keeps a plan once: the same inputs, versions and seed replace what was kept of them. */
    void keepPlan(KeptPlan plan);

    /** What a person has set ("units"), name to value. */
    Map<String, String> listPreferences();

    void setPreference(String name, String value);

    /** Erases every player, course, plan and preference. */
    void eraseEverything();

    /** Writes one moment of a part of the store as a zip of CSV, GeoJSON and JSON, while others go on working. */
    void export(Selection what, OutputStream out);

    /**
     * Reads such a zip back.
     *
     * @throws UserFault if the zip is damaged, or holds something that is kept already and {@code replace} is false; then
     *     nothing has changed
     */
    void importZip(InputStream zip, String label, boolean replace);

    /** The store becomes exactly what the zip holds. */
    void restore(InputStream zip, String label);

    /** Who may log in, and what was changed by whom. */
    AccessBook access();

    /** Refuses with the fault of a document that never was, if the person of now may not see this one. */
    default void requireReadable(String document) {}

    /** Where the store is, for a person: a file, or the address of a database server. */
    String where();

    /** The folder for disposable files beside the store. */
    Path folder();

    @Override
    void close();

    /** A part of the store: one player, one course, or everything. */
    record Selection(List<String> players, List<String> courses, boolean everything) {
        public static final Selection ALL = new Selection(List.of(), List.of(), true);

        public Selection {
            players = List.copyOf(players);
            courses = List.copyOf(courses);
        }

        public static Selection player(String id) {
            return new Selection(List.of(id), List.of(), false);
        }

        public static Selection course(String id) {
            return new Selection(List.of(), List.of(id), false);
        }
    }
}
