package loopwright.action;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** A shelf of which a visitor sees only some documents, and changes only what he may. */
final class GuardedShelf implements Shelf {
    private final Shelf shelf;
    private final Rules rules;

    /**
     * What the visitor of now may do.
     *
     * @param maySee documents by id; what may not be seen does not exist
     * @param added is called with the id of every document the visitor has added
     */
    record Rules(
            Predicate<String> maySee, BooleanSupplier mayChange, BooleanSupplier mayErase, Consumer<String> added) {}

    GuardedShelf(Shelf shelf, Rules rules) {
        this.shelf = shelf;
        this.rules = rules;
    }

    private static void require(BooleanSupplier may) {
        if (!may.getAsBoolean()) {
            throw new Forbidden();
        }
    }

    /** The id if it may be seen; else the same fault as for an id that never was. */
    String seen(String id) {
        return rules.maySee().test(id)
                ? id
                : shelf.get("(not yours) " + id.hashCode()).id();
    }

    @Override
    public List<Entry> list() {
        return shelf.list().stream().filter(e -> rules.maySee().test(e.id())).toList();
    }

    @Override
    public List<Entry> listVersions(String id) {
        return rules.maySee().test(id) ? shelf.listVersions(id) : List.of();
    }

    @Override
    public Document get(String id) {
        return shelf.get(seen(id));
    }

    @Override
    public Document get(String id, int version) {
        return shelf.get(seen(id), version);
    }

    @Override
    public Document add(String name, String text, String note) {
        require(rules.mayChange());
        Document added = shelf.add(name, text, note);
        rules.added().accept(added.id());
        return added;
    }

    @Override
    public Document change(String id, int seen, String name, String text, String note) {
        require(rules.mayChange());
        return shelf.change(seen(id), seen, name, text, note);
    }

    @Override
    public void erase(String id) {
        require(rules.mayErase());
        shelf.erase(seen(id));
    }
}
