package loopwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import loopwright.action.HolePicture;
import loopwright.action.HoleScreens;
import loopwright.action.HoleScreens.Screen;
import loopwright.action.Jobs.Job;
import loopwright.action.Jobs.State;
import loopwright.action.PlanBench;
import loopwright.action.PlanChoice;
import loopwright.action.RoundPlan;
import loopwright.action.Shelf;
import loopwright.action.SolvedHole;
import loopwright.action.SurveyCourse;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.course.Course;
import loopwright.course.CourseMap;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.geo.LatLon;
import loopwright.geo.Place;
import loopwright.ground.Surface;
import loopwright.player.Club;
import loopwright.player.ClubTable;

/** The chart on which strokes are tapped, and what lies where one was tapped. */
public final class EntryPlace implements loopwright.web.Place {

    private static final long PATIENCE_MILLIS = 60_000;

    private final Workroom room;
    private final PlanBench plans;
    private final HoleScreens screens;

    public EntryPlace(Workroom room, PlanBench plans, HoleScreens screens) {
        this.room = room;
        this.plans = plans;
        this.screens = screens;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/rounds/chart", this::chart);
        routes.get("/rounds/place", this::place);
        routes.get("/rounds/options", this::options);
    }

    private record Asked(Course course, Hole hole, Place tee, Screen screen) {}

    private Asked asked(Context ctx) {
        Shelf.Entry entry = PlanQuery.entry(room.store().courses(), ctx.queryParam("course"), "course")
                .orElseThrow(() -> new UserFault(Texts.say("course.none")));
        Course course = room.course(entry.id(), entry.version());
        Hole hole = SurveyCourse.getHole(course, PlanQuery.whole("hole", PlanQuery.text(ctx, "hole", "1")));
        TeeSet tees = course.findTeeSet(PlanQuery.text(ctx, "tees", "middle"))
                .orElse(course.teeSets().get(0));
        Place tee = tees.getPlace(hole.number()).place();
        Screen screen = screens.screen(
                HolePicture.ofGround(course, hole, tees.name(), tee),
                Units.of(room).lengths());
        return new Asked(course, hole, tee, screen);
    }

    private void chart(Context ctx) {
        Asked asked = asked(ctx);
        ctx.contentType("image/svg+xml")
                .result(String.format(
                                Locale.ROOT,
                                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" role=\"img\""
                                        + " aria-label=\"%s\">",
                                asked.screen().width(),
                                asked.screen().height(),
                                HoleSvg.escaped(
                                        Texts.say("entry.chart", asked.hole().number())))
                        + asked.screen().ground()
                        + "</svg>");
    }

    /**
     * The stroke played from a tapped point: its place on the earth, its lie, and how far it is to the hole. The first
     * stroke of a hole is played from the tee, however roughly it was tapped.
     */
    private void place(Context ctx) {
        Asked asked = asked(ctx);
        boolean first = PlanQuery.text(ctx, "first", "").equals("yes");
        Place place =
                first ? asked.tee() : asked.screen().placeAt(PlanQuery.decimal(ctx, "x"), PlanQuery.decimal(ctx, "y"));
        double[] at = asked.screen().at(place);
        Surface surface = new CourseMap(asked.course(), asked.hole()).surfaceAt(place);
        double metres = place.distanceTo(asked.hole().holeLocation());
        Units units = Units.of(room);
        LatLon where = SurveyCourse.frameOf(asked.course()).toLatLon(place);
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("x", Math.round(10 * at[0]) / 10.0);
        out.put("y", Math.round(10 * at[1]) / 10.0);
        out.put("lat", Words.of("%.6f", where.latitudeDegrees()));
        out.put("lon", Words.of("%.6f", where.longitudeDegrees()));
        out.put("lie", lie(surface));
        out.put("distance", Math.round(surface == Surface.GREEN ? metres / 0.3048 : units.number(metres)));
        ctx.contentType("application/json").result(JsonText.of(out));
    }

    /**
     * What the engine holds of a stroke of a playing lesson, asked after the player has said what he means: advice, which
     * belongs into a lesson and never into a round (Rule 4.3).
     */
    private void options(Context ctx) {
        Asked asked = asked(ctx);
        PlanChoice choice = PlanQuery.get(ctx, room.store());
        Job<SolvedHole> job = plans.hole(
                choice, asked.hole().number(), "lesson " + choice.player().id());
        if (job.await(PATIENCE_MILLIS) == State.FAILED) {
            throw job.findFailure().orElseThrow();
        }
        SolvedHole hole = job.findResult().orElseThrow(() -> new UserFault(Texts.say("hole.late")));
        Place tapped = asked.screen().placeAt(PlanQuery.decimal(ctx, "x"), PlanQuery.decimal(ctx, "y"));
        Place ball = PlanQuery.text(ctx, "lie", "").equals("tee") ? asked.tee() : tapped;
        Place aim = asked.screen().placeAt(PlanQuery.decimal(ctx, "ax"), PlanQuery.decimal(ctx, "ay"));
        SolvedHole.Spot spot = hole.at(ball);
        String typed = PlanQuery.text(ctx, "club", "");
        String name = ClubTable.find(typed).map(Club::name).orElse(typed);
        String club = spot.ways().stream()
                .map(RoundPlan.Alternative::club)
                .filter(c -> c.equalsIgnoreCase(name) || c.equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new UserFault(Texts.say(
                        "lesson.club",
                        typed,
                        spot.ways().stream().map(RoundPlan.Alternative::club).collect(Collectors.joining(", ")))));
        Units units = Units.of(room);
        ctx.html(new HolePanel(hole, units)
                .meant(spot, club, hole.aimed(ball, club, aim))
                .render());
    }

    /** In the words of a table of rounds: deep rough is rough, the fringe fairway, woods mostly recovery. */
    private static String lie(Surface surface) {
        return switch (surface) {
            case TEE -> "tee";
            case GREEN -> "green";
            case FAIRWAY -> "fairway";
            case BUNKER -> "sand";
            case WOODS -> "recovery";
            default -> "rough";
        };
    }
}
