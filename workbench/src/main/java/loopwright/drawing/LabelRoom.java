package loopwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Remembers what is taken on the sheet, so that no text is put over another. */
public final class LabelRoom {
    private final Extent sheet;
    private final List<Extent> taken = new ArrayList<>();

    public LabelRoom(Extent sheet) {
        this.sheet = sheet;
    }

    public void take(Extent extent) {
        taken.add(extent);
    }

    public boolean isFree(Extent extent) {
        return sheet.contains(extent) && taken.stream().noneMatch(t -> t.overlaps(extent));
    }

    /** The first candidate that is free, now taken; empty if none is. */
    public Optional<Extent> findFirstFree(List<Extent> candidates) {
        Optional<Extent> free = candidates.stream().filter(this::isFree).findFirst();
        free.ifPresent(this::take);
        return free;
    }

    /** The first free candidate, or else the one that covers least; it is then taken. */
    public Extent takeBest(List<Extent> candidates) {
        Extent best = findFirstFree(candidates).orElse(null);
        if (best != null) {
            return best;
        }
        double least = Double.POSITIVE_INFINITY;
        Extent chosen = candidates.get(0);
        for (Extent c : candidates) {
            double outside = c.width() * c.height() - c.shared(sheet);
            double cost = outside * 4 + taken.stream().mapToDouble(c::shared).sum();
            if (cost < least) {
                least = cost;
                chosen = c;
            }
        }
        take(chosen);
        return chosen;
    }
}
