package loopwright.adapter.table;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import loopwright.scoring.HoleEnd;
import loopwright.scoring.HoleMark;
import loopwright.scoring.HoleRecord;
import loopwright.scoring.ShotRecord;
import loopwright.scoring.Stroke;

/** Gathers the rows of one hole: one row in a table of holes, one for each stroke in a table of strokes. */
final class HoleBuild {
    private final int number;
    private final List<RoundRow> rows = new ArrayList<>();
    private boolean spoilt;

    HoleBuild(int number) {
        this.number = number;
    }

    void add(RoundRow row) {
        rows.add(row);
    }

    void spoil() {
        spoilt = true;
    }

    boolean isOver() {
        return !rows.isEmpty() && end() != HoleEnd.HOLED;
    }

    /** The hole; none if a row of it was bad, or nothing but a conceded putt is left. */
    Optional<HoleRecord> hole() {
        List<ShotRecord> shots = shots();
        boolean onlyConceded =
                shots.isEmpty() && rows.stream().anyMatch(r -> r.shot().isPresent());
        if (spoilt || rows.isEmpty() || onlyConceded) {
            return Optional.empty();
        }
        return Optional.of(new HoleRecord(
                number,
                firstWhole(rows.stream().map(RoundRow::par).toList()),
                rows.stream().flatMap(r -> r.length().stream()).findFirst(),
                firstWhole(rows.stream().map(RoundRow::score).toList()),
                end(),
                marks(),
                rows.get(0).counts(),
                shots,
                conceded()));
    }

    private RoundRow last() {
        return rows.get(rows.size() - 1);
    }

    private HoleEnd end() {
        if (last().pickedUp()) {
            return HoleEnd.PICKED_UP;
        }
        return last().conceded() ? HoleEnd.CONCEDED : HoleEnd.HOLED;
    }

    /** The strokes that were made; the row of a conceded putt is none. */
    private List<ShotRecord> shots() {
        return rows.stream()
                .filter(r -> !r.conceded())
                .flatMap(r -> r.shot().stream())
                .toList();
    }

    private Optional<Stroke> conceded() {
        return last().conceded() ? last().shot().map(ShotRecord::stroke) : Optional.empty();
    }

    private Set<HoleMark> marks() {
        Set<HoleMark> marks = EnumSet.noneOf(HoleMark.class);
        rows.forEach(r -> marks.addAll(r.marks()));
        return marks;
    }

    private static OptionalInt firstWhole(List<OptionalInt> values) {
        return values.stream().filter(OptionalInt::isPresent).findFirst().orElse(OptionalInt.empty());
    }
}
