package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.text;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import j2html.tags.DomContent;
import java.util.Locale;
import java.util.Optional;
import loopwright.action.AccessBook.Invitation;
import loopwright.action.Account;
import loopwright.action.Accounts;
import loopwright.action.Attempts;
import loopwright.action.UserFault;
import loopwright.action.Workroom;

/** Logging in and out, joining by an invitation, and one's own account. */
public final class LoginPlace implements Place {
    private static final int TOO_MANY = 429;
    private static final int UNAUTHORIZED = 401;

    private final Gate gate;
    private final Accounts accounts;
    private final Attempts attempts;
    private final Workroom room;

    public LoginPlace(Gate gate, Accounts accounts, Attempts attempts, Workroom room) {
        this.gate = gate;
        this.accounts = accounts;
        this.attempts = attempts;
        this.room = room;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/login", ctx -> page(ctx, text("")));
        routes.post("/login", this::logIn);
        routes.post("/logout", this::logOut);
        routes.get("/join", this::invited);
        routes.post("/join", this::join);
        routes.get("/account", this::account);
        routes.post("/account/password", this::password);
    }

    private static void page(Context ctx, DomContent trouble) {
        new Page("", Texts.say("login.title"))
                .answer(
                        ctx,
                        h1(Texts.say("login.title")),
                        trouble,
                        form(
                                        hidden("to", own(ctx.queryParam("to"), ctx.formParam("to"))),
                                        PlanForm.field("login.name", line("name", "username")),
                                        PlanForm.field("login.password", secret("password", "current-password")),
                                        button(Texts.say("login.in")).withType("submit"))
                                .withMethod("post")
                                .withAction("/login")
                                .withClass("sheet narrow"));
    }

    private static DomContent line(String name, String autocomplete) {
        return input().withType("text")
                .withName(name)
                .withMaxlength("80")
                .isRequired()
                .attr("autocomplete", autocomplete);
    }

    private static DomContent secret(String name, String autocomplete) {
        return input().withType("password")
                .withName(name)
                .withMaxlength("200")
                .isRequired()
                .attr("autocomplete", autocomplete);
    }

    private static DomContent hidden(String name, String value) {
        return input().withType("hidden").withName(name).withValue(value);
    }

    /** Where to go afterwards: a page of this bench, or its first. */
    private static String own(@org.jspecify.annotations.Nullable String... asked) {
        for (String to : asked) {
            if (to != null && to.matches("/[\\w?&=%:;,.+*@'()/-]{0,1000}") && !to.startsWith("//")) {
                return to;
            }
        }
        return "/";
    }

    private static String param(Context ctx, String name) {
        return Optional.ofNullable(ctx.formParam(name)).orElse("");
    }

    private void logIn(Context ctx) {
        String name = param(ctx, "name");
        String byName = "name " + name.strip().toLowerCase(Locale.ROOT);
        String byPlace = "place " + gate.place(ctx);
        if (!attempts.mayTry(byName) || !attempts.mayTry(byPlace)) {
            ctx.status(TOO_MANY);
            page(ctx, p(Texts.say("login.wait", Attempts.SPAN.toMinutes())).withClass("beware"));
            return;
        }
        Optional<Account> account = accounts.check(name, param(ctx, "password"));
        if (account.isEmpty()) {
            attempts.failed(byName);
            attempts.failed(byPlace);
            ctx.status(UNAUTHORIZED);
            page(ctx, p(Texts.say("login.wrong")).withClass("beware"));
            return;
        }
        attempts.succeeded(byName);
        gate.begin(ctx, account.get());
        ctx.redirect(own(ctx.formParam("to")), HttpStatus.SEE_OTHER);
    }

    private void logOut(Context ctx) {
        gate.end(ctx);
        ctx.redirect("/login", HttpStatus.SEE_OTHER);
    }

    private void invited(Context ctx) {
        String token = PlanQuery.text(ctx, "token", "");
        Optional<Invitation> invitation = accounts.findInvitation(token);
        if (invitation.isEmpty()) {
            throw new UserFault(Texts.say("join.expired"));
        }
        new Page("", Texts.say("join.title"))
                .answer(
                        ctx,
                        h1(Texts.say("join.title")),
                        p(Texts.say(
                                "join.means",
                                Texts.say("role." + invitation.get().role()))),
                        form(
                                        hidden("token", token),
                                        PlanForm.field("login.name", line("name", "username")),
                                        PlanForm.field("login.newPassword", secret("password", "new-password")),
                                        button(Texts.say("join.make")).withType("submit"))
                                .withMethod("post")
                                .withAction("/join")
                                .withClass("sheet narrow"));
    }

    private void join(Context ctx) {
        Account account = accounts.join(param(ctx, "token"), param(ctx, "name"), param(ctx, "password"));
        gate.begin(ctx, account);
        ctx.redirect("/", HttpStatus.SEE_OTHER);
    }

    private void account(Context ctx) {
        Optional<Account> account = Gate.account(ctx);
        new Page("account", Texts.say("place.account"))
                .answer(
                        ctx,
                        h1(account.map(Account::name).orElse(Texts.say("people.here"))),
                        Said.on(ctx),
                        p(account.map(a -> Texts.say("role." + a.role())).orElse(Texts.say("account.here"))),
                        section(
                                h2(Texts.say("data.unitsTitle")),
                                UnitsForm.form(room.store().listPreferences(), "/account")),
                        account.isEmpty() ? text("") : passwordForm());
    }

    private static DomContent passwordForm() {
        return div(
                section(
                        h2(Texts.say("account.password")),
                        form(
                                        PlanForm.field("login.password", secret("old", "current-password")),
                                        PlanForm.field("login.newPassword", secret("password", "new-password")),
                                        button(Texts.say("account.set")).withType("submit"))
                                .withMethod("post")
                                .withAction("/account/password")
                                .withClass("sheet narrow")),
                form(button(Texts.say("login.out")).withType("submit").withClass("quiet"))
                        .withMethod("post")
                        .withAction("/logout"));
    }

    /** A new password ends all other sessions of the account. */
    private void password(Context ctx) {
        Account account = Gate.account(ctx).orElseThrow(() -> new UserFault(Texts.say("account.here")));
        String key = "name " + account.name().toLowerCase(Locale.ROOT);
        if (!attempts.mayTry(key)
                || accounts.check(account.name(), param(ctx, "old")).isEmpty()) {
            attempts.failed(key);
            throw new UserFault(Texts.say("account.oldWrong"));
        }
        accounts.setPassword(account, param(ctx, "password"));
        gate.sessions().endAll(account.id());
        gate.begin(ctx, account);
        Said.then(ctx, Texts.say("account.isSet"), "/account");
    }
}
