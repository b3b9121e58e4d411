package loopwright.action;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import loopwright.practice.Drill;

/** The drills of a player of the store: the program's and those his coach made, kept as they were delivered; the newest file counts. */
public final class OwnDrills {
    private final Workroom room;
    private final DrillCards cards;

    public OwnDrills(Workroom room, DrillCards cards) {
        this.room = room;
        this.cards = cards;
    }

    /** The file of the coach's own drills, if there is one. */
    public Optional<KeptList> findFile(String player) {
        List<KeptList> files = room.store().listLists(player).stream()
                .filter(l -> l.kind() == KeptList.Kind.DRILLS)
                .toList();
        return files.isEmpty() ? Optional.empty() : Optional.of(files.get(files.size() - 1));
    }

    /** All drills of a player. */
    public List<Drill> drills(String player, double corridorMetres) {
        return findFile(player)
                .map(f -> read(f.name(), f.text(), corridorMetres))
                .orElseGet(() -> cards.drills(Optional.empty(), corridorMetres));
    }

    private List<Drill> read(String name, String text, double corridorMetres) {
        return room.withFile(text.getBytes(StandardCharsets.UTF_8), ".json", file -> {
            try {
                return cards.drills(Optional.of(file), corridorMetres);
            } catch (UserFault e) {
                throw new UserFault(String.valueOf(e.getMessage()).replace(file.toString(), name), e);
            }
        });
    }

    /** Puts a file in the place of the one before; one that cannot be used changes nothing. Returns how many drills it holds. */
    public int keep(String player, String name, String text) {
        int all = read(name, text, DrillCards.USUAL_CORRIDOR_METRES).size();
        int own = all
                - cards.drills(Optional.empty(), DrillCards.USUAL_CORRIDOR_METRES)
                        .size();
        erase(player);
        room.store().addList(player, KeptList.Kind.DRILLS, name, "", text);
        return own;
    }

    /** Takes the coach's drills out; what was logged of them stays. */
    public void erase(String player) {
        room.store().listLists(player).stream()
                .filter(l -> l.kind() == KeptList.Kind.DRILLS)
                .forEach(l -> room.store().eraseList(player, l.id()));
    }
}
