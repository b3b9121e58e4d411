package loopwright.web;

import static j2html.TagCreator.h1;
import static j2html.TagCreator.p;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.staticfiles.Location;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ThreadLocalRandom;
import loopwright.action.Forbidden;
import loopwright.action.Shelf;
import loopwright.action.UserFault;

/** Serves the places of the bench. */
public final class BenchServer implements AutoCloseable {
    /** Maps of whole counties are larger; they are for the command line. */
    private static final long LARGEST_UPLOAD_MB = 64;

    /** Of what is larger, so much is read before the answer. */
    private static final long READ_OF_TOO_LARGE_MB = 4 * LARGEST_UPLOAD_MB;

    /** No script, style, picture or connection but our own, and nobody may frame the pages. */
    private static final String POLICY =
            "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'self';"
                    + " frame-ancestors 'none'";

    private static final int BAD_REQUEST = 400;
    private static final int FORBIDDEN = 403;
    private static final int NOT_FOUND = 404;
    private static final int CONFLICT = 409;
    private static final int TOO_LARGE = 413;
    private static final int OUR_FAULT = 500;

    private final Javalin server;
    private final Path folder;
    private final Gate gate;

    /** {@code folder} is where details of our own faults are written. */
    public BenchServer(Path folder, Gate gate, List<? extends Place> places) {
        this.folder = folder;
        this.gate = gate;
        server = Javalin.create(config -> configure(config, places));
    }

    private void configure(JavalinConfig config, List<? extends Place> places) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.maxRequestSize = LARGEST_UPLOAD_MB << 20;
        config.jetty.multipartConfig.maxFileSize(LARGEST_UPLOAD_MB, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(LARGEST_UPLOAD_MB, SizeUnit.MB);
        config.staticFiles.add(files -> {
            files.hostedPath = "/static";
            files.directory = "/loopwright/web/static";
            files.location = Location.CLASSPATH;
        });
        config.routes.before(this::guard);
        config.routes.after(gate::log);
        config.routes.get(
                "/",
                ctx -> ctx.redirect(
                        Gate.account(ctx).map(a -> a.role().isCoach()).orElse(true) ? "/today" : "/rounds"));
        places.forEach(place -> place.routes(config.routes));
        config.routes.exception(UserFault.class, (e, ctx) -> say(ctx, BAD_REQUEST, message(e)));
        config.routes.exception(Shelf.Outdated.class, (e, ctx) -> say(ctx, CONFLICT, message(e)));
        config.routes.exception(Forbidden.class, (e, ctx) -> say(ctx, FORBIDDEN, message(e)));
        config.routes.exception(Exception.class, this::fault);
        config.routes.error(NOT_FOUND, ctx -> {
            if (ctx.result() == null || ctx.result().startsWith("Endpoint")) {
                say(ctx, NOT_FOUND, Texts.say("error.notFound"));
            }
        });
    }

    /** Headers for every answer; then the gate. */
    private void guard(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cache-Control", ctx.path().startsWith("/static/") ? "max-age=60" : "no-store");
        ctx.header("X-Frame-Options", "DENY");
        ctx.header("Permissions-Policy", "camera=(), microphone=(), geolocation=()");
        if (gate.doors().encrypted()) {
            ctx.header("Strict-Transport-Security", "max-age=31536000");
        }
        if (gate.isForeign(ctx)) {
            say(ctx, FORBIDDEN, Texts.say("error.foreign"));
            ctx.skipRemainingHandlers();
        } else if (ctx.req().getContentLengthLong() > LARGEST_UPLOAD_MB << 20) {
            readAway(ctx);
            say(ctx, TOO_LARGE, Texts.say("error.large", LARGEST_UPLOAD_MB));
            ctx.skipRemainingHandlers();
        } else if (gate.stops(ctx)) {
            ctx.skipRemainingHandlers();
        }
    }

    /** Who is still sending does not read an answer: what is not much too large is read and thrown away first. */
    private static void readAway(Context ctx) {
        try {
            ctx.req().getInputStream().skip(READ_OF_TOO_LARGE_MB << 20);
        } catch (IOException e) {
            // whoever sent it is gone, and the answer with him
        }
    }

    private static String message(Exception e) {
        return String.valueOf(e.getMessage());
    }

    /** A sentence as a page, or as bare text where a script asks. */
    static void say(Context ctx, int status, String sentence) {
        ctx.status(status);
        if (wantsPage(ctx)) {
            new Page("", Texts.say("error.title")).answer(ctx, h1(Texts.say("error.title")), p(sentence));
        } else {
            ctx.contentType("text/plain; charset=utf-8").result(sentence);
        }
    }

    static boolean wantsPage(Context ctx) {
        String accept = ctx.header("Accept");
        return accept != null && accept.contains("text/html");
    }

    /** Our own fault; a request that is gone by now (the bench ends, a page was left) has nobody to tell it to. */
    private void fault(Exception e, Context ctx) {
        try {
            tell(e, ctx);
        } catch (IllegalStateException | NullPointerException gone) {
            e.addSuppressed(gone);
        }
    }

    private void tell(Exception e, Context ctx) {
        String id =
                String.format(Locale.ROOT, "%08x", ThreadLocalRandom.current().nextInt());
        StringWriter details = new StringWriter();
        e.printStackTrace(new PrintWriter(details));
        Path log = folder.resolve("faults.log");
        try {
            Files.writeString(
                    log,
                    "fault " + id + " at " + ctx.path() + "\n" + details + "\n",
                    StandardCharsets.UTF_8,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
        } catch (IOException cannotLog) {
            e.addSuppressed(cannotLog);
        }
        say(ctx, OUR_FAULT, Texts.say("error.ours", id, log));
    }

    /** Starts; returns the port, which is a free one if 0 is asked for. */
    public int start(int port) {
        try {
            server.start(gate.doors().host(), port);
        } catch (io.javalin.util.JavalinBindException e) {
            throw new UserFault("Port " + port + " is taken; say another with --port, or 0 for any free one.", e);
        }
        return server.port();
    }

    @Override
    public void close() {
        server.stop();
    }
}
