package loopwright.web;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.img;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import loopwright.action.CarryStore;
import loopwright.action.CourseChoice;
import loopwright.action.CourseImage;
import loopwright.action.CoursePictures;
import loopwright.action.CourseProblems;
import loopwright.action.HolePicture;
import loopwright.action.HoleScreens;
import loopwright.action.HoleScreens.Ground;
import loopwright.action.MendCourse;
import loopwright.action.MendMarks;
import loopwright.action.Shelf;
import loopwright.action.SurveyCourse;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;
import loopwright.geo.LocalFrame;

/** A course: its card, what the map left open, its survey, and its areas, which are mended on the chart of a hole. */
public final class CoursePlace implements Place {
    private static final ObjectMapper JSON = new ObjectMapper();
    /** From a wall or a hedge to a wide river. */
    private static final double NARROWEST_METRES = 0.5;

    private static final double WIDEST_METRES = 100;

    private final Workroom room;
    private final CarryStore carry;
    private final CoursePictures pictures;
    private final HoleScreens screens;

    public CoursePlace(Workroom room, CarryStore carry, CoursePictures pictures, HoleScreens screens) {
        this.room = room;
        this.carry = carry;
        this.pictures = pictures;
        this.screens = screens;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/course", this::page);
        routes.get("/course/picture.svg", this::picture);
        routes.get("/course/areas", this::areas);
        routes.post("/course/new", this::take);
        routes.post("/course/areas", this::mend);
        routes.post("/course/strip", this::strip);
        routes.post("/course/survey", this::survey);
        routes.post("/course/note", this::note);
        routes.post("/course/settle", this::settle);
        routes.post("/course/version", this::version);
    }

    private void page(Context ctx) {
        Optional<Shelf.Entry> entry = PlanQuery.entry(room.store().courses(), ctx.queryParam("course"), "course");
        if (entry.isEmpty()) {
            new Page("course", Texts.say("course.title"))
                    .with("drop")
                    .answer(ctx, h1(Texts.say("course.title")), p(Texts.say("course.none")), newForm());
            return;
        }
        Course course = room.course(entry.get().id(), entry.get().version());
        int number = PlanQuery.whole("hole", PlanQuery.text(ctx, "hole", "0"));
        DomContent[] content = number > 0
                ? hole(ctx, entry.get(), course, number)
                : ctx.queryParam("hole") == null ? whole(ctx, entry.get(), course) : mending(ctx, entry.get(), course);
        new Page("course", course.name()).with("drop").with("course").answer(ctx, content);
    }

    private DomContent[] whole(Context ctx, Shelf.Entry entry, Course course) {
        Units units = units();
        CourseCard card = new CourseCard(course, entry, units);
        return new DomContent[] {
            h1(course.name()),
            others(entry),
            Said.on(ctx),
            card.unsurveyed(),
            section(h2(Texts.say("course.card")), card.table()),
            section(
                    h2(Texts.say("course.picture")),
                    img().withSrc("/course/picture.svg?course=" + entry.id() + "&version=" + entry.version())
                            .withAlt(Texts.say("course.pictureMeans", course.name()))
                            .withClass("picture")
                            .attr("loading", "lazy")),
            p(a(Texts.say("course.mendWhole")).withHref("/course?course=" + entry.id() + "&hole=0")),
            section(
                    h2(Texts.say("image.title")),
                    CourseImagePlace.panel(entry, room.store().listImages(entry.id()))),
            section(h2(Texts.say("heights.title")), CourseHeightsPlace.panel(entry, course)),
            section(
                    h2(Texts.say("course.problems")),
                    new ProblemList(CourseProblems.list(room.store(), entry.id()), course, entry).content()),
            section(
                    h2(Texts.say("course.versions")),
                    card.versions(room.store().courses().listVersions(entry.id()))),
            section(h2(Texts.say("course.new")), newForm())
        };
    }

    private DomContent others(Shelf.Entry now) {
        return nav(each(room.store().courses().list(), e -> {
                    var link = a(e.name()).withHref("/course?course=" + e.id());
                    return e.id().equals(now.id()) ? link.attr("aria-current", "true") : link;
                }))
                .withClass("steps")
                .attr("aria-label", Texts.say("data.courses"));
    }

    private DomContent[] hole(Context ctx, Shelf.Entry entry, Course course, int number) {
        Hole hole = SurveyCourse.getHole(course, number);
        Ground screen = screen(course, hole);
        Optional<CourseImage> image = room.store().findImage(entry.id());
        AreaEditor editor = new AreaEditor(course, Optional.of(hole), screen, entry, units());
        return new DomContent[] {
            h1(Texts.say("course.hole", course.name(), number)),
            nav(
                            a(Texts.say("course.whole")).withHref("/course?course=" + entry.id()),
                            step(entry, course, number - 1),
                            step(entry, course, number + 1))
                    .withClass("steps")
                    .attr("aria-label", Texts.say("hole.steps")),
            Said.on(ctx),
            div(
                            editor.chart(marked(ctx, course, screen), image, imageShown(ctx)),
                            div(
                                            editor.tools(AreaEditor.switchOf(image, imageShown(ctx))),
                                            new GroundTable(course, hole, units()).content(),
                                            new SurveyForm(hole, entry).form(),
                                            new HoleNotesForm(course, hole, entry, units()).content())
                                    .withClass("words"))
                    .withClass("hole")
        };
    }

