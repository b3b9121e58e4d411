package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.div;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.span;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loopwright.action.HolePicture;
import loopwright.action.HoleScreens;
import loopwright.action.HoleScreens.Screen;
import loopwright.action.Jobs.Job;
import loopwright.action.Jobs.State;
import loopwright.action.PlanBench;
import loopwright.action.PlanChoice;
import loopwright.action.Remembered;
import loopwright.action.SolvedHole;
import loopwright.action.Workroom;
import loopwright.geo.Place;
import loopwright.ground.Surface;

/** One hole of a plan: the chart, what can be done from any spot, and the plan shot by shot. */
public final class HolePlace implements loopwright.web.Place {
    /** How long a page waits for a first answer before it shows the progress of the work instead. */
    private static final long FIRST_MILLIS = 1_200;

    /** An answer takes some 8 kB; a hand that drags comes by the same aims again. */
    private static final int KEPT_AIMS = 1_000;

    private final Remembered<Aim, String> aims = new Remembered<>(KEPT_AIMS);
    private final Workroom room;
    private final PlanBench plans;
    private final HoleScreens screens;
    private final HoleGrounds grounds;

    public HolePlace(Workroom room, PlanBench plans, HoleScreens screens) {
        this.room = room;
        this.plans = plans;
        this.screens = screens;
        this.grounds = new HoleGrounds(room, screens);
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/plan/hole", this::page);
        routes.get("/plan/hole/part", this::part);
        routes.get("/plan/hole/ground", grounds::answer);
        routes.get("/plan/hole/spot", this::spot);
        routes.get("/plan/hole/aim", this::aim);
        routes.get("/plan/hole/location", this::location);
    }

    /** {@code hole} is the key of the work that solved it. */
    private record Aim(String hole, Place ball, String club, Place aim, Units units) {}

    private AskedHole asked(Context ctx) {
        return AskedHole.of(ctx, room);
    }

    private void page(Context ctx) {
        AskedHole asked = asked(ctx);
        Job<SolvedHole> job =
                plans.first(asked.choice(), asked.number(), PlanQuery.text(ctx, "page", "hole " + ctx.queryString()));
        if (job.await(FIRST_MILLIS) == State.FAILED) {
            throw job.findFailure().orElseThrow();
        }
        String title = Texts.say("hole.title", asked.number());
        DomContent content = job.findResult()
                .<DomContent>map(hole -> content(asked, hole))
                .orElseGet(() -> div(around(asked), JobPlace.waiting(job, Texts.say("hole.working")), form(asked)));
        new Page("plan", title)
                .with("job")
                .with("hole")
                .answer(ctx, h1(title), div(content).withId("part").attr("aria-live", "off"));
    }

    /** The hole as it changes under the hand: {@code first} asks for a first, coarser answer. */
    private void part(Context ctx) {
        AskedHole asked = asked(ctx);
        boolean first = PlanQuery.text(ctx, "first", "").equals("yes");
        String page = PlanQuery.text(ctx, "page", "part");
        if (first) {
            plans.leaveOthers(asked.choice(), asked.number(), page);
        }
        Job<SolvedHole> job = first
                ? plans.first(asked.choice(), asked.number(), page)
                : plans.hole(asked.choice(), asked.number(), page);
        AskedHole.answer(ctx, job, hole -> ctx.html(content(asked, hole).render()));
    }

    private DomContent content(AskedHole asked, SolvedHole hole) {
        return div(around(asked), chart(asked, hole), form(asked)).withClass("part");
    }

    private DomContent form(AskedHole asked) {
        return new PlanForm(room, asked.choice(), Integer.toString(asked.number())).form();
    }

    /** The way to the round and to the holes before and after. */
    private DomContent around(AskedHole asked) {
        List<Integer> holes =
                room
                        .course(
                                asked.choice().course().id(),
                                asked.choice().course().version())
                        .holes()
                        .stream()
                        .map(h -> h.number())
                        .toList();
        int at = holes.indexOf(asked.number());
        return nav(
                        a(Texts.say("hole.round"))
                                .withHref("/plan?" + asked.choice().query()),
                        step(asked, at > 0 ? holes.get(at - 1) : 0, "hole.before"),
                        step(asked, at >= 0 && at + 1 < holes.size() ? holes.get(at + 1) : 0, "hole.after"))
                .withClass("steps")
                .attr("aria-label", Texts.say("hole.steps"));
    }

    private static DomContent step(AskedHole asked, int hole, String words) {
        return hole == 0 ? span() : a(Texts.say(words, hole)).withHref(HoleTable.link(asked.choice(), hole));
    }

