package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.img;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.li;
import static j2html.TagCreator.option;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.select;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.ul;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import loopwright.action.BookPrinter.Paper;
import loopwright.action.Jobs.Job;
import loopwright.action.Jobs.State;
import loopwright.action.KeptRound;
import loopwright.action.LengthUnit;
import loopwright.action.MakeBook;
import loopwright.action.PlanChoice;
import loopwright.action.PlayerReport;
import loopwright.action.PlayerReports;
import loopwright.action.PrintBench;
import loopwright.action.PrintBench.Piece;
import loopwright.action.ReadLengths;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.action.Workroom;

/** The day sheet: everything that is printed for one player and one day, and books for a whole team. */
public final class PrintPlace implements Place {
    /** The first wait for a report, which is there at once where its benchmark was solved. */
    private static final long REPORT_MILLIS = 20_000;

    private final Workroom room;
    private final PrintBench prints;
    private final PlayerReports reports;

    public PrintPlace(Workroom room, PrintBench prints, PlayerReports reports) {
        this.room = room;
        this.prints = prints;
        this.reports = reports;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/print", this::page);
        routes.get("/print/page.svg", this::svg);
        routes.get("/print/file", this::file);
    }

    private void page(Context ctx) {
        Optional<PlanChoice> choice = PlanQuery.find(ctx, room.store());
        List<DomContent> content = new ArrayList<>();
        content.add(h1(Texts.say("print.title")));
        if (choice.isEmpty()) {
            content.add(p(Texts.say("plan.nothing")));
        } else {
            PrintBench.Order order = order(ctx, choice.get());
            content.add(p(Texts.say("print.means")).withClass("lead"));
            content.add(orderForm(ctx, order));
            String make = PlanQuery.text(ctx, "make", "");
            if (make.equals("book")) {
                content.add(book(order, address(ctx)));
            } else if (make.equals("team")) {
                content.add(team(order, players(ctx), address(ctx)));
            }
            content.add(atOnce(order, address(ctx)));
        }
        new Page("print", Texts.say("print.title")).with("job").answer(ctx, content.toArray(DomContent[]::new));
    }

    /** The address of what is asked, without what is to be made of it. */
    private static String address(Context ctx) {
        String query = Optional.ofNullable(ctx.queryString()).orElse("");
        return Arrays.stream(query.split("&", -1))
                .filter(part -> !part.isEmpty() && !part.startsWith("make="))
                .reduce((a, b) -> a + "&" + b)
                .orElse("");
    }

    private Units units() {
        return Units.of(room);
    }

    private PrintBench.Order order(Context ctx, PlanChoice choice) {
        return new PrintBench.Order(
                choice,
                new DayFields(choice.day(), units()).words(),
                LengthUnit.named(
                        PlanQuery.text(ctx, "lengths", units().lengths().words())),
                Paper.named(PlanQuery.text(ctx, "paper", "a4")),
                PlanQuery.text(ctx, "state", "").equals("yes"));
    }

    private List<Shelf.Entry> players(Context ctx) {
        List<String> ticked = ctx.queryParams("team");
        return room.store().players().list().stream()
                .filter(e -> ticked.contains(e.id()))
                .toList();
    }

