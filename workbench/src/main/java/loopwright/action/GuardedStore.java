package loopwright.action;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.action.Account.Role;

/**
 * The store as the visitor of now may use it: coaches see their own players and those shared with them, players and
 * guardians one player; courses are common, and changed by coaches. What is not his does not exist for him. Without a
 * visitor (see {@link Visits}) everything is open.
 */
public final class GuardedStore implements BenchStore {
    private final BenchStore store;
    private final Visits visits;

    public GuardedStore(BenchStore store, Visits visits) {
        this.store = store;
        this.visits = visits;
    }

    private boolean isOwner() {
        return visits.account().map(a -> a.role() == Role.OWNER).orElse(true);
    }

    private boolean isCoach() {
        return visits.account().map(a -> a.role().isCoach()).orElse(true);
    }

    private boolean maySeePlayer(String id) {
        return isOwner() || ownPlayers().contains(id);
    }

    private Set<String> ownPlayers() {
        return visits.account().map(a -> store.access().listPlayers(a.id())).orElse(Set.of());
    }

    private static void require(boolean may) {
        if (!may) {
            throw new Forbidden();
        }
    }

    private GuardedShelf shelfOfPlayers() {
        return new GuardedShelf(
                store.players(),
                new GuardedShelf.Rules(
                        this::maySeePlayer,
                        this::isCoach,
                        this::isCoach,
                        id -> visits.account().ifPresent(a -> store.access().grant(a.id(), id))));
    }

    /** The id of a player who may be seen; else the fault for one that never was. */
    private String own(String player) {
        return shelfOfPlayers().seen(player);
    }

    /** The id of a player who may be seen, or of a course. */
    private String readable(String document) {
        return isCourse(document) ? document : own(document);
    }

    private boolean isCourse(String document) {
        return store.courses().list().stream().anyMatch(e -> e.id().equals(document));
    }

    @Override
    public void requireReadable(String document) {
        if (!isOwner()) {
            readable(document);
        }
    }

    @Override
    public Shelf courses() {
        return new GuardedShelf(
                store.courses(), new GuardedShelf.Rules(id -> true, this::isCoach, this::isOwner, id -> {}));
    }

    @Override
    public Shelf players() {
        return shelfOfPlayers();
    }

    @Override
    public Map<String, String> listAnswers(String document) {
        return store.listAnswers(readable(document));
    }

    @Override
    public void setAnswers(String document, Map<String, String> answers) {
        require(isCoach());
        store.setAnswers(readable(document), answers);
    }

    @Override
    public List<KeptList> listLists(String player) {
        return store.listLists(own(player));
    }

    @Override
    public KeptList addList(String player, KeptList.Kind kind, String name, String setting, String text) {
        require(isCoach());
        return store.addList(own(player), kind, name, setting, text);
    }

    @Override
    public void eraseList(String player, String list) {
        require(isCoach());
        store.eraseList(own(player), list);
    }

    @Override
    public Map<Integer, String> listHoleLocations(String course, String day) {
        return store.listHoleLocations(course, day);
    }

    @Override
    public void setHoleLocations(String course, String day, Map<Integer, String> locations) {
        require(isCoach());
        store.setHoleLocations(course, day, locations);
    }

    @Override
    public String localRules(String course, String day) {
        return store.localRules(course, day);
    }

    @Override
    public void setLocalRules(String course, String day, String rules) {
        require(isCoach());
        store.setLocalRules(course, day, rules);
    }

    @Override
    public Optional<CourseImage> findImage(String course) {
        return store.findImage(course);
    }

    @Override
    public List<KeptImage> listImages(String course) {
        return store.listImages(course);
    }

    @Override
    public void addImage(String course, CourseImage image) {
        require(isCoach());
        store.addImage(course, image);
    }

    @Override
    public void showImage(String course, int number) {
        require(isCoach());
        store.showImage(course, number);
    }

    @Override
    public void eraseImage(String course, int number) {
        require(isCoach());
        store.eraseImage(course, number);
    }

    @Override
    public PlayerRecords records() {
        return new GuardedRecords(store.records(), this::own, () -> require(isCoach()));
    }

    @Override
    public List<KeptPlan> listPlans() {
        return store.listPlans().stream().filter(p -> maySeePlayer(p.player())).toList();
    }

    @Override
    public void keepPlan(KeptPlan plan) {
        own(plan.player());
        store.keepPlan(plan);
    }

    /** Everybody has preferences of his own. */
    @Override
    public Map<String, String> listPreferences() {
        String prefix = prefix();
        Map<String, String> out = new HashMap<>();
        store.listPreferences().forEach((name, value) -> {
            if (name.startsWith(prefix) && (!prefix.isEmpty() || !name.contains("/"))) {
                out.put(name.substring(prefix.length()), value);
            }
        });
        return out;
    }

    @Override
    public void setPreference(String name, String value) {
        store.setPreference(prefix() + name, value);
    }

    private String prefix() {
        return visits.account().map(a -> a.id() + "/").orElse("");
    }

    @Override
    public void eraseEverything() {
        require(isOwner());
        store.eraseEverything();
    }

    @Override
    public void export(Selection what, OutputStream out) {
        if (isOwner()) {
            store.export(what, out);
        } else if (what.everything()) {
            List<String> courses = isCoach()
                    ? store.courses().list().stream().map(Shelf.Entry::id).toList()
                    : List.of();
            store.export(new Selection(List.copyOf(ownPlayers()), courses, false), out);
        } else {
            what.players().forEach(this::own);
            store.export(what, out);
        }
    }

    /** A zip may hold anybody's data, so only the owner takes one in. */
    @Override
    public void importZip(InputStream zip, String label, boolean replace) {
        require(isOwner());
        store.importZip(zip, label, replace);
    }

    @Override
    public void restore(InputStream zip, String label) {
        require(isOwner());
        store.restore(zip, label);
    }

    @Override
    public AccessBook access() {
        return store.access();
    }

    @Override
    public String where() {
        return isOwner() ? store.where() : "";
    }

    @Override
    public Path folder() {
        return store.folder();
    }

    @Override
    public void close() {
        store.close();
    }
}
