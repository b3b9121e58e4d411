package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.tr;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.BenchStore;
import loopwright.action.CourseImage;
import loopwright.action.CourseImage.Corners;
import loopwright.action.GroundImages;
import loopwright.action.HoleScreens.Ground;
import loopwright.action.KeptImage;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.course.Course;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import org.jspecify.annotations.Nullable;

/** The images a coach lays under a course, one at a time: taken in, taken away, laid there again, forgotten. */
public final class CourseImagePlace implements Place {
    private static final Pattern CORNER =
            Pattern.compile("\\s*(-?\\d{1,2}(?:\\.\\d+)?)\\s*[,;\\s]\\s*(-?\\d{1,3}(?:\\.\\d+)?)\\s*");

    private final Workroom room;
    private final GroundImages images;

    public CourseImagePlace(Workroom room, GroundImages images) {
        this.room = room;
        this.images = images;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/course/image.png", this::png);
        routes.post("/course/image", this::take);
        routes.post("/course/image/show", this::show);
        routes.post("/course/image/erase", this::erase);
    }

    private void png(Context ctx) {
        Shelf.Entry entry = course(ctx.queryParam("course"));
        CourseImage image = room.store()
                .findImage(entry.id())
                .orElseThrow(() -> new UserFault(Texts.say("image.none", entry.name())));
        ctx.contentType("image/png").result(image.png());
    }

    private Shelf.Entry course(@Nullable String id) {
        return room.store().courses().get(String.valueOf(id)).entry();
    }

    private void take(Context ctx) {
        Shelf.Entry entry = course(ctx.formParam("course"));
        Course course = room.course(entry.id(), entry.version());
        Optional<Corners> corners = corners(ctx);
        CourseImage image = Uploads.with(ctx, room, "file", (file, name) -> images.read(file, name, corners, course));
        room.store().addImage(entry.id(), image);
        Said.then(ctx, Texts.say("image.taken", image.name()), "/course?course=" + entry.id());
    }

    private void show(Context ctx) {
        Shelf.Entry entry = course(ctx.formParam("course"));
        int number = number(ctx);
        room.store().showImage(entry.id(), number);
        Said.then(ctx, Texts.say(number == 0 ? "image.hidden" : "image.shown"), "/course?course=" + entry.id());
    }

    private void erase(Context ctx) {
        Shelf.Entry entry = course(ctx.formParam("course"));
        room.store().eraseImage(entry.id(), number(ctx));
        Said.then(ctx, Texts.say("image.erased"), "/course?course=" + entry.id());
    }

    private static int number(Context ctx) {
        return PlanQuery.whole("image", String.valueOf(ctx.formParam("image")));
    }

    private static Optional<Corners> corners(Context ctx) {
        Optional<LatLon> upperLeft = corner(ctx, "upperLeft");
        Optional<LatLon> upperRight = corner(ctx, "upperRight");
        Optional<LatLon> lowerRight = corner(ctx, "lowerRight");
        if (upperLeft.isPresent() != lowerRight.isPresent() || (upperRight.isPresent() && upperLeft.isEmpty())) {
            throw new UserFault(Texts.say("image.twoCorners"));
        }
        try {
            return upperLeft.map(a -> upperRight
                    .map(b -> Corners.turned(a, b, lowerRight.orElseThrow()))
                    .orElseGet(() -> Corners.northUp(a, lowerRight.orElseThrow())));
        } catch (IllegalArgumentException e) {
            throw new UserFault(Texts.say("image.badCorners", String.valueOf(e.getMessage())), e);
        }
    }

