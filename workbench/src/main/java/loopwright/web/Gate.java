package loopwright.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import loopwright.action.AccessBook;
import loopwright.action.Account;
import loopwright.action.Visits;

/**
 * Lets requests in: those that another site made a browser send are refused; where the bench is open to others, those
 * without a session are sent to the log-in, and those a role may not make are refused. Notes every change.
 */
public final class Gate {
    private static final Set<String> OWN_NAMES = Set.of("127.0.0.1", "localhost", "[::1]");
    private static final String ACCOUNT = "account";
    private static final int UNAUTHORIZED = 401;
    private static final int FORBIDDEN = 403;
    private static final int FIRST_FAILURE = 400;

    private final Doors doors;
    private final Visits visits;
    private final AccessBook book;
    private final Clock clock;
    private final Sessions sessions;

    public Gate(Doors doors, Visits visits, AccessBook book, Clock clock) {
        this.doors = doors;
        this.visits = visits;
        this.book = book;
        this.clock = clock;
        this.sessions = new Sessions(clock);
    }

    Doors doors() {
        return doors;
    }

    Sessions sessions() {
        return sessions;
    }

    /** Who sent a request; nobody where no log-in is needed. */
    static Optional<Account> account(Context ctx) {
        return Optional.ofNullable(ctx.attribute(ACCOUNT));
    }

    /** What is wrong with a request before anybody is asked who he is, or nothing. */
    boolean isForeign(Context ctx) {
        String host = String.valueOf(ctx.header("Host"));
        String origin = ctx.header("Origin");
        boolean changes = !ctx.method().equals(HandlerType.GET) && !ctx.method().equals(HandlerType.HEAD);
        String own = own(ctx);
        boolean otherName = doors.address().isPresent()
                ? !own.endsWith("//" + host)
                : !doors.locked() && !OWN_NAMES.contains(host.replaceFirst(":\\d+$", ""));
        boolean otherSite = origin == null ? doors.locked() && changes : !origin.equals(own);
        return otherName || otherSite;
    }

    /** The origin of the bench as this request sees it. */
    String own(Context ctx) {
        return doors.address().map(Gate::origin).orElse("http://" + ctx.header("Host"));
    }

    private static String origin(URI address) {
        return address.getScheme() + "://" + address.getAuthority();
    }

    /** Lets a request in, or answers it; true if it was answered. */
    boolean stops(Context ctx) {
        visits.end();
        if (!doors.locked() || ctx.path().startsWith("/static/")) {
            return false;
        }
        Optional<Account> account = Optional.ofNullable(ctx.cookie(cookieName()))
                .flatMap(sessions::findAccount)
                .flatMap(book::find);
        account.ifPresent(a -> {
            ctx.attribute(ACCOUNT, a);
            visits.begin(a);
        });
        Right right = Right.TABLE.get(ctx.method() + " " + ctx.path());
        if (right == Right.PUBLIC) {
            return false;
        }
        if (account.isEmpty()) {
            askToLogIn(ctx);
            return true;
        }
        if (right == null || !right.allows(account.get().role())) {
            BenchServer.say(ctx, FORBIDDEN, Texts.say("error.forbidden"));
            return true;
        }
        return false;
    }

    private static void askToLogIn(Context ctx) {
        if (ctx.method().equals(HandlerType.GET) && BenchServer.wantsPage(ctx)) {
            String query = ctx.queryString() == null ? "" : "?" + ctx.queryString();
            ctx.redirect("/login?to=" + URLEncoder.encode(ctx.path() + query, StandardCharsets.UTF_8));
        } else {
            BenchServer.say(ctx, UNAUTHORIZED, Texts.say("error.logIn"));
        }
    }

    /** Notes a change that was made. */
    void log(Context ctx) {
        if (!ctx.method().equals(HandlerType.POST)
                || ctx.path().startsWith("/jobs/")
                || ctx.statusCode() >= FIRST_FAILURE) {
            return;
        }
        String subject = Optional.ofNullable(ctx.queryParam("player"))
                .or(() -> form(ctx, "player"))
                .or(() -> form(ctx, "course"))
                .or(() -> form(ctx, "what"))
                .orElse("");
        book.log(new AccessBook.Change(
                clock.instant(),
                account(ctx).map(Account::name).orElse(Texts.say("people.here")),
                ctx.path(),
                subject.substring(0, Math.min(80, subject.length())),
                ctx.statusCode()));
    }

    private static Optional<String> form(Context ctx, String name) {
        boolean isForm =
                ctx.contentType() != null && !String.valueOf(ctx.contentType()).contains("json");
        return isForm ? Optional.ofNullable(ctx.formParam(name)) : Optional.empty();
    }

    private String cookieName() {
        return doors.encrypted() ? "__Host-bench" : "bench";
    }

    /** Begins a session under a new token: one that somebody else planted is worth nothing. */
    void begin(Context ctx, Account account) {
        end(ctx);
        set(ctx, sessions.begin(account.id()), (int) Sessions.IDLE.toSeconds());
    }

    void end(Context ctx) {
        String token = ctx.cookie(cookieName());
        if (token != null) {
            sessions.end(token);
        }
        set(ctx, "", 0);
    }

    private void set(Context ctx, String token, int seconds) {
        ctx.cookie(new Cookie(cookieName(), token, "/", seconds, doors.encrypted(), true, null, SameSite.LAX));
    }

    /** Whence a request comes: behind a proxy, what the proxy says. */
    String place(Context ctx) {
        String forwarded = ctx.header("X-Forwarded-For");
        return doors.address().isPresent() && forwarded != null
                ? forwarded.substring(forwarded.lastIndexOf(',') + 1).strip()
                : ctx.ip();
    }
}
