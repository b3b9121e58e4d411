package loopwright.web;

import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.select;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.textarea;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import loopwright.action.Jobs.Job;
import loopwright.action.Jobs.State;
import loopwright.action.PlanAnswers;
import loopwright.action.PlanAnswers.TeesWish;
import loopwright.action.PlanBench;
import loopwright.action.PlanChoice;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.ground.Surface;
import loopwright.units.Distance;

/** What lies round a plan, each answer a page with an address of its own: tees, state of play, what to expect, safety, wedges, short game. */
public final class AnswerPlace implements Place {
    private static final double MOST_MARKER_METRES = 40 * Distance.METRES_PER_YARD;

    private final Workroom room;
    private final PlanBench plans;
    private final PlanAnswers answers;

    public AnswerPlace(Workroom room, PlanBench plans, PlanAnswers answers) {
        this.room = room;
        this.plans = plans;
        this.answers = answers;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/plan/tees", this::tees);
        routes.get("/plan/state", this::state);
        routes.get("/plan/expect", this::expect);
        routes.get("/plan/safety", this::safety);
        routes.get("/plan/wedges", this::wedges);
        routes.get("/plan/short", this::shortGame);
    }

    private Units units() {
        return Units.of(room);
    }

    private void tees(Context ctx) {
        PlanChoice choice = PlanQuery.get(ctx, room.store());
        TeesWish wish = wish(ctx);
        page(
                ctx,
                "tees",
                choice,
                wishes(ctx),
                () -> answers.tees(choice, wish),
                a -> new TeesPanel(a, choice, units()).content());
    }

    private TeesWish wish(Context ctx) {
        String typed = PlanQuery.text(ctx, "markers", "");
        double markers = typed.isEmpty() ? 0 : units().metres(PlanQuery.decimal(ctx, "markers"));
        if (!(markers >= 0 && markers <= MOST_MARKER_METRES)) {
            throw new UserFault(Texts.say("tees.markersFar", typed, units().length(MOST_MARKER_METRES)));
        }
        String partner = PlanQuery.text(ctx, "partner", "");
        return new TeesWish(
                PlanQuery.list(ctx, "mixed"),
                markers,
                PlanQuery.text(ctx, "winter", "").equals("yes"),
                partner.isEmpty()
                        ? Optional.empty()
                        : PlanQuery.entry(room.store().players(), partner, "player"),
                false);
    }

    private DomContent wishes(Context ctx) {
        String partner = PlanQuery.text(ctx, "partner", "");
        List<Shelf.Entry> players = room.store().players().list();
        return div(
                        label(
                                span(Texts.say("tees.markers", units().unit())),
                                input().withType("text")
                                        .withName("markers")
                                        .withValue(PlanQuery.text(ctx, "markers", ""))
                                        .attr("inputmode", "decimal")),
                        PlanForm.field(
                                "tees.mixed",
                                textarea(String.join("\n", PlanQuery.list(ctx, "mixed")))
                                        .withName("mixed")
                                        .withRows("2")),
                        PlanForm.field(
                                "tees.partner",
                                select(
                                                option(Texts.say("tees.alone")).withValue(""),
                                                each(
                                                        players,
                                                        e -> option(e.name())
                                                                .withValue(e.id())
                                                                .withCondSelected(e.id().equals(partner))))
                                        .withName("partner")),
                        label(
                                        input().withType("checkbox")
                                                .withName("winter")
                                                .withValue("yes")
                                                .withCondChecked(PlanQuery.text(ctx, "winter", "")
                                                        .equals("yes")),
                                        span(Texts.say("tees.winter")))
                                .withClass("tick"))
                .withClass("fields");
    }

    private void state(Context ctx) {
        PlanChoice asked = PlanQuery.get(ctx, room.store());
        PlanChoice choice = asked.withGoal(asked.goal().playedForTarget());
        page(
                ctx,
                "state",
                choice,
                span(),
                () -> plans.round(choice, choice.key()),
                plan -> div(
                        TargetPanel.standing(
                                room.store().records(), choice.player().id()),
                        new StatePanel(plan, plan.stateOfPlay().orElseThrow(), units()).content()));
    }

    private void expect(Context ctx) {
        PlanChoice choice = PlanQuery.get(ctx, room.store());
        page(ctx, "expect", choice, span(), () -> answers.expect(choice), e -> new ExpectPanel(e, units()).content());
    }

    private void safety(Context ctx) {
        PlanChoice choice = PlanQuery.get(ctx, room.store());
        page(
                ctx,
                "safety",
                choice,
                span(),
                () -> plans.round(choice, choice.key()),
                plan -> new SafetyPanel(plan, choice, units()).content());
    }

    private void wedges(Context ctx) {
        PlanChoice choice = PlanQuery.get(ctx, room.store());
        boolean rough = PlanQuery.text(ctx, "lie", "").equals("rough");
        DomContent lie = div(PlanForm.field(
                        "wedges.lie",
                        select(
                                        option(Texts.say("lie.FAIRWAY")).withValue("fairway"),
                                        option(Texts.say("lie.ROUGH"))
                                                .withValue("rough")
                                                .withCondSelected(rough))
                                .withName("lie")))
                .withClass("fields");
        page(
                ctx,
                "wedges",
                choice,
                lie,
                () -> answers.wedges(choice, rough ? Surface.ROUGH : Surface.FAIRWAY, units().lengths()),
                table -> new WedgePanel(table, units()).content());
    }

    private void shortGame(Context ctx) {
        PlanChoice choice = PlanQuery.get(ctx, room.store());
        page(
                ctx,
                "short",
                choice,
                span(),
                () -> answers.shortGame(choice),
                table -> new ShortGamePanel(table, units()).content());
    }

    /** Nothing is worked out until a target was said, as for a plan. */
    private <T> void page(
            Context ctx,
            String answer,
            PlanChoice choice,
            DomContent more,
            java.util.function.Supplier<Job<T>> work,
            Function<T, DomContent> show) {
        boolean asked = ctx.queryParam("target") != null;
        String title = Texts.say("answers." + answer);
        List<DomContent> content = new ArrayList<>();
        content.add(h1(title));
        content.add(AnswerNav.line(answer, choice));
        content.add(p(Texts.say("answers." + answer + ".means")).withClass("note"));
        DomContent form =
                new PlanForm(room, choice, "").at("/plan/" + answer, more).form();
        content.add(asked ? details(summary(about(choice)), form) : form);
        if (asked) {
            content.add(result(work.get(), show));
        }
        new Page("plan", title).with("job").answer(ctx, content.toArray(DomContent[]::new));
    }

    private String about(PlanChoice choice) {
        return Texts.say(
                "answers.about",
                choice.player().name(),
                choice.course().name(),
                choice.tees(),
                choice.goal().counting().words(choice.goal().target()),
                new DayFields(choice.day(), units()).words());
    }

    private static <T> DomContent result(Job<T> job, Function<T, DomContent> show) {
        if (job.await(JobPlace.AT_ONCE_MILLIS) == State.FAILED) {
            throw job.findFailure().orElseThrow();
        }
        return job.findResult().map(show).orElseGet(() -> JobPlace.waiting(job, Texts.say("answers.working")));
    }
}
