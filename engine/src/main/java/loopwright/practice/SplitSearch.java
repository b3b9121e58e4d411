package loopwright.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import loopwright.practice.TimeSplit.Cell;

/**
 * Finds the split of a week's blocks with the highest log odds of the target after all weeks: the coach's wishes first, then
 * block by block where the next one gains most, then blocks exchanged as long as that helps. Where every curve has falling gains
 * and no limit binds this is exact; for curves that rise at first and limits that bind the search is begun anew with a third, two
 * thirds and all of the week on each skill.
 */
public final class SplitSearch {
    private static final double GAIN = 1e-12;
    private static final int[] EXCHANGES = {4, 3, 2, 1};
    /** A search begins with so many shares of the week for every skill, the whole week being the last. */
    private static final int STARTS = 3;

    private final PracticeHours hours;
    private final LearningTable curves;
    private final SkillResponse response;
    private final List<Cell> cells;

    public SplitSearch(PracticeHours hours, LearningTable curves, SkillResponse response) {
        this.hours = hours;
        this.curves = curves;
        this.response = response;
        cells = cells(hours, curves);
    }

    /** Skills of a player at the places there are. */
    static List<Cell> cells(PracticeHours hours, LearningTable curves) {
        List<Cell> out = new ArrayList<>();
        for (Skill skill : curves.curves().keySet()) {
            for (Facility facility : hours.most().keySet()) {
                if (facility.counts(skill) > 0) {
                    out.add(new Cell(skill, facility));
                }
            }
        }
        return out;
    }

    /** Log odds of the target after all weeks. */
    public double value(TimeSplit split) {
        return response.logOdds(split.after(hours, curves));
    }

    /** The best split found; fewer blocks than there are only if the limits leave no room. */
    public TimeSplit best() {
        TimeSplit best = from(Skill.DECISIONS, 0);
        for (Skill skill : curves.curves().keySet()) {
            for (int part = 1; part <= STARTS; part++) {
                TimeSplit other = from(skill, hours.blocks() * part / STARTS);
                best = value(other) > value(best) + GAIN ? other : best;
            }
        }
        return best;
    }

    /** Fills a week that begins with some blocks of one skill, then exchanges. */
    private TimeSplit from(Skill skill, int blocks) {
        Table table = new Table();
        int[] wished = wishes(table);
        place(table, skill, Math.min(blocks, hours.blocks() - table.total));
        for (int c = table.bestMore(); table.total < hours.blocks() && c >= 0; c = table.bestMore()) {
            table.move(c, 1);
        }
        for (int size : EXCHANGES) {
            while (table.exchange(size, wished)) {
                // until no exchange helps
            }
        }
        return table.split();
    }

    /** Places what the coach wants as well as it goes; returns the blocks placed by skill. */
    private int[] wishes(Table table) {
        hours.least().forEach((skill, blocks) -> place(table, skill, blocks));
        return table.bySkill.clone();
    }

    private static void place(Table table, Skill skill, int blocks) {
        for (int b = 0; b < blocks; b++) {
            int c = table.bestMore(s -> s == skill);
            if (c >= 0) {
                table.move(c, 1);
            }
        }
    }

    /** The split under way. */
    private final class Table {
        final int[] blocks = new int[cells.size()];
        final int[] bySkill = new int[Skill.values().length];
        final double[] counted = new double[Skill.values().length];
        final int[] byFacility = new int[Facility.values().length];
        int fullSwings;
        int total;

        void move(int cell, int more) {
            Cell c = cells.get(cell);
            blocks[cell] += more;
            bySkill[c.skill().ordinal()] += more;
            counted[c.skill().ordinal()] += more * c.facility().counts(c.skill());
            byFacility[c.facility().ordinal()] += more;
            fullSwings += c.facility().loads(c.skill()) ? more : 0;
            total += more;
        }

        boolean fits() {
            return fullSwings <= hours.mostFullSwings()
                    && hours.most().entrySet().stream()
                            .allMatch(e -> byFacility[e.getKey().ordinal()] <= e.getValue());
        }

        double gain(int cell) {
            Skill skill = cells.get(cell).skill();
            return response.gain(skill, curves.get(skill).left(hours.hours(counted[skill.ordinal()])));
        }

        /** What {@code more} blocks in a cell add. */
        double added(int cell, int more) {
            double before = gain(cell);
            move(cell, more);
            double after = fits() ? gain(cell) : Double.NEGATIVE_INFINITY;
            move(cell, -more);
            return after - before;
        }

        int bestMore() {
            return bestMore(skill -> true);
        }

        /** The cell in which one more block gains most; -1 if there is room in none. */
        int bestMore(Predicate<Skill> wanted) {
            int best = -1;
            double most = Double.NEGATIVE_INFINITY;
            for (int c = 0; c < blocks.length; c++) {
                if (wanted.test(cells.get(c).skill())) {
                    double added = added(c, 1);
                    if (added > most) {
                        most = added;
                        best = c;
                    }
                }
            }
            return best;
        }

        /** Makes the best exchange of so many blocks, if one helps. */
        boolean exchange(int size, int[] wished) {
            int from = -1;
            int to = -1;
            double most = GAIN;
            for (int f = 0; f < blocks.length; f++) {
                int skill = cells.get(f).skill().ordinal();
                if (blocks[f] < size) {
                    continue;
                }
                double before = gain(f);
                move(f, -size);
                double lost = before - gain(f);
                for (int t = 0; t < blocks.length; t++) {
                    boolean kept = bySkill[skill] >= wished[skill]
                            || (cells.get(t).skill().ordinal() == skill && bySkill[skill] + size >= wished[skill]);
                    double won = t == f || !kept ? 0 : added(t, size) - lost;
                    if (won > most) {
                        most = won;
                        from = f;
                        to = t;
                    }
                }
                move(f, size);
            }
            if (from >= 0) {
                move(from, -size);
                move(to, size);
            }
            return from >= 0;
        }

        TimeSplit split() {
            Map<Cell, Integer> out = new TreeMap<>();
            for (int c = 0; c < blocks.length; c++) {
                out.put(cells.get(c), blocks[c]);
            }
            return new TimeSplit(out);
        }
    }
}
