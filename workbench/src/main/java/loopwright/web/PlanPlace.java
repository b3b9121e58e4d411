package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.li;
import static j2html.TagCreator.ol;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.action.Counting;
import loopwright.action.Jobs.Job;
import loopwright.action.Jobs.State;
import loopwright.action.PlanBench;
import loopwright.action.PlanChoice;
import loopwright.action.RoundPlan;
import loopwright.action.UserFault;
import loopwright.action.Workroom;

/** The plan of a round: what to change, hole by hole, and the score to expect. */
public final class PlanPlace implements Place {
    private final Workroom room;
    private final PlanBench plans;

    public PlanPlace(Workroom room, PlanBench plans) {
        this.room = room;
        this.plans = plans;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/plan", this::page);
        routes.post("/plan/forecast", this::foretell);
    }

    private void page(Context ctx) {
        Optional<PlanChoice> choice = PlanQuery.find(ctx, room.store());
        List<DomContent> content = new ArrayList<>();
        content.add(h1(Texts.say("plan.title")));
        content.add(Said.on(ctx));
        if (choice.isEmpty()) {
            content.add(p(Texts.say("plan.nothing")));
        } else {
            content.add(div(new PlanForm(room, choice.get(), "").form(), AnswerNav.list(choice.get()))
                    .withClass("beside"));
            content.add(
                    ctx.queryParam("target") == null
                            ? p(Texts.say("plan.start"))
                            : result(
                                    choice.get(),
                                    Gate.account(ctx)
                                            .map(a -> a.role().isCoach())
                                            .orElse(true)));
        }
        new Page("plan", Texts.say("plan.title")).with("job").answer(ctx, content.toArray(DomContent[]::new));
    }

    private DomContent result(PlanChoice choice, boolean coach) {
        Job<RoundPlan> job = plans.round(choice, choice.key());
        if (job.await(JobPlace.AT_ONCE_MILLIS) == State.FAILED) {
            throw job.findFailure().orElseThrow();
        }
        Optional<RoundPlan> plan = job.findResult();
        if (plan.isEmpty()) {
            return JobPlace.waiting(job, Texts.say("plan.working"));
        }
        Units units = Units.of(room);
        return div(
                        cautions(plan.get()),
                        new TargetPanel(plan.get(), units).lead(),
                        TargetPanel.standing(
                                room.store().records(), choice.player().id()),
                        deeper(choice),
                        new TodayPanel(plan.get().today(), units).section(),
                        div(decisions(plan.get(), choice, units), new ScorePanel(plan.get()).section())
                                .withClass("beside"),
                        new TargetPanel(plan.get(), units).sections(),
                        new HoleTable(plan.get(), choice, units).section(),
                        checked(plan.get()),
                        coach && choice.goal().counting().equals(Counting.STROKES) ? forecastForm(choice) : text(""))
                .withClass("result");
    }

    /** The ways to what takes longer and was not asked for. */
    private static DomContent deeper(PlanChoice choice) {
        PlanChoice.Goal goal = choice.goal();
        List<DomContent> out = new ArrayList<>();
        if (!goal.howSure()) {
            out.add(a(Texts.say("target.askSure"))
                    .withHref("/plan?" + choice.withGoal(goal.saidHowSure()).query()));
        }
        if (!goal.forTarget()) {
            out.add(a(Texts.say("target.askTarget"))
                    .withHref("/plan?" + choice.withGoal(goal.playedForTarget()).query()));
        }
        return p(each(out, link -> span(link))).withClass("steps");
    }

    /** What the plan foretells is kept, to be compared with the score: that is how the model is held to account. */
    private static DomContent forecastForm(PlanChoice choice) {
        return form(
                        p(Texts.say("forecast.means")),
                        PlanForm.field(
                                "forecast.day",
                                input().withType("date").withName("day").isRequired()),
                        button(Texts.say("forecast.keep")).withType("submit"))
                .withMethod("post")
                .withAction("/plan/forecast?" + choice.query())
                .withClass("sheet");
    }

    private void foretell(Context ctx) {
        PlanChoice choice = PlanQuery.get(ctx, room.store());
        String typed = String.valueOf(ctx.formParam("day"));
        LocalDate day;
        try {
            day = LocalDate.parse(typed);
        } catch (DateTimeParseException e) {
            throw new UserFault(Texts.say("lesson.noDay", typed), e);
        }
        plans.foretell(choice, day);
        Said.then(ctx, Texts.say("forecast.kept", day), "/plan?" + choice.query());
    }

    private static DomContent cautions(RoundPlan plan) {
        List<Integer> open = plan.unsurveyed();
        if (open.isEmpty()) {
            return text("");
        }
        String which = open.size() == plan.holes().size()
                ? Texts.say("plan.everyHole")
                : Texts.say("plan.holes", open.toString().replaceAll("[\\[\\]]", ""));
        return p(strong(Texts.say("plan.unsurveyed")), text(" " + Texts.say("plan.unsurveyedMeans", which)))
                .withClass("beware");
    }

    private static DomContent decisions(RoundPlan plan, PlanChoice choice, Units units) {
        if (plan.decisions().isEmpty()) {
            return section(h2(Texts.say("plan.change")), p(Texts.say("plan.noChange")));
        }
        return section(
                h2(Texts.say("plan.change")),
                p(Texts.say("plan.changeMeans")).withClass("note"),
                ol(each(
                                plan.decisions(),
                                d -> li(
                                        strong(Words.of("%+.2f", -d.cost())).withClass("gain"),
                                        a(Texts.say("plan.holeShot", d.hole(), d.shot()))
                                                .withHref(HoleTable.link(choice, d.hole())),
                                        text(": "
                                                + Words.aimed(
                                                        d.plan().club(),
                                                        d.plan().landmark(),
                                                        d.plan().offsetMetres(),
                                                        units)
                                                + Texts.say("plan.insteadOf")
                                                + Words.club(
                                                        d.plan().habit().club(),
                                                        d.plan().habit().offsetMetres(),
                                                        units)
                                                + "."))))
                        .withClass("decisions"));
    }

    private static DomContent checked(RoundPlan plan) {
        return p(Texts.say(
                        "plan.checked",
                        plan.simulated().rounds(),
                        Words.of("%.2f", plan.simulated().mean()),
                        Words.of("%.2f", plan.simulated().standardError()),
                        Words.of("%.2f", plan.bias()),
                        plan.searchLossInWords()))
                .withClass("note");
    }
}
