package loopwright.web;

import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.form;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import j2html.tags.DomContent;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loopwright.action.CourseImage;
import loopwright.action.CourseImage.Corners;
import loopwright.action.GroundImages;
import loopwright.action.HoleScreens.Ground;
import loopwright.action.Shelf;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.course.Course;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;

/** The image a coach lays under a course: taken in, shown, taken away. */
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
        routes.post("/course/image/erase", this::erase);
    }

    private void png(Context ctx) {
        Shelf.Entry entry = course(ctx.queryParam("course"));
        CourseImage image = room.store()
                .findImage(entry.id())
                .orElseThrow(() -> new UserFault(Texts.say("image.none", entry.name())));
        ctx.contentType("image/png").result(image.png());
    }

    private Shelf.Entry course(@org.jspecify.annotations.Nullable String id) {
        return room.store().courses().get(String.valueOf(id)).entry();
    }

    private void take(Context ctx) {
        Shelf.Entry entry = course(ctx.formParam("course"));
        Course course = room.course(entry.id(), entry.version());
        Optional<Corners> corners = corners(ctx);
        CourseImage image = Uploads.with(ctx, room, "file", (file, name) -> images.read(file, name, corners, course));
        room.store().setImage(entry.id(), image);
        Said.then(ctx, Texts.say("image.taken", image.name()), "/course?course=" + entry.id());
    }

    private void erase(Context ctx) {
        Shelf.Entry entry = course(ctx.formParam("course"));
        room.store().eraseImage(entry.id());
        Said.then(ctx, Texts.say("image.erased"), "/course?course=" + entry.id());
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

    /** What is said of the image on the page of a course, and the forms that change it. */
    static DomContent panel(Shelf.Entry entry, Optional<CourseImage> image) {
        DomContent now = image.<DomContent>map(i -> div(
                        p(Texts.say(
                                "image.is",
                                i.name(),
                                i.at().atZone(ZoneOffset.UTC).toLocalDate(),
                                String.format(Locale.ROOT, "%.1f", i.png().length / 1e6))),
                        form(
                                        course(entry),
                                        button(Texts.say("image.erase"))
                                                .withType("submit")
                                                .withClass("quiet grave"))
                                .withMethod("post")
                                .withAction("/course/image/erase")))
                .orElseGet(() -> p(Texts.say("image.isNone")));
        return div(now, upload(entry));
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
                                java.util.List.of("upperLeft", "lowerRight", "upperRight"),
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
