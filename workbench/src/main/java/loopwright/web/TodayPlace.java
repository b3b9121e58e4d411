package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.text;
import static j2html.TagCreator.ul;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import loopwright.action.TodayList;
import loopwright.action.TodayList.Line;
import loopwright.action.TodayList.Reason;
import loopwright.action.Workroom;

/** The coach's list of a day: whom to think of, and why. */
public final class TodayPlace implements Place {
    private final Workroom room;
    private final TodayList list;
    private final Clock clock;

    public TodayPlace(Workroom room, TodayList list, Clock clock) {
        this.room = room;
        this.list = list;
        this.clock = clock;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/today", this::page);
    }

    private void page(Context ctx) {
        LocalDate day = LocalDate.now(clock);
        List<Line> lines = list.of(room.store(), day);
        List<DomContent> content = new ArrayList<>();
        content.add(h1(Texts.say("today.title", day)));
        content.add(Said.on(ctx));
        if (room.store().players().list().isEmpty()) {
            content.add(p(
                    text(Texts.say("today.nobody") + " "),
                    a(Texts.say("player.add")).withHref("/player/new")));
        } else if (lines.isEmpty()) {
            content.add(p(Texts.say("today.free")).withClass("lead"));
        }
        for (Reason reason : Arrays.asList(Reason.values())) {
            List<Line> some = lines.stream().filter(l -> l.reason() == reason).toList();
            if (!some.isEmpty()) {
                content.add(section(
                        h2(Texts.say("today." + reason)),
                        ul(each(some, l -> li(line(l)))).withClass("list")));
            }
        }
        content.add(section(
                h2(Texts.say("rounds.take")),
                RecordForms.take("", room.store().players().list())));
        new Page("today", Texts.say("place.today")).with("drop").answer(ctx, content.toArray(DomContent[]::new));
    }

    private static DomContent line(Line line) {
        String day = line.day().map(LocalDate::toString).orElse("");
        String words = switch (line.reason()) {
            case PLAYS_SOON -> Texts.say("today.on", day);
            case WORK_DUE -> Texts.say("today.due", line.what(), day);
            case MODEL_DISAGREES -> line.what();
            case SILENT -> day.isEmpty() ? Texts.say("today.never") : Texts.say("today.last", day);
        };
        return j2html.TagCreator.span(a(line.name()).withHref("/rounds?player=" + line.player()), text(": " + words));
    }
}
