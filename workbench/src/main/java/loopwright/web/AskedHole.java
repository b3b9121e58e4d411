package loopwright.web;

import io.javalin.http.Context;
import java.util.function.Consumer;
import loopwright.action.Jobs.Job;
import loopwright.action.Jobs.State;
import loopwright.action.PlanBench;
import loopwright.action.PlanChoice;
import loopwright.action.SolvedHole;
import loopwright.action.UserFault;
import loopwright.action.Workroom;

/** The hole of a plan that an address names, and the units of whoever asks. */
record AskedHole(PlanChoice choice, int number, Units units) {
    private static final long PATIENCE_MILLIS = 30_000;
    private static final int STILL_WORKING = 202;
    private static final int NO_CONTENT = 204;

    static AskedHole of(Context ctx, Workroom room) {
        return new AskedHole(
                PlanQuery.get(ctx, room.store()),
                PlanQuery.whole("hole", PlanQuery.text(ctx, "hole", "1")),
                Units.of(room));
    }

    /** Its first answer or, if that is there, the full one. Questions about the hole that a page shows leave alone what it waits for. */
    Job<SolvedHole> job(Context ctx, PlanBench plans) {
        return plans.first(choice, number, "answers " + PlanQuery.text(ctx, "page", ctx.queryString()));
    }

    /** The hole, solved by now or soon. */
    static SolvedHole solved(Job<SolvedHole> job) {
        if (job.await(PATIENCE_MILLIS) == State.FAILED) {
            throw job.findFailure().orElseThrow();
        }
        return job.findResult().orElseThrow(() -> new UserFault(Texts.say("hole.late")));
    }

    /** Answers with what the work finds; while it goes on the page is told to ask again. */
    static <T> void answer(Context ctx, Job<T> job, Consumer<T> found) {
        if (job.await(PATIENCE_MILLIS) == State.FAILED) {
            throw job.findFailure().orElseThrow();
        }
        if (job.state() == State.CANCELLED) {
            ctx.status(NO_CONTENT); // the page has asked for something else since
            return;
        }
        job.findResult().ifPresentOrElse(found, () -> ctx.status(STILL_WORKING));
    }
}