    private DomContent orderForm(Context ctx, PrintBench.Order order) {
        PlanChoice choice = order.choice();
        List<Shelf.Entry> team = players(ctx);
        return form(
                        div(
                                        PlanForm.field(
                                                "plan.player",
                                                choose(
                                                        "player",
                                                        room.store().players().list(),
                                                        choice.player())),
                                        PlanForm.field(
                                                "plan.course",
                                                choose(
                                                        "course",
                                                        room.store().courses().list(),
                                                        choice.course())),
                                        PlanForm.field("plan.tees", tees(choice)),
                                        PlanForm.field(
                                                "plan.target",
                                                input().withType("number")
                                                        .withName("target")
                                                        .withValue(Integer.toString(
                                                                choice.goal().target()))
                                                        .attr("min", 1)
                                                        .attr("max", 200)
                                                        .isRequired()),
                                        PlanForm.field(
                                                "print.lengths",
                                                words(
                                                        "lengths",
                                                        List.of("yards", "metres"),
                                                        order.unit().words())),
                                        PlanForm.field(
                                                "print.paper",
                                                words(
                                                        "paper",
                                                        List.of("a4", "letter"),
                                                        order.paper().name().toLowerCase(Locale.ROOT))))
                                .withClass("fields"),
                        new DayFields(choice.day(), units()).fields(),
                        label(
                                        input().withType("checkbox")
                                                .withName("state")
                                                .withValue("yes")
                                                .withCondChecked(order.stateOfPlay()),
                                        span(Texts.say("print.state")))
                                .withClass("tick"),
                        details(
                                        summary(Texts.say("print.team")),
                                        p(Texts.say("print.teamMeans")),
                                        div(each(
                                                room.store().players().list(),
                                                e -> label(
                                                                input().withType("checkbox")
                                                                        .withName("team")
                                                                        .withValue(e.id())
                                                                        .withCondChecked(team.contains(e)),
                                                                span(e.name()))
                                                        .withClass("tick"))),
                                        make("team"))
                                .condAttr(!team.isEmpty(), "open", ""),
                        make("book"))
                .withMethod("get")
                .withAction("/print")
                .withClass("sheet");
    }

    private static DomContent make(String what) {
        return button(Texts.say("print.make." + what))
                .withType("submit")
                .withName("make")
                .withValue(what);
    }

    private static DomContent choose(String name, List<Shelf.Entry> all, Shelf.Entry now) {
        return select(each(all, e -> option(e.name()).withValue(e.id()).withCondSelected(e.id().equals(now.id()))))
                .withName(name);
    }

    private static DomContent words(String name, List<String> all, String now) {
        return select(each(
                        all, w -> option(Texts.say("print." + w)).withValue(w).withCondSelected(w.equals(now))))
                .withName(name);
    }

    private DomContent tees(PlanChoice choice) {
        return words(
                choice,
                room.course(choice.course().id(), choice.course().version()).teeSets().stream()
                        .map(t -> t.name())
                        .toList());
    }

    private DomContent words(PlanChoice choice, List<String> names) {
        String now = room.course(choice.course().id(), choice.course().version())
                .findTeeSet(choice.tees())
                .map(t -> t.name())
                .orElse(choice.tees());
        return select(each(names, n -> option(n).withValue(n).withCondSelected(n.equals(now))))
                .withName("tees");
    }

    private DomContent book(PrintBench.Order order, String address) {
        Job<MakeBook.Made> job = prints.book(order);
        Optional<MakeBook.Made> made = result(job);
        if (made.isEmpty()) {
            return JobPlace.waiting(job, Texts.say("print.working"));
        }
        int pages = made.get().book().pages().size();
        return section(
                h2(Texts.say("print.made", order.choice().player().name())),
                ul(each(
                                Arrays.asList(Piece.values()),
                                piece -> li(a(Texts.say("print.piece." + piece))
                                        .withHref("/print/file?" + address + "&what="
                                                + piece.name().toLowerCase(Locale.ROOT)))))
                        .withClass("list"),
                p(Texts.say("print.how")).withClass("note"),
                div(each(
                                IntStream.range(0, pages).boxed().toList(),
                                n -> img().withSrc("/print/page.svg?" + address + "&page=" + n)
                                        .withAlt(
                                                made.get().book().pages().get(n).title())
                                        .attr("loading", "lazy")))
                        .withClass("pages"));
    }

    private DomContent team(PrintBench.Order order, List<Shelf.Entry> players, String address) {
        Job<Path> job = prints.team(order, players);
        if (result(job).isEmpty()) {
            return JobPlace.waiting(job, Texts.say("print.workingTeam", players.size()));
        }
        return section(
                h2(Texts.say("print.teamMade", players.size())),
                p(a(Texts.say("print.zip")).withHref("/print/file?" + address + "&what=team")));
    }

    /** The result of a job that is over at once or was before; a fault it ended in. */
    private static <T> Optional<T> result(Job<T> job) {
        if (job.await(JobPlace.AT_ONCE_MILLIS) == State.FAILED) {
            throw job.findFailure().orElseThrow();
        }
        return job.findResult();
    }

