package loopwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import loopwright.action.LengthUnit;
import loopwright.action.RoundPlan;

/** How the choices change from day to day: the first shots of each hole, one column for each day. */
final class DayTable {
    private static final int NARROWEST = 14;

    private final List<RoundPlan> plans;
    private final LengthUnit unit;

    DayTable(RoundPlan plan, LengthUnit unit) {
        this.unit = unit;
        plans = new ArrayList<>();
        plans.add(plan);
        plans.addAll(plan.otherDays());
    }

    List<String> lines() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("", plan -> DayWords.wind(plan.day().conditions().wind())));
        for (int h = 0; h < plans.get(0).holes().size(); h++) {
            addHole(rows, h);
        }
        rows.add(row("round", plan -> number("%.1f", plan.total().mean())));
        String target = plans.get(0).counting().words(plans.get(0).target());
        rows.add(row(target, plan -> number("%.1f %%", 100 * plan.targetProbability())));
        return aligned(rows);
    }

    private void addHole(List<List<String>> rows, int hole) {
        rows.add(row(
                "hole " + plans.get(0).holes().get(hole).number(),
                plan -> shot(plan.holes().get(hole), 0)));
        if (plans.stream().anyMatch(plan -> plan.holes().get(hole).shots().size() > 1)) {
            rows.add(row("  then", plan -> shot(plan.holes().get(hole), 1)));
        }
        rows.add(row("  expect", plan -> number("%.2f", plan.holes().get(hole).expected())));
    }

    private List<String> row(String name, Function<RoundPlan, String> cell) {
        List<String> out = new ArrayList<>(List.of(name));
        plans.forEach(plan -> out.add(cell.apply(plan)));
        return out;
    }

    private static List<String> aligned(List<List<String>> rows) {
        List<String> out = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder("  ");
            for (int c = 0; c < row.size(); c++) {
                int column = c;
                int widest = rows.stream()
                        .mapToInt(r -> r.get(column).length())
                        .max()
                        .orElse(0);
                line.append(row.get(c))
                        .append(" "
                                .repeat(Math.max(NARROWEST, widest)
                                        + 2
                                        - row.get(c).length()));
            }
            out.add(line.toString().stripTrailing());
        }
        return out;
    }

    /** "driver, 3 left", or nothing where the hole has no such shot. */
    private String shot(RoundPlan.HolePlan hole, int index) {
        if (index >= hole.shots().size()) {
            return "";
        }
        RoundPlan.ShotPlan s = hole.shots().get(index);
        String beside = unit.beside(s.offsetMetres());
        return beside.isEmpty() ? s.club() : s.club() + ", " + beside;
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