    /** All areas of a course on one chart. */
    private DomContent[] mending(Context ctx, Shelf.Entry entry, Course course) {
        Ground screen = screens.whole(course);
        Optional<CourseImage> image = room.store().findImage(entry.id());
        AreaEditor editor = new AreaEditor(course, Optional.empty(), screen, entry, units());
        return new DomContent[] {
            h1(course.name()),
            nav(a(Texts.say("course.whole")).withHref("/course?course=" + entry.id()))
                    .withClass("steps")
                    .attr("aria-label", Texts.say("hole.steps")),
            Said.on(ctx),
            div(
                            editor.chart(marked(ctx, course, screen), image, imageShown(ctx)),
                            div(
                                            editor.tools(AreaEditor.switchOf(image, imageShown(ctx))),
                                            new CourseTable(course, units()).content())
                                    .withClass("words"))
                    .withClass("hole")
        };
    }

    private static boolean imageShown(Context ctx) {
        return !PlanQuery.text(ctx, "image", "shown").equals("hidden");
    }

    private static DomContent step(Shelf.Entry entry, Course course, int number) {
        boolean there = course.holes().stream().anyMatch(h -> h.number() == number);
        return there
                ? a(Texts.say("holes.number", number)).withHref("/course?course=" + entry.id() + "&hole=" + number)
                : span();
    }

    /** The place of a problem that is looked at, on the screen. */
    private Optional<double[]> marked(Context ctx, Course course, Ground screen) {
        if (ctx.queryParam("lat") == null) {
            return Optional.empty();
        }
        var where = new loopwright.geo.LatLon(PlanQuery.decimal(ctx, "lat"), PlanQuery.decimal(ctx, "lon"));
        return Optional.of(screen.at(new LocalFrame(course.origin()).toPlace(where)));
    }

    private Ground screen(Course course, Hole hole) {
        TeeSet back = course.teeSets().get(0);
        return screens.screen(
                HolePicture.ofGround(
                        course, hole, back.name(), back.getPlace(hole.number()).place()),
                units().lengths());
    }

    private static DomContent newForm() {
        return form(
                        p(Texts.say("course.newMeans")),
                        label(
                                span(Texts.say("upload.file")),
                                input().withType("file").withName("file").isRequired()),
                        PlanForm.field("data.which", input().withType("text").withName("which")),
                        button(Texts.say("course.take")).withType("submit"))
                .withMethod("post")
                .withAction("/course/new")
                .withEnctype("multipart/form-data")
                .withClass("sheet drop");
    }

    private void take(Context ctx) {
        String which = ctx.formParam("which");
        CourseChoice choice = which == null || which.isBlank() ? CourseChoice.ONLY : CourseChoice.named(which.strip());
        String sentence = Uploads.with(ctx, room, "file", (file, name) -> carry.importFile(file, name, choice, false));
        String newest = room.store().courses().list().stream()
                .max(java.util.Comparator.comparing(Shelf.Entry::at))
                .map(Shelf.Entry::id)
                .orElse("");
        Said.then(ctx, sentence, "/course?course=" + newest);
    }