    private DomContent atOnce(PrintBench.Order order, String address) {
        PlanChoice choice = order.choice();
        List<DomContent> out = new ArrayList<>();
        if (newest(choice).isPresent()) {
            out.add(link("print.page", "/print/file?" + address + "&what=page"));
            out.add(link("print.report", "/print/file?" + address + "&what=report"));
        } else {
            out.add(li(Texts.say("print.noRound")));
        }
        out.add(link(
                "print.week",
                "/practice?player=" + choice.player().id() + "&course="
                        + choice.course().id()));
        out.add(link("print.walk", "/print/file?" + address + "&what=walk"));
        out.add(link("print.measuring", "/print/file?" + address + "&what=measuring"));
        return section(
                h2(Texts.say("print.atOnce")),
                ul(out.toArray(DomContent[]::new)).withClass("list"));
    }

    private static DomContent link(String key, String address) {
        return li(a(Texts.say(key)).withHref(address));
    }

    private Optional<KeptRound> newest(PlanChoice choice) {
        return room.store().records().listRounds(choice.player().id()).stream().reduce((a, b) -> b);
    }

    private void svg(Context ctx) {
        PrintBench.Order order = order(ctx, PlanQuery.get(ctx, room.store()));
        int page = PlanQuery.whole("page", PlanQuery.text(ctx, "page", "0"));
        ctx.contentType("image/svg+xml").result(prints.page(made(order), page));
    }

    private MakeBook.Made made(PrintBench.Order order) {
        return result(prints.book(order)).orElseThrow(() -> new UserFault(Texts.say("print.notYet")));
    }

    private void file(Context ctx) {
        PrintBench.Order order = order(ctx, PlanQuery.get(ctx, room.store()));
        String what = PlanQuery.text(ctx, "what", "");
        PlanChoice choice = order.choice();
        switch (what) {
            case "team" -> send(ctx, "application/zip", "books.zip", zip(order, players(ctx)));
            case "walk" -> pdf(ctx, what, prints.walk(choice.course(), choice.tees(), order.unit(), order.paper()));
            case "measuring" ->
                pdf(ctx, what, prints.measuring(order.paper(), Units.of(room).sentences()));
            case "page", "report" ->
                pdf(
                        ctx,
                        what,
                        prints.report(
                                report(choice),
                                what.equals("report"),
                                new ReadLengths(order.unit(), units().metricGreens()),
                                order.paper()));
            default -> {
                Piece piece = piece(what);
                pdf(ctx, what, prints.print(made(order), piece, order.paper()));
            }
        }
    }

    private static Piece piece(String what) {
        return Arrays.stream(Piece.values())
                .filter(piece -> piece.name().toLowerCase(Locale.ROOT).equals(what))
                .findFirst()
                .orElseThrow(() -> new UserFault(Texts.say("print.unknown", what)));
    }

    /** What the newest round tells at once; the target is the goal of the player file, else that of the book. */
    private PlayerReport report(PlanChoice choice) {
        KeptRound round = newest(choice).orElseThrow(() -> new UserFault(Texts.say("print.noRound")));
        int target = reports.target(choice.player(), OptionalInt.empty())
                .orElse(choice.goal().target());
        Job<PlayerReport> job = reports.atOnce(choice.player(), round.id(), target);
        if (job.await(REPORT_MILLIS) == State.FAILED) {
            throw job.findFailure().orElseThrow();
        }
        return job.findResult().orElseThrow(() -> new UserFault(Texts.say("print.notYet")));
    }

    private byte[] zip(PrintBench.Order order, List<Shelf.Entry> players) {
        Path zip = result(prints.team(order, players)).orElseThrow(() -> new UserFault(Texts.say("print.notYet")));
        try {
            return Files.readAllBytes(zip);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void pdf(Context ctx, String name, byte[] bytes) {
        send(ctx, "application/pdf", name + ".pdf", bytes);
    }

    private static void send(Context ctx, String type, String name, byte[] bytes) {
        ctx.contentType(type)
                .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .result(bytes);
    }
}
