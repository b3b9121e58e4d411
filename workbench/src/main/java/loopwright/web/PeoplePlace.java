package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.code;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.select;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.action.AccessBook;
import loopwright.action.Account;
import loopwright.action.Account.Role;
import loopwright.action.Accounts;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.action.Workroom;

/** Who may log in, whom they see, invitations, and what was changed by whom. */
public final class PeoplePlace implements Place {
    private static final int CHANGES_SHOWN = 100;
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss").withZone(ZoneOffset.UTC);

    private final Workroom room;
    private final Accounts accounts;
    private final Gate gate;

    public PeoplePlace(Workroom room, Accounts accounts, Gate gate) {
        this.room = room;
        this.accounts = accounts;
        this.gate = gate;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/people", ctx -> page(ctx, text("")));
        routes.post("/people/invite", this::invite);
        routes.post("/people/share", this::share);
        routes.post("/people/remove", this::remove);
    }

    private AccessBook book() {
        return room.store().access();
    }

    private static boolean isOwner(Context ctx) {
        return Gate.account(ctx).map(a -> a.role() == Role.OWNER).orElse(true);
    }

    private static boolean isSelf(Context ctx, Account account) {
        return Gate.account(ctx).filter(a -> a.id().equals(account.id())).isPresent();
    }

    private void page(Context ctx, DomContent news) {
        List<Shelf.Entry> players = room.store().players().list();
        new Page("people", Texts.say("place.people"))
                .answer(
                        ctx,
                        h1(Texts.say("place.people")),
                        Said.on(ctx),
                        news,
                        section(h2(Texts.say("people.accounts")), list(ctx, players)),
                        section(
                                h2(Texts.say("people.invite")),
                                p(Texts.say("people.inviteMeans")),
                                inviteForm(players)),
                        section(h2(Texts.say("people.share")), p(Texts.say("people.shareMeans")), shareForm(players)),
                        isOwner(ctx) ? section(h2(Texts.say("people.log")), log(players)) : text(""));
    }

