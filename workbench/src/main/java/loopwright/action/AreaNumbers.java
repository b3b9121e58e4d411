package loopwright.action;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Supplier;
import loopwright.course.Area;
import loopwright.course.AreaKind;
import loopwright.course.AreaSurvey;
import loopwright.course.TreeCover;

/**
 * What is known of an area beside its shape, as numbers by what they say: of woods "height", "gap" (metres) and
 * "density", of a bunker "depth" and "lip" (metres), and "lost", the chance from 0 to 1 that a ball is not found. A
 * number that is missing is as it is assumed.
 */
public final class AreaNumbers {
    private AreaNumbers() {}

    /** What is assumed of an area of a kind; nothing for kinds of which nothing is asked. */
    public static Map<String, Double> assumed(AreaKind kind) {
        Map<String, Double> out = new TreeMap<>();
        if (kind == AreaKind.BUNKER) {
            out.put("depth", 0.0);
            out.put("lip", 0.0);
        }
        if (kind == AreaKind.WOODS) {
            putTrees(out, TreeCover.WOODS_DEFAULT);
        }
        if (kind == AreaKind.WOODS || kind == AreaKind.DEEP_ROUGH || kind == AreaKind.ROUGH) {
            out.put("lost", Area.defaultNotFoundChance(kind));
        }
        return out;
    }

    private static void putTrees(Map<String, Double> out, TreeCover trees) {
        out.put("height", trees.heightMetres());
        out.put("gap", trees.gapMetres());
        out.put("density", trees.density());
    }

    /** What is known of an area. */
    public static Map<String, Double> of(Area area) {
        Map<String, Double> out = new TreeMap<>();
        area.survey().depthMetres().ifPresent(d -> out.put("depth", d));
        area.survey().lipMetres().ifPresent(d -> out.put("lip", d));
        area.survey().trees().ifPresent(t -> putTrees(out, t));
        if (area.notFoundChance() != Area.defaultNotFoundChance(area.kind())) {
            out.put("lost", area.notFoundChance());
        }
        return out;
    }

    /** The area with these numbers and no others. */
    static Area set(Area area, Map<String, Double> numbers) {
        return said(area, () -> {
            Area out = new Area(
                    area.id(),
                    area.kind(),
                    area.region(),
                    numbers.getOrDefault("lost", Area.defaultNotFoundChance(area.kind())));
            return out.withSurvey(
                    switch (area.kind()) {
                        case WOODS -> woods(numbers);
                        case BUNKER ->
                            new AreaSurvey(find(numbers, "depth"), find(numbers, "lip"), AreaSurvey.NOTHING.trees());
                        default -> AreaSurvey.NOTHING;
                    });
        });
    }

    private static AreaSurvey woods(Map<String, Double> numbers) {
        TreeCover usual = TreeCover.WOODS_DEFAULT;
        TreeCover trees = new TreeCover(
                numbers.getOrDefault("height", usual.heightMetres()),
                numbers.getOrDefault("gap", usual.gapMetres()),
                numbers.getOrDefault("density", usual.density()));
        return trees.equals(usual) ? AreaSurvey.NOTHING : AreaSurvey.NOTHING.withTrees(trees);
    }

    private static OptionalDouble find(Map<String, Double> numbers, String what) {
        Double value = numbers.get(what);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static Area said(Area area, Supplier<Area> make) {
        try {
            return make.get();
        } catch (IllegalArgumentException e) {
            throw new UserFault(
                    "What is said of " + area.id() + " cannot be: " + e.getMessage() + "; change it and save again.",
                    e);
        }
    }
}
