package loopwright.web;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import loopwright.action.SurveyCourse;
import loopwright.action.UserFault;
import loopwright.course.AreaKind;
import loopwright.course.Course;
import loopwright.course.GreenSurvey;
import loopwright.course.Hole;
import loopwright.course.HoleNotes;
import loopwright.course.TeePlan;

/** Reads one of the forms of {@link HoleNotesForm} and changes the course as it says. */
final class HoleNotesPost {
    private static final double HOUR = Math.PI / 6;

    private final Context ctx;
    private final Course course;
    private final Hole hole;
    private final Units units;

    HoleNotesPost(Context ctx, Course course, Hole hole, Units units) {
        this.ctx = ctx;
        this.course = course;
        this.hole = hole;
        this.units = units;
    }

    Course changed() {
        try {
            return switch (text("what")) {
                case "nine" -> green(this::nine);
                case "lost" -> SurveyCourse.withNotFoundChance(course, kind(), number("chance") / 100);
                case "tees" -> SurveyCourse.withTees(course, tees());
                case "clear" -> cleared();
                default -> throw new UserFault(Texts.say("note.unknown"));
            };
        } catch (IllegalArgumentException e) {
            throw new UserFault(Texts.say("note.cannot", String.valueOf(e.getMessage())), e);
        }
    }

    private Course noted(UnaryOperator<HoleNotes> change) {
        return SurveyCourse.withNotes(course, hole.number(), change);
    }

    private Course green(UnaryOperator<GreenSurvey> change) {
        return noted(n -> n.withGreen(change.apply(n.green())));
    }

    private Course cleared() {
        if (!text("sure").equals("yes")) {
            throw new UserFault(Texts.say("data.notSure"));
        }
        return noted(n -> HoleNotes.NOTHING);
    }

    private String text(String name) {
        return Optional.ofNullable(ctx.formParam(name)).orElse("").strip();
    }

    private double number(String name) {
        String typed = text(name).replace(',', '.');
        try {
            double value = Double.parseDouble(typed);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new UserFault(Texts.say("note.noNumber", typed, Texts.say("note.field." + name)), e);
        }
        throw new UserFault(Texts.say("note.noNumber", typed, Texts.say("note.field." + name)));
    }

    private double numberOr(String name, double otherwise) {
        return text(name).isEmpty() ? otherwise : number(name);
    }

    private GreenSurvey nine(GreenSurvey before) {
        double[] slopes = new double[9];
        double[] turns = new double[9];
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = nineNumber("slope", i) / 100;
            turns[i] = HOUR * nineNumber("hour", i);
        }
        // a sheet takes the place of an older one
        return new GreenSurvey(before.spots(), java.util.List.of()).withNineSpots(hole, slopes, turns);
    }

    private double nineNumber(String name, int spot) {
        String typed = text(name + spot).replace(',', '.');
        if (!typed.matches("\\d{1,2}(\\.\\d+)?")) {
            throw new UserFault(Texts.say("note.nineNumber", typed, Texts.say("nine." + spot)));
        }
        return Double.parseDouble(typed);
    }

    private AreaKind kind() {
        return switch (text("kind")) {
            case "WOODS" -> AreaKind.WOODS;
            case "DEEP_ROUGH" -> AreaKind.DEEP_ROUGH;
            case "ROUGH" -> AreaKind.ROUGH;
            default -> throw new UserFault(Texts.say("note.unknown"));
        };
    }

    /** Today's markers of this hole; those of other holes stay where an earlier change put them. */
    private TeePlan tees() {
        String name = text("name");
        if (!name.matches("[\\p{L}\\d][\\p{L}\\d ._-]{0,30}")) {
            throw new UserFault(Texts.say("note.teesBadName", name));
        }
        String chosen = text("base");
        String base = course.teeSets().stream().anyMatch(t -> t.name().equals(name)) ? name : chosen;
        Map<Integer, Double> forward = new HashMap<>();
        forward.put(hole.number(), units.metres(numberOr("forward", 0)));
        return new TeePlan(name, base, Map.of(hole.number(), chosen), forward);
    }
}