    /** A coach sees the accounts that share players with him; the owner sees all. */
    private DomContent list(Context ctx, List<Shelf.Entry> players) {
        List<Account> seen = book().listAccounts().stream()
                .filter(a -> isOwner(ctx)
                        || a.role().isCoach()
                        || !namesOf(a, players).isEmpty())
                .toList();
        if (seen.isEmpty()) {
            return p(Texts.say("people.none"));
        }
        return div(table(
                        caption(Texts.say("people.accountsMean")),
                        ColumnHeads.withWords(
                                List.of("people.role", "people.sees"),
                                "data.name",
                                "people.role",
                                "people.sees",
                                "people.change"),
                        tbody(each(
                                seen,
                                a -> tr(
                                        th(a.name()).attr("scope", "row"),
                                        td(Texts.say("role." + a.role())).withClass("words"),
                                        td(a.role() == Role.OWNER ? Texts.say("people.all") : namesOf(a, players))
                                                .withClass("words"),
                                        td(isOwner(ctx) && !isSelf(ctx, a) ? removeForm(a) : text("")))))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("people.accounts"));
    }

    private String namesOf(Account account, List<Shelf.Entry> players) {
        var granted = book().listPlayers(account.id());
        return players.stream()
                .filter(e -> granted.contains(e.id()))
                .map(Shelf.Entry::name)
                .collect(Collectors.joining(", "));
    }

    private static DomContent removeForm(Account account) {
        return form(
                        input().withType("hidden").withName("account").withValue(account.id()),
                        button(Texts.say("people.remove", account.name()))
                                .withType("submit")
                                .withClass("grave"))
                .withMethod("post")
                .withAction("/people/remove");
    }

    private static DomContent inviteForm(List<Shelf.Entry> players) {
        return form(
                        div(
                                        PlanForm.field(
                                                "people.role",
                                                select(each(
                                                                List.of(Role.PLAYER, Role.GUARDIAN, Role.COACH),
                                                                r -> option(Texts.say("role." + r))
                                                                        .withValue(r.name())))
                                                        .withName("role")),
                                        PlanForm.field("people.ofPlayer", choosePlayer(players, true)))
                                .withClass("fields"),
                        button(Texts.say("people.makeInvitation")).withType("submit"))
                .withMethod("post")
                .withAction("/people/invite")
                .withClass("sheet");
    }

    private static DomContent choosePlayer(List<Shelf.Entry> players, boolean orNone) {
        return select(
                        orNone ? option(Texts.say("people.noPlayer")).withValue("") : text(""),
                        each(players, e -> option(e.name()).withValue(e.id())))
                .withName("player");
    }

    private DomContent shareForm(List<Shelf.Entry> players) {
        List<Account> coaches = book().listAccounts().stream()
                .filter(a -> a.role() == Role.COACH)
                .toList();
        if (coaches.isEmpty() || players.isEmpty()) {
            return p(Texts.say("people.nobodyToShare")).withClass("note");
        }
        return form(
                        div(
                                        PlanForm.field("plan.player", choosePlayer(players, false)),
                                        PlanForm.field(
                                                "people.with",
                                                select(each(
                                                                coaches,
                                                                a -> option(a.name())
                                                                        .withValue(a.id())))
                                                        .withName("account")),
                                        PlanForm.field(
                                                "people.how",
                                                select(
                                                                option(Texts.say("people.give"))
                                                                        .withValue("share"),
                                                                option(Texts.say("people.take"))
                                                                        .withValue("end"))
                                                        .withName("how")))
                                .withClass("fields"),
                        button(Texts.say("people.set")).withType("submit"))
                .withMethod("post")
                .withAction("/people/share")
                .withClass("sheet");
    }

    private DomContent log(List<Shelf.Entry> players) {
        Map<String, String> names =
                players.stream().collect(Collectors.toMap(Shelf.Entry::id, Shelf.Entry::name, (x, y) -> x));
        return div(table(
                        caption(Texts.say("people.logMeans")),
                        ColumnHeads.withWords(
                                List.of("people.who", "people.what", "people.about"),
                                "people.when",
                                "people.who",
                                "people.what",
                                "people.about"),
                        tbody(each(
                                book().listChanges(CHANGES_SHOWN),
                                c -> tr(
                                        th(TIME.format(c.at())).attr("scope", "row"),
                                        td(c.who()).withClass("words"),
                                        td(code(c.what())).withClass("words"),
                                        td(names.getOrDefault(c.subject(), c.subject()))
                                                .withClass("words"))))))
                .withClass("wide")
                .withTabindex(0)
                .attr("role", "region")
                .attr("aria-label", Texts.say("people.log"));
    }

    private static String param(Context ctx, String name) {
        return Optional.ofNullable(ctx.formParam(name)).orElse("");
    }

    private void invite(Context ctx) {
        Role role = Arrays.stream(Role.values())
                .filter(r -> r.name().equals(param(ctx, "role")))
                .findFirst()
                .orElseThrow(() -> new UserFault(Texts.say("people.roleUnknown")));
        if (role.isCoach() && !isOwner(ctx)) {
            throw new UserFault(Texts.say("people.coachByOwner"));
        }
        String player = param(ctx, "player");
        if (!player.isEmpty()) {
            room.store().requireReadable(player);
        }
        String token = accounts.invite(role, player);
        String link = gate.own(ctx) + "/join?token=" + token;
        page(
                ctx,
                div(
                                p(Texts.say("people.invited", Accounts.INVITED.toDays())),
                                p(a(link).withHref(link).withId("invitation")))
                        .withClass("good"));
    }

    private void share(Context ctx) {
        String player = param(ctx, "player");
        room.store().requireReadable(player);
        Account to = book().find(param(ctx, "account"))
                .filter(a -> a.role() == Role.COACH)
                .orElseThrow(() -> new UserFault(Texts.say("people.noCoach")));
        if (param(ctx, "how").equals("end")) {
            book().revoke(to.id(), player);
        } else {
            book().grant(to.id(), player);
        }
        Said.then(ctx, Texts.say("people.isSet"), "/people");
    }

    private void remove(Context ctx) {
        Account account =
                book().find(param(ctx, "account")).orElseThrow(() -> new UserFault(Texts.say("people.noAccount")));
        accounts.remove(account);
        gate.sessions().endAll(account.id());
        Said.then(ctx, Texts.say("people.removed", account.name()), "/people");
    }
}