    private void picture(Context ctx) {
        Course course = room.course(
                PlanQuery.text(ctx, "course", ""), PlanQuery.whole("version", PlanQuery.text(ctx, "version", "1")));
        String svg = room.withFile(new byte[0], ".svg", file -> {
            pictures.drawCourse(course, units().lengths(), file);
            try {
                return Files.readString(file, StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        ctx.contentType("image/svg+xml").result(svg);
    }

    private void areas(Context ctx) {
        Shelf.Entry entry = PlanQuery.entry(room.store().courses(), ctx.queryParam("course"), "course")
                .orElseThrow();
        Course course = room.course(entry.id(), entry.version());
        Optional<Hole> hole = hole(course, PlanQuery.whole("hole", PlanQuery.text(ctx, "hole", "0")));
        Ground ground = ground(course, hole);
        ctx.contentType("application/json")
                .result(JsonText.of(new AreaEditor(course, hole, ground, entry, units()).content()));
    }

    /** The hole of a number; nothing for 0, the whole course. */
    private static Optional<Hole> hole(Course course, int number) {
        return number == 0 ? Optional.empty() : Optional.of(SurveyCourse.getHole(course, number));
    }

    private Ground ground(Course course, Optional<Hole> hole) {
        return hole.map(h -> screen(course, h)).orElseGet(() -> screens.whole(course));
    }

    private void mend(Context ctx) {
        JsonNode body = body(ctx);
        String id = body.path("course").asText();
        int seen = body.path("seen").asInt();
        Course course = room.course(id, seen);
        Optional<Hole> hole = hole(course, body.path("hole").asInt());
        Course mended = mended(course, hole, body);
        String note = hole.map(h -> Texts.say("course.noteAreas", h.number()))
                .orElseGet(() -> Texts.say("course.noteAreasWhole"));
        Shelf.Document kept = room.changeCourse(id, seen, mended, note);
        ctx.contentType("text/plain; charset=utf-8").result(Integer.toString(kept.version()));
    }

    /** Areas first: marks lie on the ground as it is then. */
    private Course mended(Course course, Optional<Hole> hole, JsonNode body) {
        Ground ground = ground(course, hole);
        DrawnAreas areas = new DrawnAreas(ground, units());
        Course mended = MendCourse.apply(course, areas.changes(body));
        Optional<Hole> now = hole.map(h -> mended.getHole(h.number()));
        Course marked = MendMarks.apply(mended, now, new DrawnMarks(ground, units()).changes(body));
        return areas.border(body).map(b -> MendCourse.withBoundary(marked, b)).orElse(marked);
    }

    /** The area of a line that was drawn, as wide as it was said to be. */
    private void strip(Context ctx) {
        JsonNode body = body(ctx);
        Course course =
                room.course(body.path("course").asText(), body.path("seen").asInt());
        Ground ground = ground(course, hole(course, body.path("hole").asInt()));
        List<loopwright.geo.Place> line = new DrawnMarks(ground, units()).places(body.path("line"));
        double typed = body.path("width").asDouble(Double.NaN);
        double width = Double.isFinite(typed) ? units().metres(typed) : typed;
        if (!(width >= NARROWEST_METRES && width <= WIDEST_METRES)) {
            throw new UserFault(
                    Texts.say("edit.badWidth", units().length(NARROWEST_METRES), units().length(WIDEST_METRES)));
        }
        ctx.contentType("application/json")
                .result(JsonText.of(AreaEditor.polygons(MendCourse.strip(line, width), ground)));
    }

    private Units units() {
        return Units.of(room);
    }

    private static JsonNode body(Context ctx) {
        try {
            JsonNode node = JSON.readTree(ctx.body());
            if (node != null && node.isObject()) {
                return node;
            }
        } catch (JsonProcessingException e) {
            throw new UserFault(Texts.say("course.badShapes"), e);
        }
        throw new UserFault(Texts.say("course.badShapes"));
    }

    private void survey(Context ctx) {
        String id = String.valueOf(ctx.formParam("course"));
        int seen = PlanQuery.whole("seen", String.valueOf(ctx.formParam("seen")));
        int number = PlanQuery.whole("hole", String.valueOf(ctx.formParam("hole")));
        Course ticked = SurveyCourse.withSurvey(
                room.course(id, seen),
                number,
                s -> s.withTicks(
                        ticked(ctx, "trees"), ticked(ctx, "bounds"), ticked(ctx, "penalty"), ticked(ctx, "bunkers")));
        room.changeCourse(id, seen, ticked, Texts.say("course.noteSurvey", number));
        Said.then(ctx, Texts.say("course.surveyed", number), "/course?course=" + id + "&hole=" + number);
    }

    private void note(Context ctx) {
        String id = String.valueOf(ctx.formParam("course"));
        int seen = PlanQuery.whole("seen", String.valueOf(ctx.formParam("seen")));
        int number = PlanQuery.whole("hole", String.valueOf(ctx.formParam("hole")));
        Course course = room.course(id, seen);
        Hole hole = SurveyCourse.getHole(course, number);
        Course changed = new HoleNotesPost(ctx, course, hole, units()).changed();
        room.changeCourse(id, seen, changed, Texts.say("course.noteNoted", number));
        Said.then(ctx, Texts.say("course.noted", number), "/course?course=" + id + "&hole=" + number);
    }

    private static boolean ticked(Context ctx, String name) {
        return "yes".equals(ctx.formParam(name));
    }

    private void settle(Context ctx) {
        String id = room.store()
                .courses()
                .get(String.valueOf(ctx.formParam("course")))
                .id();
        CourseProblems.settle(room.store(), id, String.valueOf(ctx.formParam("problem")));
        Said.then(ctx, Texts.say("course.settled"), "/course?course=" + id);
    }

    /** An old version becomes the newest again; those between stay. */
    private void version(Context ctx) {
        String id = String.valueOf(ctx.formParam("course"));
        int old = PlanQuery.whole("version", String.valueOf(ctx.formParam("version")));
        int seen = PlanQuery.whole("seen", String.valueOf(ctx.formParam("seen")));
        Shelf.Document document = room.store().courses().get(id, old);
        room.store().courses().change(id, seen, document.name(), document.text(), Texts.say("course.noteVersion", old));
        Said.then(ctx, Texts.say("course.versioned", old), "/course?course=" + id);
    }
}
