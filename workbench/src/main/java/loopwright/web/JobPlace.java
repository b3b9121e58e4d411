package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.p;
import static j2html.TagCreator.progress;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import j2html.tags.DomContent;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import loopwright.action.JobBoard;
import loopwright.action.Jobs.Job;
import loopwright.action.Jobs.State;

/** Tells pages how far their background work is, and cancels it. */
public final class JobPlace implements Place {
    /** How long a page waits for work that may be over at once. */
    static final long AT_ONCE_MILLIS = 150;

    private final JobBoard board;

    public JobPlace(JobBoard board) {
        this.board = board;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.sse("/jobs/events", this::follow);
        routes.post("/jobs/cancel", this::cancel);
    }

    private void follow(SseClient client) {
        String key = client.ctx().queryParam("key");
        Job<?> job = board.get(key == null ? "" : key);
        client.keepAlive();
        Runnable tell = () -> tell(client, job);
        job.onChange(tell);
        client.onClose(() -> job.forget(tell));
        tell.run();
    }

    private static void tell(SseClient client, Job<?> job) {
        synchronized (client) {
            if (client.terminated()) {
                return;
            }
            State state = job.state();
            client.sendEvent("state", state.name() + " " + job.done() + " " + job.total());
            if (state.over()) {
                client.close();
            }
        }
    }

    private void cancel(Context ctx) {
        String key = ctx.formParam("key");
        board.get(key == null ? "" : key).cancel();
        ctx.status(204);
    }

    /** The place holder for work under way: the page's script follows it and loads the page again when it is over. */
    static DomContent waiting(Job<?> job, String words) {
        String key = URLEncoder.encode(job.key(), StandardCharsets.UTF_8);
        return div(
                        p(words).attr("role", "status"),
                        progress().withMax("100").attr("aria-label", words),
                        button(Texts.say("job.cancel")).withType("button").withClass("quiet"))
                .withClass("job")
                .attr("data-key", job.key())
                .attr("data-events", "/jobs/events?key=" + key)
                .attr("data-stopped", Texts.say("job.stopped"));
    }
}
