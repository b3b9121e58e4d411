package loopwright.web;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import loopwright.action.HolePicture;
import loopwright.action.HoleScreens;
import loopwright.action.HoleScreens.Screen;
import loopwright.action.Remembered;
import loopwright.action.Shelf;
import loopwright.action.SurveyCourse;
import loopwright.action.Workroom;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.course.TemporaryGreen;

/**
 * The ground of holes, each a picture with an address of its own. It is the same whatever is planned on it: drawn once,
 * and fetched once by a browser, while all that is laid over it follows the hand.
 */
final class HoleGrounds {
    /** A picture takes some 100 kB. */
    private static final int KEPT = 72;

    private final Workroom room;
    private final HoleScreens screens;
    private final Remembered<Asked, Drawn> kept = new Remembered<>(KEPT);

    HoleGrounds(Workroom room, HoleScreens screens) {
        this.room = room;
        this.screens = screens;
    }

    private record Asked(String course, int version, int hole, String tees) {}

    /** {@code mark} tells pictures apart that differ, so that a browser never keeps one of another drawing. */
    private record Drawn(String svg, String mark) {}

    /** Where the ground of a hole is found. */
    String address(AskedHole asked) {
        Shelf.Entry course = asked.choice().course();
        String tees = asked.choice().tees();
        return "/plan/hole/ground?course=" + course.id() + "&version=" + course.version() + "&hole=" + asked.number()
                + "&tees=" + URLEncoder.encode(tees, StandardCharsets.UTF_8) + "&drawn="
                + drawn(new Asked(course.id(), course.version(), asked.number(), tees))
                        .mark();
    }

    void answer(Context ctx) {
        Drawn drawn = drawn(new Asked(
                PlanQuery.text(ctx, "course", ""),
                PlanQuery.whole("version", PlanQuery.text(ctx, "version", "")),
                PlanQuery.whole("hole", PlanQuery.text(ctx, "hole", "1")),
                PlanQuery.text(ctx, "tees", "")));
        if (drawn.mark().equals(PlanQuery.text(ctx, "drawn", ""))) {
            ctx.header("Cache-Control", "private, max-age=86400, immutable");
        }
        ctx.contentType("image/svg+xml").result(drawn.svg());
    }

    private Drawn drawn(Asked asked) {
        Course course = room.course(asked.course(), asked.version());
        return kept.get(asked, () -> draw(asked, TemporaryGreen.inPlay(course)));
    }

    private Drawn draw(Asked asked, Course course) {
        Hole hole = SurveyCourse.getHole(course, asked.hole());
        TeeSet tees = PlanQuery.tees(course, asked.tees());
        Screen screen = screens.screen(
                HolePicture.ofGround(
                        course, hole, tees.name(), tees.getPlace(hole.number()).place()),
                Units.of(room).lengths());
        String svg = String.format(
                        Locale.ROOT,
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" stroke-linejoin=\"round\""
                                + " stroke-linecap=\"round\">",
                        screen.width(),
                        screen.height())
                + screen.ground() + "</svg>";
        return new Drawn(svg, Integer.toHexString(svg.hashCode()));
    }
}