    private DomContent chart(AskedHole asked, SolvedHole hole) {
        List<HolePicture.Shot> shots =
                hole.plan().shots().stream().map(SolvedHole::drawn).toList();
        HolePicture picture = hole.picture(shots);
        Screen screen = screens.screen(picture, asked.units().lengths());
        HolePanel panel = new HolePanel(hole, asked.units());
        HoleKnobs knobs = new HoleKnobs(asked.choice(), asked.number(), asked.units());
        return div(
                        div(
                                        rawHtml(new HoleSvg(screen, hole, asked.units(), grounds.address(asked))
                                                .svg(picture)),
                                        p(Texts.say("hole.behind"))
                                                .withClass("behind-words")
                                                .attr("aria-hidden", "true"))
                                .withClass("chart")
                                .attr("data-query", asked.choice().query() + "&hole=" + asked.number())
                                .attr("data-first", Boolean.toString(hole.isFirst())),
                        div(
                                        panel.summary(),
                                        knobs.content(hole, screen),
                                        div(panel.walk(screen)).withId("answer").attr("aria-live", "polite"),
                                        div().withId("aim-table"))
                                .withClass("words"))
                .withClass("hole");
    }

    private SolvedHole solved(Context ctx, AskedHole asked) {
        return AskedHole.solved(asked.job(ctx, plans));
    }

    private void spot(Context ctx) {
        AskedHole asked = asked(ctx);
        SolvedHole hole = solved(ctx, asked);
        Screen screen = screens.screen(hole.picture(List.of()), asked.units().lengths());
        Place ball = screen.placeAt(PlanQuery.decimal(ctx, "x"), PlanQuery.decimal(ctx, "y"));
        HolePanel panel = new HolePanel(hole, asked.units());
        Surface lie = hole.lieAt(ball);
        if (lie == Surface.GREEN || !lie.isPlayable()) {
            answer(ctx, screen, hole, Optional.empty(), panel.unplayable(ball, lie), Map.of());
            return;
        }
        SolvedHole.Spot spot = hole.at(ball);
        answer(
                ctx,
                screen,
                hole,
                Optional.of(SolvedHole.drawn(spot.best())),
                panel.spot(spot, screen),
                Map.of("club", spot.best().club(), "aim", screen.at(spot.best().aim())));
    }

    private void aim(Context ctx) {
        AskedHole asked = asked(ctx);
        Job<SolvedHole> job = asked.job(ctx, plans);
        SolvedHole hole = AskedHole.solved(job);
        Screen screen = screens.screen(hole.picture(List.of()), asked.units().lengths());
        Place ball = screen.placeAt(PlanQuery.decimal(ctx, "x"), PlanQuery.decimal(ctx, "y"));
        Place pointed = screen.placeAt(PlanQuery.decimal(ctx, "ax"), PlanQuery.decimal(ctx, "ay"));
        String club = PlanQuery.text(ctx, "club", "");
        Place towards = hole.aimToward(ball, club, pointed);
        ctx.contentType("application/json")
                .result(aims.get(
                        new Aim(job.key(), ball, club, towards, asked.units()),
                        () -> aimed(asked.units(), hole, screen, ball, club, towards)));
    }

    /** What the page shows of an aim. */
    private static String aimed(Units units, SolvedHole hole, Screen screen, Place ball, String club, Place towards) {
        SolvedHole.Aimed aimed = hole.aimed(ball, club, towards);
        SolvedHole.Spot spot = hole.at(ball);
        HolePicture.Shot shot =
                new HolePicture.Shot(ball, aimed.aim(), club, "", aimed.finish().sample(), Optional.empty(), List.of());
        return json(
                screen,
                hole,
                Optional.of(shot),
                new HolePanel(hole, units).aimed(spot, club, aimed, screen),
                Map.of("club", club, "aim", screen.at(aimed.aim())));
    }

    private static void answer(
            Context ctx,
            Screen screen,
            SolvedHole hole,
            Optional<HolePicture.Shot> shot,
            DomContent words,
            Map<String, Object> more) {
        ctx.contentType("application/json").result(json(screen, hole, shot, words, more));
    }

    private static String json(
            Screen screen,
            SolvedHole hole,
            Optional<HolePicture.Shot> shot,
            DomContent words,
            Map<String, Object> more) {
        Map<String, Object> out = new LinkedHashMap<>(more);
        out.put("over", screen.over(hole.picture(shot.stream().toList())));
        out.put("words", words.render());
        return JsonText.of(out);
    }

    /** Where the hole is cut if it is put at a point of the chart: the address that solves it so. */
    private void location(Context ctx) {
        AskedHole asked = asked(ctx);
        SolvedHole hole = solved(ctx, asked);
        Screen screen = screens.screen(hole.picture(List.of()), asked.units().lengths());
        Place place = screen.placeAt(PlanQuery.decimal(ctx, "x"), PlanQuery.decimal(ctx, "y"));
        String text = hole.locationAt(place);
        List<String> kept = asked.choice().holeLocations().stream()
                .filter(l -> !l.replace(" ", "").startsWith(asked.number() + ":"))
                .toList();
        List<String> all = new java.util.ArrayList<>(kept);
        all.add(text);
        PlanChoice moved = asked.choice().withHoleLocations(all);
        ctx.contentType("text/plain; charset=utf-8").result(HoleTable.link(moved, asked.number()));
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
