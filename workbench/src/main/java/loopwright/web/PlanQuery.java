package loopwright.web;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import loopwright.action.BenchStore;
import loopwright.action.Counting;
import loopwright.action.LengthUnit;
import loopwright.action.PlanChoice;
import loopwright.action.PlanChoice.Goal;
import loopwright.action.Shelf;
import loopwright.action.TodayRequest;
import loopwright.action.UserFault;
import loopwright.course.Course;
import loopwright.course.TeeSet;
import org.jspecify.annotations.Nullable;

/** Reads from an address what a plan is to be made from. */
final class PlanQuery {
    /** In which unit an address tells the balls of the warm-up; without it in yards, as older addresses do. */
    static final String BALLS_UNIT = "today.in";

    private static final String USUAL_TARGET = "79";

    private PlanQuery() {}

    /** Empty where there is no player or no course yet. */
    static Optional<PlanChoice> find(Context ctx, BenchStore store) {
        Optional<Shelf.Entry> player = entry(store.players(), ctx.queryParam("player"), "player");
        Optional<Shelf.Entry> course = entry(store.courses(), ctx.queryParam("course"), "course");
        if (player.isEmpty() || course.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PlanChoice(
                player.get(),
                course.get(),
                text(ctx, "tees", "middle"),
                goal(ctx),
                DayFields.read(ctx),
                new TodayRequest(
                        Optional.of(text(ctx, "today", "")).filter(t -> !t.isEmpty()),
                        LengthUnit.named(text(ctx, BALLS_UNIT, LengthUnit.YARDS.words())),
                        list(ctx, "longer")),
                text(ctx, "holes", ""),
                list(ctx, "location"),
                list(ctx, "forbid"),
                list(ctx, "require"),
                whole("seed", text(ctx, "seed", "1"))));
    }

    private static Goal goal(Context ctx) {
        return new Goal(
                whole("target", text(ctx, "target", USUAL_TARGET)),
                counting(ctx),
                text(ctx, "objective", "mean").equals("target"),
                text(ctx, "sure", "").equals("yes"));
    }

    private static Counting counting(Context ctx) {
        String word = text(ctx, "counting", "strokes");
        Counting.Form form = Arrays.stream(Counting.Form.values())
                .filter(f -> f.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst()
                .orElseThrow(() -> new UserFault(Texts.say("plan.countingUnknown", word)));
        String typed = text(ctx, "handicap", "");
        if (form == Counting.Form.NET && typed.isEmpty()) {
            throw new UserFault(Texts.say("plan.handicapMissing"));
        }
        OptionalInt handicap = typed.isEmpty() ? OptionalInt.empty() : OptionalInt.of((int) signed("handicap", typed));
        return new Counting(form, handicap, OptionalInt.empty());
    }

    private static long signed(String name, String text) {
        return text.startsWith("-") ? -whole(name, text.substring(1)) : whole(name, text);
    }

    static PlanChoice get(Context ctx, BenchStore store) {
        return find(ctx, store)
                .orElseThrow(() -> new UserFault(
                        "A plan needs a player and a course; add them first under Player and" + " Course."));
    }

    /** The entry of an id, or the first of the shelf where none is named. */
    static Optional<Shelf.Entry> entry(Shelf shelf, @Nullable String id, String what) {
        List<Shelf.Entry> all = shelf.list();
        if (id == null || id.isEmpty()) {
            return all.stream().findFirst();
        }
        return Optional.of(all.stream()
                .filter(e -> e.id().equals(id))
                .findFirst()
                .orElseThrow(() ->
                        new UserFault("There is no " + what + " " + id + " on this bench; it may have been erased.")));
    }

    /** A set of tees by its name. */
    static TeeSet tees(Course course, String wanted) {
        return course.findTeeSet(wanted)
                .orElseThrow(() -> new UserFault(Texts.say(
                        "rounds.noTees",
                        wanted,
                        String.join(
                                ", ",
                                course.teeSets().stream().map(TeeSet::name).toList()))));
    }

    static String text(Context ctx, String name, String otherwise) {
        String value = ctx.queryParam(name);
        return value == null || value.isBlank() ? otherwise : value.strip();
    }

    static int whole(String name, String text) {
        if (!text.matches("\\d{1,9}")) {
            throw new UserFault("\"" + text + "\" is no whole number for \"" + name + "\"; type digits only.");
        }
        return Integer.parseInt(text);
    }

    static double decimal(Context ctx, String name) {
        String text = text(ctx, name, "");
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new UserFault("\"" + text + "\" is no number for \"" + name + "\".", e);
        }
        throw new UserFault("\"" + text + "\" is no number for \"" + name + "\".");
    }

    /** One entry a line, or separated by semicolons. */
    static List<String> list(Context ctx, String name) {
        return ctx.queryParams(name).stream()
                .flatMap(v -> Arrays.stream(v.split("[;\\n]", -1)))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .toList();
    }
}