    private static Optional<LatLon> corner(Context ctx, String name) {
        String typed = Optional.ofNullable(ctx.formParam(name)).orElse("").strip();
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        Matcher m = CORNER.matcher(typed);
        if (!m.matches()) {
            throw new UserFault(Texts.say("image.badCorner", typed, Texts.say("image." + name)));
        }
        try {
            return Optional.of(new LatLon(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))));
        } catch (IllegalArgumentException e) {
            throw new UserFault(Texts.say("image.badCorner", typed, Texts.say("image." + name)), e);
        }
    }

    /** The images that were laid under a course, on its page, and the forms that change them. */
    static DomContent panel(Shelf.Entry entry, List<KeptImage> images) {
        DomContent now = images.isEmpty()
                ? p(Texts.say("image.isNone"))
                : div(table(
                                caption(Texts.say("image.means.kept", BenchStore.MOST_IMAGES)),
                                ColumnHeads.of("image.name", "image.since", "image.size", "image.now", "image.forget"),
                                tbody(each(images, i -> row(entry, i)))))
                        .withClass("wide")
                        .withTabindex(0)
                        .attr("role", "region")
                        .attr("aria-label", Texts.say("image.title"));
        return div(now, upload(entry));
    }

    private static DomContent row(Shelf.Entry entry, KeptImage image) {
        return tr(
                th(image.name()).attr("scope", "row").withClass("words"),
                td(image.at().atZone(ZoneOffset.UTC).toLocalDate().toString()),
                td(String.format(Locale.ROOT, "%.1f MB", image.bytes() / 1e6)),
                td(
                        image.shown()
                                ? change(entry, "show", 0, "image.hide")
                                : change(entry, "show", image.number(), "image.showAgain")),
                td(change(entry, "erase", image.number(), "image.erase")));
    }

    private static DomContent change(Shelf.Entry entry, String what, int number, String words) {
        return form(
                        course(entry),
                        input().withType("hidden").withName("image").withValue(Integer.toString(number)),
                        button(Texts.say(words))
                                .withType("submit")
                                .withClass(what.equals("erase") ? "quiet grave" : "quiet"))
                .withMethod("post")
                .withAction("/course/image/" + what);
    }

    private static DomContent course(Shelf.Entry entry) {
        return input().withType("hidden").withName("course").withValue(entry.id());
    }

    private static DomContent upload(Shelf.Entry entry) {
        return form(
                        p(Texts.say("image.means")),
                        course(entry),
                        label(
                                span(Texts.say("image.file")),
                                input().withType("file")
                                        .withName("file")
                                        .withAccept(".tif,.tiff,.png,.jpg,.jpeg")
                                        .isRequired()),
                        each(
                                List.of("upperLeft", "lowerRight", "upperRight"),
                                name -> PlanForm.field(
                                        "image." + name,
                                        input().withType("text")
                                                .withName(name)
                                                .withPlaceholder(Texts.say("image.example")))),
                        button(Texts.say("image.take")).withType("submit"))
                .withMethod("post")
                .withAction("/course/image")
                .withEnctype("multipart/form-data")
                .withClass("sheet drop");
    }

    /** SVG of the image as it lies under ground that is drawn, pixel by pixel. */
    static String svg(Shelf.Entry entry, CourseImage image, Course course, Ground ground) {
        LocalFrame frame = new LocalFrame(course.origin());
        Corners c = image.corners();
        double[] upperLeft = ground.at(frame.toPlace(c.upperLeft()));
        double[] upperRight = ground.at(frame.toPlace(c.upperRight()));
        double[] lowerLeft = ground.at(frame.toPlace(c.lowerLeft()));
        // a square of 1000 units stands for the image: its matrix needs no size in pixels
        double side = 1000;
        return String.format(
                Locale.ROOT,
                "<image class=\"photo\" href=\"/course/image.png?course=%s&amp;at=%d\" width=\"%.0f\" height=\"%.0f\""
                        + " preserveAspectRatio=\"none\" transform=\"matrix(%.9f %.9f %.9f %.9f %.4f %.4f)\"/>",
                entry.id(),
                image.at().toEpochMilli(),
                side,
                side,
                (upperRight[0] - upperLeft[0]) / side,
                (upperRight[1] - upperLeft[1]) / side,
                (lowerLeft[0] - upperLeft[0]) / side,
                (lowerLeft[1] - upperLeft[1]) / side,
                upperLeft[0],
                upperLeft[1]);
    }
}
