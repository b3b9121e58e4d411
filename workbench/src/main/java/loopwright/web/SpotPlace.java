package loopwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.action.AimField;
import loopwright.action.HolePicture;
import loopwright.action.HoleScreens;
import loopwright.action.HoleScreens.Screen;
import loopwright.action.Jobs.Job;
import loopwright.action.PlanBench;
import loopwright.action.SolvedHole;
import loopwright.action.Workroom;
import loopwright.geo.Place;

/** Questions about a solved hole that take longer than a drag: strokes from everywhere and over all aims, and two choices compared. */
public final class SpotPlace implements loopwright.web.Place {
    private final Workroom room;
    private final PlanBench plans;
    private final HoleScreens screens;

    public SpotPlace(Workroom room, PlanBench plans, HoleScreens screens) {
        this.room = room;
        this.plans = plans;
        this.screens = screens;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/plan/hole/contours", this::contours);
        routes.get("/plan/hole/aims", this::aims);
        routes.get("/plan/hole/pair", this::pair);
        routes.get("/plan/hole/chance", this::chance);
    }

    /** A question, the solved hole and how it lies on the screen. */
    private record Question(Context ctx, AskedHole asked, Job<SolvedHole> job, SolvedHole hole, Screen screen) {
        Place place(String x, String y) {
            return screen.placeAt(PlanQuery.decimal(ctx, x), PlanQuery.decimal(ctx, y));
        }

        Place ball() {
            return place("x", "y");
        }

        SolvedHole.Pair pair() {
            return new SolvedHole.Pair(
                    ball(),
                    new SolvedHole.Meant(PlanQuery.text(ctx, "club", ""), place("ax", "ay")),
                    new SolvedHole.Meant(PlanQuery.text(ctx, "club2", ""), place("ax2", "ay2")));
        }
    }

    private Question question(Context ctx) {
        AskedHole asked = AskedHole.of(ctx, room);
        Job<SolvedHole> job = asked.job(ctx, plans);
        SolvedHole hole = AskedHole.solved(job);
        Screen screen = screens.screen(hole.picture(List.of()), asked.units().lengths());
        return new Question(ctx, asked, job, hole, screen);
    }

    private void contours(Context ctx) {
        Question q = question(ctx);
        answer(ctx, Map.of("lines", q.screen.contours(q.hole.strokes())));
    }

    private void aims(Context ctx) {
        Question q = question(ctx);
        AimField field = q.hole.aims(q.ball(), q.asked.units().lengths());
        answer(
                ctx,
                Map.of(
                        "lines",
                        q.screen.aims(field),
                        "words",
                        new AimTable(field, q.asked.units()).content().render()));
    }

    private void pair(Context ctx) {
        Question q = question(ctx);
        SolvedHole.Pair pair = q.pair();
        SolvedHole.Aimed one =
                q.hole.aimed(pair.ball(), pair.first().club(), pair.first().aim());
        SolvedHole.Aimed two =
                q.hole.aimed(pair.ball(), pair.second().club(), pair.second().aim());
        HolePicture picture =
                q.hole.picture(List.of(drawn(pair.ball(), pair.first(), one), drawn(pair.ball(), pair.second(), two)));
        PairPanel panel = new PairPanel(pair.first().club(), one, pair.second().club(), two, q.asked.units());
        answer(
                ctx,
                Map.of("over", q.screen.over(picture), "words", panel.content().render()));
    }

    private static HolePicture.Shot drawn(Place ball, SolvedHole.Meant meant, SolvedHole.Aimed aimed) {
        return new HolePicture.Shot(
                ball, aimed.aim(), meant.club(), "", aimed.finish().sample(), Optional.empty(), List.of());
    }

    /** How sure it is that the first of two beats the second: the page asks again until it is worked out. */
    private void chance(Context ctx) {
        Question q = question(ctx);
        Job<Double> job = plans.chance(q.job, q.hole, q.pair(), PlanQuery.text(ctx, "page", "chance"));
        AskedHole.answer(
                ctx, job, first -> ctx.contentType("text/plain; charset=utf-8").result(PairPanel.chance(first)));
    }

    private static void answer(Context ctx, Map<String, String> parts) {
        ctx.contentType("application/json").result(JsonText.of(parts));
    }
}
